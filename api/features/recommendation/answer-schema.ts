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
      description: 'The outlet that falls short.',
      examples: ['far end'],
    }),
    setting: settingField(context, 'Setting at which it comes nearest [%].', 100),
    flow: computed(context, 'flow', { description: 'What it gets there.', example: 2590 }),
    requiredFlow: computed(context, 'flow', { description: 'What it needs.', example: 3000 }),
  });

const remedySchema = (context: SchemaContext) =>
  z.strictObject({
    throttle: z.strictObject({
      head: computed(context, 'head', {
        description: 'Head that the valve takes at that flow.',
        example: 1.04243,
      }),
      kv: computedNumber(context, { description: 'Kv of the valve, m3/h at 1 bar.', example: 15.7633 }),
      cv: computedNumber(context, { description: 'Cv of the valve, US gal/min at 1 psi.', example: 18.2239 }),
    }),
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
        examples: ['far end gets at most 2590 L/h at setting 100 % of the 3000 L/h it needs.'],
      }),
      shortfall: nullable(shortfallSchema(context)),
      remedy: described(context, remedySchema(context), {
        description:
          'A valve in the common discharge that makes the candidate feasible; absent unless it fails by `pump-above-maximum` and such a valve exists.',
      }).optional(),
    }),
    { description: 'A candidate that no setting of its grid makes serve.' },
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
      description: 'Whether an unmet NPSH rejects.',
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
      description: 'What is done where gravity alone serves the loop.',
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
    tariff: reportedTariff(context),
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
      description: 'What the ranking goes by.',
      examples: ['energy-cost'],
    }),
    lifeCycle: reportedLifeCycle(context),
    assurance: reportedAssurance(context),
    heat: reportedHeat(context),
    limits: reportedLimits(context),
  });

const bestSchema = perContext((context) =>
  named(
    context,
    'Best',
    z.strictObject({
      ...dutyShape(context),
      closeTo: described(context, z.array(z.int()), {
        description:
          'Candidates, by their place in the request, that may as well be the best: what they are ranked by, at the low end of what the laws of power leave open, is not above that of the best at its high end.',
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
    feasible: count('Those with a setting that serves.', 1),
    rejected: count('Those without.', 1),
  });
};

export const recommendationSchema = perContext((context) =>
  named(
    context,
    'Recommendation',
    z.strictObject({
      best: nullable(bestSchema(context)),
      ranking: described(context, z.array(rankedSchema(context)), {
        description: 'The cheapest candidates, each at its smallest setting that serves, cheapest first.',
      }),
      rejected: described(context, z.array(rejectedSchema(context)), {
        description: 'Candidates that serve at no setting, in the order of the request.',
      }),
      counts: countsSchema(context),
      requiredDuty: requiredDutyField(context),
      againstAsBuilt: againstAsBuiltField(context),
      assurance: assuranceField(context),
      losses: lossesField(context),
      withoutScreenLimit: withoutScreenLimitField(context),
      drainBack: drainBackField(context),
      assumptions: assumptionsSchema(context),
      summary: described(context, z.string(), {
        description: 'The answer in one or two plain sentences.',
        examples: ['Run Canister 250 at setting 70 %: 85.7 W, 751 kWh and 158 EUR a year.'],
      }),
      cautions: described(context, z.array(cautionSchema(context)), {
        description: 'What to know about the loop, whatever the pump.',
      }),
      dataBasis: dataBasisField(context),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'Which pump at which setting serves the loop at the least cost.' },
  ),
);

/** Before the units are filled in. */
export type RecommendationAnswer = WithoutUnits<z.output<ReturnType<typeof recommendationSchema>>>;
