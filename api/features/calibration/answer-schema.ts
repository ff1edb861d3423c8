/** Documents the factors of friction, head and power that readings determine. */

import { z } from '@hono/zod-openapi';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { dataBasisField } from '../../fields/data-basis.ts';
import { bodyInstant } from '../../fields/instant.ts';
import { nullable } from '../../fields/nullable.ts';
import { settingField } from '../../fields/setting-field.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { calibrationParameter, marginUncertainty, misfitSchema, nextReadingSchema } from './parts-schema.ts';

const REASONS = [
  'no-power-readings',
  'no-flow-readings',
  'ratio-alone',
  'not-distinct',
  'implausible',
  'ill-conditioned',
  'too-uncertain',
] as const;

const notIdentifiableSchema = (context: SchemaContext) =>
  z.strictObject({
    name: described(context, z.enum(['friction', 'head', 'power']), {
      description: 'The factor that the readings do not determine.',
      examples: ['head'],
    }),
    reason: described(context, z.enum(REASONS), {
      description:
        'Why: nothing measured depends on it; flows alone determine friction over head; the rows do not separate the factors (`not-distinct`, `ill-conditioned`: condition number of the scaled Jacobian 1000 or more; `too-uncertain`: standard error 0.25 or more, or that share of the factor); only factors beyond all wear would fit (`implausible`).',
      examples: ['ratio-alone'],
    }),
    detail: described(context, z.string(), {
      description: 'The reason in words and figures.',
      examples: [
        'Flows on a loop without static head determine friction over head alone, whatever the settings.',
      ],
    }),
    conditionNumber: nullable(
      computedNumber(context, { description: 'Of `ill-conditioned`; null else.', example: 4210 }),
    ),
    standardError: nullable(
      computedNumber(context, { description: 'Of `too-uncertain`; null else.', example: 0.31 }),
    ),
    readings: described(context, z.array(z.string()), {
      description: 'Readings that would help.',
      examples: [['the head across the pump']],
    }),
  });

const limitingSchema = (context: SchemaContext) =>
  z.strictObject({
    outlet: described(context, nullable(z.string()), {
      description: 'The outlet with the smallest margin; null if none requires a flow.',
      examples: ['far end'],
    }),
    setting: settingField(context, 'The installed setting, at which the margin is computed [%].', 80),
    margin: nullable(
      computedNumber(context, {
        description: 'flow/requiredFlow - 1 with the factors found; null without a requirement.',
        example: 0.12,
      }),
    ),
    doubt: described(context, nullable(marginUncertainty(context)), {
      description: 'What the readings leave open of it; null where they say nothing about flows.',
    }),
  });

const speedMapSchema = (context: SchemaContext) =>
  z.strictObject({
    points: described(
      context,
      z.array(
        z.strictObject({
          setting: settingField(context, 'Setting [%].', 50),
          speed: computedNumber(context, { description: 'True speed [% of full].', example: 57.2 }),
          standardError: nullable(
            computedNumber(context, {
              description: 'Of the speed; null where no head was read and the entered speed is scaled.',
              example: 0.4,
            }),
          ),
        }),
      ),
      { description: 'As the `speedMap` of the pump would be, from its lowest to its highest setting.' },
    ),
    differs: described(context, z.boolean(), {
      description:
        'Whether a speed that was read differs from the one entered by over 1 % and 2.6 standard errors.',
      examples: [false],
    }),
  });

const countSchema = (context: SchemaContext) =>
  z.strictObject({
    used: described(context, z.int(), { description: 'Readings that said something.', examples: [120] }),
    rows: described(context, z.int(), {
      description: 'Different measures at different settings that they make.',
      examples: [12],
    }),
    from: described(
      context,
      nullable(bodyInstant(context, { description: 'As asked.', example: '2026-03-01T00:00:00Z' })),
      {
        description: 'As asked; null: from the first on.',
      },
    ),
    to: bodyInstant(context, { description: 'As asked, else now.', example: '2026-04-01T00:00:00Z' }),
  });

export const calibrationSchema = perContext((context) =>
  named(
    context,
    'Calibration',
    z.strictObject({
      parameters: described(context, z.array(calibrationParameter(context)), {
        description:
          'Multipliers of what was entered: the friction of the loop, head and power of the pump, or `frictionOverHead` where the readings do not separate the two. Empty where the readings determine none.',
      }),
      notIdentifiable: described(context, z.array(notIdentifiableSchema(context)), {
        description: 'The factors that the readings do not determine, and why.',
      }),
      misfits: described(context, z.array(misfitSchema(context)), {
        description:
          'Readings that do not fit the factors: off by over 3 % and four errors of their mean, the farthest first, eight at most. With a flow off by over 15 % the factors cannot be applied.',
      }),
      limiting: described(context, nullable(limitingSchema(context)), {
        description: 'The smallest margin and its uncertainty; null where no water passes.',
      }),
      nextReadings: described(context, z.array(nextReadingSchema(context)), {
        description:
          'Readings to take next, the one first that would leave the least standard error of the limiting margin.',
      }),
      speedMap: described(context, nullable(speedMapSchema(context)), {
        description:
          'True speeds by heads read at several settings, r = sqrt(h(s)/h(max)) corrected for the friction of smooth pipes; null where gauge readings do not determine them.',
      }),
      readings: countSchema(context),
      applied: described(context, z.boolean(), {
        description: 'Whether the factors were put to use by this request.',
        examples: [false],
      }),
      dataBasis: dataBasisField(context),
      summary: described(context, z.string(), {
        description: 'The answer in a few plain sentences.',
        examples: ['Friction over head is 1.32 times as entered (1.24 to 1.41).'],
      }),
      cautions: described(context, z.array(cautionSchema(context)), {
        description: 'What to know about it.',
      }),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'Factors that readings determine, with their uncertainty.' },
  ),
);
