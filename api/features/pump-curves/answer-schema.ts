/** Documents the curves fitted to a pump's points, with the quality of the fit. */
import { z } from '@hono/zod-openapi';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { nullable } from '../../fields/nullable.ts';
import { settingField } from '../../fields/setting-field.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const r2 = (context: SchemaContext, of: string) =>
  nullable(
    computedNumber(context, {
      description: `1 - SSE/SST of ${of}; null where they do not vary.`,
      example: 0.999984,
    }),
  );

const headSchema = (context: SchemaContext) =>
  z.strictObject({
    powers: described(context, z.array(z.int()), {
      description: 'Powers of Q/flowScale in the fit, 0 first.',
      examples: [[0, 2]],
    }),
    coefficients: described(
      context,
      z.array(computedNumber(context, { description: 'c_p [m].', example: 5.09464 })),
      {
        description: 'One a power, in metres whatever the units: H = sum c_p (Q/flowScale)^p at full speed.',
        examples: [[5.09464, -3.19473]],
      },
    ),
    flowScale: computed(context, 'flow', {
      description: 'Largest flow of the points at full speed.',
      example: 14000,
    }),
    range: z.strictObject({
      min: computed(context, 'flow', { description: 'Least flow of the points at full speed.', example: 0 }),
      max: computed(context, 'flow', {
        description: 'Largest flow of the points at full speed.',
        example: 14000,
      }),
    }),
    r2: r2(context, 'the heads'),
    standardError: nullable(
      computed(context, 'head', {
        description: 'sqrt(SSE/(n - m - 1)) of m powers; null without spare points.',
        example: 0.00693,
      }),
    ),
    residuals: described(
      context,
      z.array(
        computed(context, 'head', {
          description: 'Entered less fitted head at full speed.',
          example: 0.00536,
        }),
      ),
      { description: 'One a head point, in its order.' },
    ),
    leaveOneOut: computed(context, 'head', {
      description: 'Root mean square error at a point left out of the fit.',
      example: 0.00894,
    }),
  });

const powerSchema = (context: SchemaContext) =>
  z.strictObject({
    exponent: computedNumber(context, { description: 'k of P = standby + c r^k g(q).', example: 3.01021 }),
    exponentAssumed: described(context, z.boolean(), {
      description: 'The points are at one speed: the cube law stands in.',
      examples: [false],
    }),
    coefficient: computedNumber(context, {
      description: 'c: power above standby at full speed and x = 0 [W].',
      example: 242,
    }),
    flowTerms: described(
      context,
      z.array(computedNumber(context, { description: 'Coefficient.', example: 0.31 })),
      {
        description:
          'Coefficients of x, then x^2, in g = exp(b1 x + b2 x^2), x = q - flowCentre; empty without flow.',
        examples: [[]],
      },
    ),
    flowScale: nullable(
      computed(context, 'flow', {
        description: 'Flow at full speed of which q is the share; null without flow terms.',
        example: 9000,
      }),
    ),
    flowCentre: nullable(
      computedNumber(context, { description: 'q at which x is 0; null without flow terms.', example: 0.6 }),
    ),
    flowRange: nullable(
      z.strictObject({
        min: computedNumber(context, {
          description: 'Least q of the points; q is held there.',
          example: 0.2,
        }),
        max: computedNumber(context, {
          description: 'Largest q of the points; q is held there.',
          example: 1,
        }),
      }),
    ),
    standbyPower: computed(context, 'power', { description: 'Standby power as entered.', example: 3 }),
    r2: r2(context, 'ln(P - standby)'),
    standardError: nullable(
      computedNumber(context, {
        description: 'Of ln(P - standby): about the relative error of power; null without spare points.',
        example: 0.012,
      }),
    ),
  });

const rowSchema = (context: SchemaContext) =>
  z.strictObject({
    setting: settingField(context, 'Setting [%].', 100),
    flow: computed(context, 'flow', { description: 'Flow of the pump.', example: 7000 }),
    head: computed(context, 'head', { description: 'Its head there.', example: 4.29596 }),
    power: computed(context, 'power', {
      description: 'Its electrical power, standby included.',
      example: 245,
    }),
    efficiency: computedNumber(context, { description: 'Wire to water, a fraction.', example: 0.342 }),
  });

export const curvesSchema = perContext((context) =>
  named(
    context,
    'Curves',
    z.strictObject({
      head: headSchema(context),
      power: powerSchema(context),
      bestEfficiencyPoint: nullable(
        z.strictObject({
          flow: computed(context, 'flow', {
            description: 'Flow of best efficiency at full speed.',
            example: 9400,
          }),
          head: computed(context, 'head', { description: 'Head there.', example: 3.65 }),
          efficiency: computedNumber(context, { description: 'Efficiency there.', example: 0.38 }),
        }),
      ),
      table: described(context, z.array(rowSchema(context)), {
        description: 'The curves at the setting asked for.',
      }),
      cautions: described(context, z.array(cautionSchema(context)), {
        description: 'What to know about the fit.',
      }),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'The curves fitted to the points of a pump, in water of 25 degC and 35 g/kg.' },
  ),
);
