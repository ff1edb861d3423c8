/** Documents a recommendation: the pump and the setting that serve a loop at the least cost. */

import { z } from '@hono/zod-openapi';
import { CRITERION_REASONS } from '../../../models/selection/criterion.ts';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { dataBasisField } from '../../fields/data-basis.ts';
import { encodedOnce } from '../../fields/encoded-once.ts';
import { answeredKey } from '../../fields/key-field.ts';
import { OBJECTIVES, reportedLifeCycle } from '../../fields/life-cycle-terms.ts';
import { nullable } from '../../fields/nullable.ts';
import { settingField } from '../../fields/setting-field.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import { pumpRefSchema } from '../../records/pump/reference.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { dutySchema, dutyShape } from '../duty-point/duty-schema.ts';
import { requiredDutyField } from '../duty-point/required-duty-schema.ts';
import { drainBackField } from '../duty-point/surroundings-schema.ts';
import { againstAsBuiltField } from './against-as-built-schema.ts';
import { reportedAssurance } from './assurance-request.ts';
import { assuranceField } from './assurance-schema.ts';
import { reportedHeat } from './heat-schema.ts';
import { lossesField } from './losses-schema.ts';
import { withoutScreenLimitField } from './without-screen-limit-schema.ts';

export const REJECTION_REASONS = [...CRITERION_REASONS, 'no-setting'] as const;

const reasonSchema = (context: SchemaContext) =>
  described(context, z.enum(REJECTION_REASONS), {
    description:
      'A condition that holds at no setting of the candidate; `no-setting`: each holds somewhere, all nowhere.',
    examples: ['not-enough-head'],
  });

const shortfallSchema = (context: SchemaContext) =>
  z.strictObject({
    outlet: described(context, z.string(), {
      description: 'Outlet with the smallest margin.',
      examples: ['far end'],
    }),
    setting: settingField(context, 'Setting at which it comes nearest to its required flow [%].', 100),
    flow: computed(context, 'flow', { description: 'Flow of the outlet at that setting.', example: 2590 }),
    requiredFlow: computed(context, 'flow', { description: 'Required flow of the outlet.', example: 3000 }),
  });

const remedySchema = (context: SchemaContext) =>
  z.strictObject({
    throttle: described(
      context,
      z.strictObject({
        head: computed(context, 'head', {
          description: 'Head that the valve takes at that flow.',
          example: 1.04243,
        }),
        kv: computedNumber(context, { description: 'Kv of the valve, m3/h at 1 bar.', example: 15.7633 }),
        cv: computedNumber(context, {
          description: 'Cv of the valve, US gal/min at 1 psi.',
          example: 18.2239,
        }),
      }),
      { description: 'Valve in the common discharge.' },
    ),
    setting: described(context, z.number(), {
      description: 'Setting of the pump with it [%].',
      examples: [56],
    }),
    flow: computed(context, 'flow', { description: 'Total flow with it.', example: 5040 }),
    power: computed(context, 'power', { description: 'Electrical power with it.', example: 41.2 }),
    annualEnergy: computed(context, 'energy', { description: 'Energy of a year with it.', example: 361 }),
    annualCost: nullable(
      computedNumber(context, {
        description: 'Cost of that energy in the currency; null without a price.',
        example: 75.8,
      }),
    ),
  });

const rejectedSchema = perContext((context) =>
  named(
    context,
    'RejectedCandidate',
    z.strictObject({
      candidate: described(context, z.int(), { description: 'Place in the request, from 0.', examples: [1] }),
      pump: pumpRefSchema(context),
      count: described(context, z.int(), { description: 'Equal pumps in parallel.', examples: [1] }),
      reason: reasonSchema(context),
      reasons: described(context, z.array(reasonSchema(context)), {
        description: 'All of them, in a fixed order.',
      }),
      detail: described(context, z.string(), {
        description: 'The reason in figures.',
        examples: ['Outlet "far end" receives at most 2590 L/h at 100 %, required 3000 L/h.'],
      }),
      shortfall: described(context, nullable(shortfallSchema(context)), {
        description: 'Outlet and flow where the candidate fails; null if no outlet falls short.',
      }),
      remedy: described(context, remedySchema(context), {
        description:
          'A valve in the common discharge that makes the candidate feasible; absent unless it fails by `pump-above-maximum` and such a valve exists.',
      }).optional(),
    }),
    { description: 'A candidate that is feasible at no setting of its grid.' },
  ),
);

/** The limits that hold, stated or not. */
export const reportedLimits = (context: SchemaContext) =>
  z.strictObject({
    throughSlotVelocity: nullable(
      computed(context, 'velocity', {
        description: 'Highest velocity through screen slots; null: not judged.',
        example: 0.1524,
      }),
    ),
    cloggedFraction: computedNumber(context, {
      description: 'Share of the slots taken as clogged.',
      example: 0.5,
    }),
    screenBasis: described(context, z.enum(['mean', 'peak']), {
      description: 'Which velocity of a screen rejects.',
      examples: ['mean'],
    }),
    pipeVelocity: computed(context, 'velocity', {
      description: 'Velocity in a pipe that is cautioned.',
      example: 1.5,
    }),
    maximumEfficiency: computedNumber(context, {
      description: 'Wire-to-water efficiency above which points cannot be right.',
      example: 0.85,
    }),
    enforceNpsh: described(context, z.boolean(), {
      description:
        'Whether an unmet NPSH rejects. Without NPSH points only boiling water before the pump rejects.',
      examples: [false],
    }),
    allowExtrapolation: described(context, z.boolean(), {
      description: 'Whether a duty beyond 1.1 times the largest entered flow is accepted.',
      examples: [false],
    }),
    allowReverseFlow: described(context, z.boolean(), {
      description: 'Whether water running backwards through an outlet is accepted.',
      examples: [false],
    }),
    gravity: described(context, z.enum(['report', 'reject']), {
      description:
        'Effect of gravity alone giving every required flow: `report` it, or `reject` the candidates.',
      examples: ['report'],
    }),
  });

