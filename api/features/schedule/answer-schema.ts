/** Documents a stored schedule with its figures of a year. */
import { z } from '@hono/zod-openapi';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { dataBasisField } from '../../fields/data-basis.ts';
import { nullable } from '../../fields/nullable.ts';
import { recordFields } from '../../fields/record-fields.ts';
import { settingField } from '../../fields/setting-field.ts';
import { emergencyShape, phaseShape, scheduleTariff } from '../../records/schedule/schema.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { feasibleField, infeasibleShape } from './infeasible-fields.ts';
import { servedOutlets } from './outlet-schema.ts';

const money = (context: SchemaContext, description: string, example: number) =>
  nullable(computedNumber(context, { description: `${description} Null without a price.`, example }));

const useShape = (context: SchemaContext) => ({
  annualEnergy: computed(context, 'energy', { description: 'Energy of the year.', example: 178.2 }),
  annualCost: money(context, 'Its cost, each hour at its own price.', 31.4),
});

const phaseSchema = perContext((context) =>
  named(
    context,
    'ScheduledPhase',
    z.strictObject({
      ...phaseShape(context),
      setting: settingField(
        context,
        'What to dial [% of full]; for a volume the setting that is run for longest, 0 being stopped.',
        58,
      ),
      feasible: feasibleField(context),
      ...infeasibleShape(context),
      power: computed(context, 'power', {
        description:
          'Mean over the time of the phase in the year; ramps, pulses and splits averaged over time.',
        example: 51.3,
      }),
      flow: computed(context, 'flow', { description: 'Mean of the total flow.', example: 6240 }),
      hoursPerYear: computedNumber(context, {
        description: 'Hours of the phase in the year.',
        example: 3285,
      }),
      ...useShape(context),
      outlets: servedOutlets(context),
      otherSetting: nullable(
        settingField(context, 'The setting of the other part of a pulse; null without one.', 41),
      ),
      gap: nullable(
        computedNumber(context, {
          description:
            'Cost of the year above what no plan can be cheaper than, as a share of that; 0 where hours are split, null without a volume or where it is out of reach.',
          example: 0,
        }),
      ),
    }),
    { description: 'A phase with the setting that serves it, and what it uses in a year.' },
  ),
);

const againstSchema = perContext((context) =>
  named(
    context,
    'ConstantRunning',
    z.strictObject({
      setting: settingField(context, 'The setting, round the clock [% of full].', 70),
      power: computed(context, 'power', { description: 'Power at it.', example: 85.7042 }),
      flow: computed(context, 'flow', { description: 'Total flow at it.', example: 7533.14 }),
      ...useShape(context),
      savedEnergy: computed(context, 'energy', {
        description: 'What the schedule uses less in the year.',
        example: 112.5,
      }),
      savedCost: money(context, 'What the schedule costs less in the year.', 23.6),
    }),
    { description: 'One setting round the clock, for comparison.' },
  ),
);

const emergencySchema = perContext((context) =>
  named(
    context,
    'EmergencyRunning',
    z.strictObject({
      ...emergencyShape(context),
      setting: settingField(context, 'The lowest setting that gives these flows [% of full].', 32),
      feasible: feasibleField(context),
      ...infeasibleShape(context),
      power: computed(context, 'power', { description: 'Power at it.', example: 14.2 }),
      flow: computed(context, 'flow', { description: 'Total flow at it.', example: 2450 }),
      outlets: servedOutlets(context),
      batteryHours: nullable(
        computedNumber(context, {
          description: 'Hours that the stated battery lasts; null without one.',
          example: 84.5,
        }),
      ),
    }),
    { description: 'What must go on when the mains fail, and for how long it can.' },
  ),
);

export const fallbackSchema = perContext((context) =>
  named(
    context,
    'Fallback',
    z.strictObject({
      setting: settingField(
        context,
        'One setting for all phases [% of full]: the highest of theirs, or where that breaks an upper limit in a phase, the highest below it that breaks none.',
        70,
      ),
      requiredFlowsMet: described(context, z.boolean(), {
        description: 'Whether it gives every phase its required flows, and moves each volume.',
        examples: [true],
      }),
      phasesBelowRequired: described(context, z.array(z.string()), {
        description: 'Names of the phases in which it does not.',
        examples: [[]],
      }),
    }),
    { description: 'What to set while the service cannot be reached.' },
  ),
);

export const scheduleSchema = perContext((context) =>
  named(
    context,
    'Schedule',
    z.strictObject({
      ...recordFields(context),
      tariff: scheduleTariff(context),
      phases: described(context, z.array(phaseSchema(context)), { description: 'In the order of entry.' }),
      emergency: emergencySchema(context).optional(),
      year: described(context, z.int(), {
        description: 'The year of the calendar that the figures are of.',
        examples: [2026],
      }),
      hoursPerYear: computedNumber(context, {
        description: 'Its hours in the zone of the site.',
        example: 8760,
      }),
      currency: described(context, z.string(), { description: 'Of every sum of money.', examples: ['EUR'] }),
      ...useShape(context),
      against: z.strictObject({
        constantHighest: againstSchema(context),
        installed: againstSchema(context),
      }),
      fallback: fallbackSchema(context),
      summary: described(context, z.string(), {
        description: 'The answer in one or two plain sentences.',
        examples: ['2 phases use 512 kWh in 2026, which costs 107 EUR.'],
      }),
      cautions: described(context, z.array(cautionSchema(context)), {
        description: 'What to know about the loop and the phases.',
      }),
      dataBasis: dataBasisField(context),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'The phases of a loop, the settings that serve them, and what they use in a year.' },
  ),
);
