/** Documents the factors of friction, head and power that readings determine. */

import { z } from '@hono/zod-openapi';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { dataBasisField } from '../../fields/data-basis.ts';
import { bodyInstant } from '../../fields/instant.ts';
import { nullable } from '../../fields/nullable.ts';
import { settingField } from '../../fields/setting-field.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed, computedNumber } from '../../units/computed.ts';
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
        'Why. `no-power-readings`, `no-flow-readings`: nothing measured depends on it. `ratio-alone`: flows alone determine friction over head. `not-distinct`, `ill-conditioned` (condition number of the scaled Jacobian 1000 or more): the readings do not separate the factors. `too-uncertain`: standard error 0.25 or more, or a 95 % interval of over 30 % either way. `implausible`: only factors beyond all wear would fit.',
      examples: ['ratio-alone'],
    }),
    detail: described(context, z.string(), {
      description: 'The reason in words and figures.',
      examples: ['Flows on a loop without static head determine friction over head alone.'],
    }),
    conditionNumber: computedNumber(context, {
      description: 'Of `ill-conditioned`; absent otherwise.',
      example: 4210,
    }).optional(),
    standardError: computedNumber(context, {
      description: 'Of `too-uncertain`; absent otherwise.',
      example: 0.31,
    }).optional(),
    helpfulReadings: described(context, z.array(z.string()), {
      description: 'Readings that would help.',
      examples: [['the head across the pump']],
    }),
  });

const smallestMarginSchema = (context: SchemaContext) =>
  z.strictObject({
    outlet: described(context, z.string(), {
      description: 'The outlet with the smallest margin; absent where none requires a flow.',
      examples: ['far end'],
    }).optional(),
    setting: computed(context, 'setting', { description: 'The installed setting.', example: 80 }),
    margin: computedNumber(context, {
      description: 'flow/requiredFlow - 1 with these factors; absent without a requirement.',
      example: 0.12,
    }).optional(),
    uncertainty: described(context, marginUncertainty(context), {
      description: 'What the readings leave open of it; absent where they say nothing about flows.',
    }).optional(),
  });

const REFUSALS = [
  'nothing-determined',
  'ratio-too-uncertain',
  'readings-scatter',
  'readings-do-not-fit',
] as const;

const refusalSchema = (context: SchemaContext) =>
  z.strictObject({
    code: described(context, z.enum(REFUSALS), {
      description:
        '`nothing-determined`: no factor. `ratio-too-uncertain`: the 95 % interval of friction over head is over 30 % either way. `readings-scatter`: a measure scatters by over 8 %. `readings-do-not-fit`: over a fifth of the readings of a measure misfit.',
      examples: ['readings-scatter'],
    }),
    measure: described(context, z.enum(['flow', 'outletFlow', 'head', 'power']), {
      description: 'The measure; absent where it is about none.',
      examples: ['flow'],
    }).optional(),
    actual: computedNumber(context, {
      description: 'The fraction found; absent without one.',
      example: 0.11,
    }).optional(),
    limit: computedNumber(context, {
      description: 'Its limit; absent without one.',
      example: 0.08,
    }).optional(),
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

const countsSchema = (context: SchemaContext) =>
  z.strictObject({
    used: described(context, z.int(), {
      description: 'Readings that bear on a factor.',
      examples: [120],
    }),
    distinct: described(context, z.int(), {
      description: 'Different measures at different settings and valves.',
      examples: [12],
    }),
  });

const fitSchema = (context: SchemaContext) =>
  z.strictObject({
    covariance: described(
      context,
      z.array(z.array(computedNumber(context, { description: 'Covariance.', example: 0.0018 }))),
      { description: 'Of the parameters, in their order, the accuracy of the meters included.' },
    ),
  });

const periodFields = (context: SchemaContext) => ({
  from: bodyInstant(context, {
    description:
      'As requested, no earlier than the installation of the pump; absent: from the first reading.',
    example: '2026-03-01T00:00:00Z',
  }).optional(),
  to: bodyInstant(context, { description: 'As requested, by default now.', example: '2026-04-01T00:00:00Z' }),
});

export const calibrationSchema = perContext((context) =>
  named(
    context,
    'Calibration',
    z.strictObject({
      parameters: described(context, z.array(calibrationParameter(context)), {
        description:
          'Multipliers of what was entered: the friction of the loop, head and power of the pump, or `frictionOverHead` where the readings do not separate the two. Empty where they determine none.',
      }),
      notIdentifiable: described(context, z.array(notIdentifiableSchema(context)), {
        description: 'The factors that the readings do not determine, and why.',
      }),
      misfits: described(context, z.array(misfitSchema(context)), {
        description:
          'Readings off by over 15 % and five times the scatter, the farthest first, eight at most. They count for nothing.',
      }),
      refusal: described(context, refusalSchema(context), {
        description: 'Why the factors may not be applied; absent where they may.',
      }).optional(),
      smallestMargin: described(context, smallestMarginSchema(context), {
        description: 'Absent where no water passes.',
      }).optional(),
      nextReading: described(context, nextReadingSchema(context), {
        description:
          'The reading that would leave the least uncertainty of the smallest margin; absent: none.',
      }).optional(),
      nextReadings: described(context, z.array(nextReadingSchema(context)), {
        description: 'With `nextReadings` in `include`: up to eight of them, the best first.',
      }).optional(),
      measuredSpeedMap: described(context, speedMapSchema(context), {
        description:
          'With `speeds` in `include`, or where they differ from those entered: true speeds by heads read at several settings, r = sqrt(h(s)/h(max)) corrected for the friction of smooth pipes. Absent where gauge readings do not show them.',
      }).optional(),
      fit: described(context, fitSchema(context), {
        description: 'With `fit` in `include`: how surely the parameters are known together.',
      }).optional(),
      counts: countsSchema(context),
      ...periodFields(context),
      applied: described(context, z.boolean(), {
        description: 'Whether this request applied the factors.',
        examples: [false],
      }),
      dataBasis: dataBasisField(context),
      summary: described(context, z.string(), {
        description: 'The answer in a few plain sentences.',
        examples: ['Friction over head is 1.32 times the entered value (95 %: 1.24 to 1.41).'],
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