/** The tariff whose mean price counts; null where prices are flat. */
export const reportedTariff = (context: SchemaContext) =>
  nullable(
    z.strictObject({
      id: described(context, nullable(z.string()), {
        description: 'Id of the tariff; null where it came with the request.',
        examples: ['0198c0de-0000-7000-8000-000000000003'],
      }),
      ...answeredKey(context),
      name: described(context, z.string(), { description: 'Its name.', examples: ['Winter peak'] }),
      year: described(context, z.int(), {
        description: 'The year of the calendar that `price` is the time mean of.',
        examples: [2026],
      }),
    }),
  );

const assumptionsSchema = (context: SchemaContext) =>
  z.strictObject({
    price: nullable(
      computedNumber(context, { description: 'Money per kWh; null if no cost is given.', example: 0.21 }),
    ),
    tariff: described(
      context,
      nullable(
        z.strictObject({
          id: described(context, nullable(z.string()), {
            description: 'Id of the tariff; null if it came with the request.',
            examples: ['0198c0de-0000-7000-8000-000000000003'],
          }),
          ...answeredKey(context),
          name: described(context, z.string(), {
            description: 'Name of the tariff.',
            examples: ['Winter peak'],
          }),
          year: described(context, z.int(), {
            description: 'Calendar year over which `price` is the time mean.',
            examples: [2026],
          }),
        }),
      ),
      { description: 'Tariff that the price follows from; null if a flat price was used.' },
    ),
    currency: described(context, z.string(), { description: 'Of every sum of money.', examples: ['EUR'] }),
    hoursPerDay: computedNumber(context, {
      description: 'Hours a day at the setting, standby for the rest.',
      example: 24,
    }),
    balancing: described(context, z.enum(['as-built', 'trimmed']), {
      description: 'Whether branches are throttled to their required flows.',
      examples: ['as-built'],
    }),
    objective: described(context, z.enum(OBJECTIVES), {
      description: 'Quantity that the ranking minimises.',
      examples: ['energy-cost'],
    }),
    lifeCycle: reportedLifeCycle(context),
    assurance: reportedAssurance(context),
    heat: reportedHeat(context),
    limits: described(context, reportedLimits(context), {
      description: 'Limits that candidates were judged by.',
    }),
  });

const bestSchema = perContext((context) =>
  named(
    context,
    'Best',
    z.strictObject({
      ...dutyShape(context),
      closeTo: described(context, z.array(z.int()), {
        description:
          'Candidates, by their position in the request, that are too close to the best to call. The low end of what they are ranked by, as the laws of power leave it open, is not above the high end of the best.',
        examples: [[2]],
      }),
    }),
    { description: 'The first of the ranking.' },
  ),
);

const rankedSchema = perContext((context) => encodedOnce(context, dutySchema(context)));

const countsSchema = (context: SchemaContext) => {
  const count = (description: string, example: number) =>
    described(context, z.int(), { description, examples: [example] });
  return z.strictObject({
    candidates: count('Candidates judged.', 2),
    feasible: count('Candidates with a feasible setting.', 1),
    rejected: count('Candidates without a feasible setting.', 1),
  });
};

export const recommendationSchema = perContext((context) =>
  named(
    context,
    'Recommendation',
    z.strictObject({
      best: nullable(bestSchema(context)),
      ranking: described(context, z.array(rankedSchema(context)), {
        description: 'The cheapest candidates, each at its smallest feasible setting, cheapest first.',
      }),
      rejected: described(context, z.array(rejectedSchema(context)), {
        description: 'Candidates that are feasible at no setting, in the order of the request.',
      }),
      counts: described(context, countsSchema(context), { description: 'Counts of candidates.' }),
      requiredDuty: requiredDutyField(context),
      trimEffect: againstAsBuiltField(context),
      assuranceEffect: assuranceField(context),
      losses: lossesField(context),
      withoutScreenLimit: withoutScreenLimitField(context),
      drainBack: drainBackField(context),
      assumptions: described(context, assumptionsSchema(context), {
        description: 'Values that the answer was computed with: those of the request, the site and defaults.',
      }),
      summary: described(context, z.string(), {
        description: 'The answer in one or two plain sentences.',
        examples: [
          'Run pump "Canister 250" at 70 % on loop "Kelp flume": 85.7 W, 751 kWh and EUR 157.66 per year.',
        ],
      }),
      cautions: described(context, z.array(cautionSchema(context)), {
        description: 'What to know about the loop, whatever the pump.',
      }),
      dataBasis: dataBasisField(context),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'The pump and setting that give every required flow at the least cost.' },
  ),
);

/** Before the units are filled in. */
export type RecommendationAnswer = WithoutUnits<z.output<ReturnType<typeof recommendationSchema>>>;
