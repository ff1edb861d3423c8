/** Documents a design: pipe sizes, pump and setting of least cost over the years. */
import { z } from '@hono/zod-openapi';
import { DESIGN_REASONS } from '../../../models/designs/rejections.ts';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { reportedLifeCycleShape } from '../../fields/life-cycle-terms.ts';
import { money } from '../../fields/money.ts';
import { nullable } from '../../fields/nullable.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { reportedLimits, reportedTariff } from '../recommendation/answer-schema.ts';
import { bestSchema, pointerField } from './best-schema.ts';
import { pumpsShape, rowSchema } from './row-schema.ts';

const reason = (context: SchemaContext) =>
  described(context, z.enum(DESIGN_REASONS), {
    description:
      'A condition that holds at no setting. `no-price`: the pump has no price. `pipe-velocity`: every size of a list is too fast. `no-setting`: each condition holds somewhere, all nowhere.',
    examples: ['not-enough-head'],
  });

const rejectedSchema = perContext((context) =>
  named(
    context,
    'RejectedDesign',
    z.strictObject({
      ...pumpsShape(context),
      reason: reason(context),
      reasons: described(context, z.array(reason(context)), {
        description: 'All of them, in a fixed order.',
      }),
      detail: described(context, z.string(), {
        description: 'The reason in figures.',
        examples: ['The pump gives 1.1 m at 100 %. The sizes that require least head require 1.31 m.'],
      }),
      pointer: pointerField(
        context,
        'The list of sizes that the reason is about: a JSON pointer into the loop; absent where it is about none.',
      ).optional(),
    }),
    { description: 'A candidate without a design.' },
  ),
);

const frontierSchema = (context: SchemaContext) =>
  z.strictObject({
    head: computed(context, 'head', { description: 'Required by loop and suction.', example: 0.322281 }),
    cost: money(context, 'Of the cheapest pipes that require no more.', 95.4),
  });

const countsSchema = (context: SchemaContext) => {
  const count = (description: string, example: number) =>
    described(context, z.int(), { description, examples: [example] });
  return z.strictObject({
    candidates: count('Candidates searched.', 2),
    feasible: count('Those with a design.', 2),
    rejected: count('Those without.', 0),
    lists: count('Lists of sizes.', 5),
  });
};

const assumptionsSchema = (context: SchemaContext) =>
  z.strictObject({
    price: computedNumber(context, { description: 'Money per kWh.', example: 0.3 }),
    tariff: reportedTariff(context),
    currency: described(context, z.string(), { description: 'Of every sum of money.', examples: ['EUR'] }),
    hoursPerDay: computedNumber(context, {
      description: 'Hours a day at the setting, standby for the rest.',
      example: 24,
    }),
    trimPrice: money(context, 'Of one trim valve.', 15),
    ...reportedLifeCycleShape,
    limits: reportedLimits(context).extend({
      pipeVelocity: nullable(
        computed(context, 'velocity', {
          description: 'Highest velocity in a pipe whose size was to be chosen; null: none.',
          example: 1.5,
        }),
      ),
    }),
  });

export const designSchema = perContext((context) =>
  named(
    context,
    'Design',
    z.strictObject({
      best: nullable(bestSchema(context)),
      ranking: described(context, z.array(rowSchema(context)), {
        description: 'The best design of each other candidate, the cheapest first.',
      }),
      frontier: described(context, z.array(frontierSchema(context)), {
        description: 'Least cost of pipes against required head: at most 100 points, both ends among them.',
      }),
      rejected: described(context, z.array(rejectedSchema(context)), {
        description: 'Candidates without a design, in the order of the request.',
      }),
      solution: described(context, z.enum(['optimal', 'bounded']), {
        description:
          '`optimal`: no design of the class costs less. `bounded`: none costs less by more than `optimalityGap`.',
        examples: ['optimal'],
      }),
      optimalityGap: computedNumber(context, {
        description: 'Share of its cost by which the best may exceed the cheapest of the class.',
        example: 0,
      }),
      counts: countsSchema(context),
      assumptions: assumptionsSchema(context),
      summary: described(context, z.string(), {
        description: 'The answer in a few plain sentences.',
        examples: ['Run pump "Small" at 61 % on loop "two splits": 19.3 W, 169 kWh and EUR 50.70 per year.'],
      }),
      cautions: described(context, z.array(cautionSchema(context)), {
        description: 'What to know about the loop and about the search, whatever the pump.',
      }),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'Which pipe sizes, which pump and which setting cost least over the years.' },
  ),
);

/** Before the units are filled in. */
export type DesignAnswer = WithoutUnits<z.output<ReturnType<typeof designSchema>>>;
