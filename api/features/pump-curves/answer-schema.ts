/** Documents the curves fitted to a pump's points, with the quality of the fit. */
import { z } from '@hono/zod-openapi';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { nullable } from '../../fields/nullable.ts';
import { settingField } from '../../fields/setting-field.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { encodeNumber } from '../../units/convert.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import { roundComputed } from '../../units/round.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const r2 = (context: SchemaContext, of: string) =>
  computedNumber(context, {
    description: `1 - SSE/SST of ${of}; absent where they do not vary.`,
    example: 0.999984,
  });

/** Head per flow, in the units in force of both. */
const headPerFlow = (
  context: SchemaContext,
  words: { readonly description: string; readonly example: number },
) => {
  const scale = encodeNumber(1, 'head', context.system) / encodeNumber(1, 'flow', context.system);
  const codec = z.codec(z.number(), z.number(), {
    decode: (value) => value / scale,
    encode: (value) => roundComputed(value * scale),
  });
  return described(context, codec, {
    type: 'number',
    description: words.description,
    examples: [words.example],
  });
};

const knotSchema = (context: SchemaContext) =>
  z.strictObject({
    flow: computed(context, 'flow', { description: 'Flow of the knot at full speed.', example: 6000 }),
    head: computed(context, 'head', { description: 'Head of the knot.', example: 7.3 }),
    slope: headPerFlow(context, {
      description: 'Slope of the curve there: head per flow.',
      example: -0.000205128,
    }),
  });

const headShape = (context: SchemaContext) => ({
  shape: described(context, z.enum(['sum-of-powers', 'piecewise', 'assumed']), {
    description:
      '`sum-of-powers`: H = sum c_p (Q/flowScale)^p, fitted. `piecewise`: a monotone cubic through `knots`, where no sum of powers meets the points within 1 % of the largest head. `assumed`: a parabola through shutoff and the one other flow entered.',
    examples: ['sum-of-powers'],
  }),
  exponents: described(context, z.array(z.int()), {
    description: 'Exponents p of Q/flowScale, 0 first; absent if `piecewise`.',
    examples: [[0, 2]],
  }).optional(),
  coefficients: described(
    context,
    z.array(computedNumber(context, { description: 'c_p [m].', example: 5.09464 })),
    {
      description:
        'One an exponent, in metres whatever the units: H = sum c_p (Q/flowScale)^p at full speed; absent if `piecewise`.',
      examples: [[5.09464, -3.19473]],
    },
  ).optional(),
  knots: described(context, z.array(knotSchema(context)), {
    description: 'The places that a `piecewise` curve goes through, by rising flow; absent for other shapes.',
  }).optional(),
});

const headSchema = (context: SchemaContext) =>
  z.strictObject({
    ...headShape(context),
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
    r2: r2(context, 'the heads').optional(),
    standardError: computed(context, 'head', {
      description:
        'sqrt(SSE/(n - m - 1)) of m powers, sqrt(SSE/(n - knots)) if `piecewise`; absent without spare points.',
      example: 0.00693,
    }).optional(),
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
      description: 'Root mean square error at a point left out of the fit; absent unless `sum-of-powers`.',
      example: 0.00894,
    }).optional(),
  });

const powerSchema = (context: SchemaContext) =>
  z.strictObject({
    law: described(context, z.enum(['exponent', 'fixed-loss']), {
      description:
        '`exponent`: P = standby + c r^k g(q). `fixed-loss`: P = standby + (F + c r^3) g(q). Of two speeds the first where its k is 3 or more; of three or more the one with the lesser error at points left out.',
      examples: ['exponent'],
    }),
    fixedPower: computed(context, 'power', {
      description:
        'F: power above standby that does not go with speed; 0 under `exponent`, 8 % at one speed.',
      example: 0,
    }),
    exponent: computedNumber(context, {
      description: 'k of the law `exponent`, also where `fixed-loss` was chosen; 3 at one speed.',
      example: 3.01021,
    }),
    exponentAssumed: described(context, z.boolean(), {
      description: 'Whether all points are at one speed, so that the exponent and F are assumed.',
      examples: [false],
    }),
    coefficient: computedNumber(context, {
      description: 'c: the part of power that goes with speed, at full speed and x = 0 [W].',
      example: 242,
    }),
    flowTerms: described(
      context,
      z.array(computedNumber(context, { description: 'Coefficient.', example: 0.31 })),
      {
        description:
          'Coefficients of x, then x^2, in g = exp(b1 x + b2 x^2), x = q - flowCentre; empty without flow. Beyond flowRange g goes on along its tangent where power rises outward, and is held where it falls.',
        examples: [[]],
      },
    ),
    flowScale: computed(context, 'flow', {
      description: 'Flow at full speed of which q is the share; absent without flow terms.',
      example: 9000,
    }).optional(),
    flowCentre: computedNumber(context, {
      description: 'q at which x is 0; absent without flow terms.',
      example: 0.6,
    }).optional(),
    flowRange: described(
      context,
      z.strictObject({
        min: computedNumber(context, { description: 'Least q of the points.', example: 0.2 }),
        max: computedNumber(context, { description: 'Largest q of the points.', example: 1 }),
      }),
      { description: 'Between which q the points lie; absent without flow terms.' },
    ).optional(),
    standbyPower: computed(context, 'power', { description: 'Standby power as entered.', example: 3 }),
    r2: r2(context, 'ln(P - standby)').optional(),
    standardError: computedNumber(context, {
      description: 'Of ln(P - standby): about the relative error of power; absent without spare points.',
      example: 0.012,
    }).optional(),
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
      headFit: headSchema(context),
      powerFit: powerSchema(context),
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
