/** Documents the schedule of a loop in requests. */

import { z } from '@hono/zod-openapi';
import { MINUTES_PER_DAY } from '../../../models/calendar/time-factors.ts';
import type { Emergency, Phase, Pulse, Schedule, VolumeDemand } from '../../../models/schedule/schedule.ts';
import { dayKinds, timeOfDay } from '../../fields/clock-fields.ts';
import { numberField } from '../../fields/number-field.ts';
import { acceptedFields } from '../../fields/record-fields.ts';
import { nameField } from '../../fields/text-field.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { tariffRef } from '../tariff/reference.ts';
import { checkPhase, checkPhases } from './checks.ts';
import { EMERGENCY_FIGURES, PHASE_FIGURES, SCHEDULE_FIGURES } from './ignored-figures.ts';

/** Phases of a schedule; those of a working day and a weekend by the quarter of an hour. */
const PHASES_MAX = 200;
const FACTOR_MAX = 10;

const factor = (context: SchemaContext, description: string, example: number) =>
  numberField(context, { description, minimum: 0, aboveMinimum: true, maximum: FACTOR_MAX, example });

const flag = (context: SchemaContext, description: string, usual: boolean) =>
  described(context, context.side === 'answer' ? z.boolean() : z.boolean().default(usual), {
    description,
    examples: [usual],
  });

const flowBound = (context: SchemaContext, description: string, example: number) =>
  entered(context, 'flow', { description, minimum: 0, maximum: 10, example });

const volume = perContext(
  (context): z.ZodType<VolumeDemand> =>
    named(
      context,
      'VolumeDemand',
      z
        .strictObject({
          perDay: entered(context, 'volume', {
            description: 'Volume to move in each run of the phase, a day long at most.',
            minimum: 0,
            aboveMinimum: true,
            maximum: 1e6,
            example: 120_000,
          }),
          floor: flowBound(context, 'Total flow at least, unless stopped.', 2000).optional(),
          ceiling: flowBound(context, 'Total flow at most.', 9000).optional(),
          mayStop: flag(context, 'Whether the pump may be stopped for hours.', false),
          splits: flag(context, 'Whether an hour may be shared in time by two settings.', true),
        })
        .refine(({ floor = 0, ceiling = Number.POSITIVE_INFINITY }) => floor <= ceiling, {
          path: ['ceiling'],
          message: 'must not be below floor',
        }),
      { description: 'A volume to move at the least cost, whatever the flow by the hour.' },
    ),
);

const pulse = perContext(
  (context): z.ZodType<Pulse> =>
    named(
      context,
      'Pulse',
      z.strictObject({
        otherFactor: factor(
          context,
          "Times the flows that the loop requires, or the phase's `requiredFlows`, in the other part of each period.",
          0.4,
        ),
        periodMinutes: numberField(context, {
          description: 'Minutes of one period of both parts.',
          minimum: 1,
          maximum: MINUTES_PER_DAY,
          example: 15,
        }),
        share: numberField(context, {
          description: 'Share of each period at `otherFactor`; the phase itself has the first part.',
          minimum: 0,
          maximum: 1,
          example: 0.5,
        }),
      }),
      { description: 'Two flows in turn.' },
    ),
);

const byOutlet = <Value extends z.ZodType>(context: SchemaContext, value: Value, description: string) =>
  described(context, z.record(z.string().min(1).max(120), value), { description });

/** The entered fields of a phase. */
export const phaseShape = (context: SchemaContext) => ({
  name: nameField(context, { description: 'A name, 1 to 120 characters.', example: 'night' }),
  from: timeOfDay(context, {
    description:
      "Wall clock of the site at which it begins; it runs to the next phase's start. A time that clocks skip acts at the first instant after, one that they show twice at the first.",
    example: '22:00',
  }),
  days: dayKinds(
    context,
    'Days on which it begins; all where it is left out. A holiday of the tariff is a holiday and no weekday.',
  ).optional(),
  factor: factor(context, 'Times the flow that each outlet of the loop requires.', 0.6).optional(),
  requiredFlows: byOutlet(
    context,
    entered(context, 'flow', { description: 'Required flow.', minimum: 0, maximum: 10, example: 1500 }),
    'Required flows by outlet, in place of those of the loop; outlets that are not named keep their own.',
  ).optional(),
  volume: volume(context).optional(),
  openings: byOutlet(
    context,
    entered(context, 'opening', { description: '0 or 100.', minimum: 0, maximum: 100, example: 0 }),
    'Outlets closed in this phase, by 0; 100 is as built. A closed outlet requires nothing.',
  ).optional(),
  rampMinutes: described(context, z.int().min(1).max(MINUTES_PER_DAY), {
    description: "Minutes in which the setting runs from that of the phase before to this phase's.",
    examples: [10],
  }).optional(),
  pulse: pulse(context).optional(),
});

/** The entered fields of an emergency. */
export const emergencyShape = (context: SchemaContext) => ({
  factor: factor(context, 'Times the required flows that keep the animals alive.', 0.3),
  batteryEnergy: entered(context, 'energy', {
    description: 'What a battery gives to the pump.',
    minimum: 0,
    aboveMinimum: true,
    maximum: 1e6,
    example: 1.2,
  }).optional(),
});

export const scheduleTariff = (context: SchemaContext) =>
  tariffRef(context, {
    description: 'Id or key of a tariff, answered as its id; null: the tariff or the price of the site.',
  });

const ignored = z
  .unknown()
  .optional()
  .transform(() => undefined);

/** Figures that answers add, accepted so that an answer can be sent back. */
const ignoredFigures = <const Name extends string>(names: readonly Name[]) =>
  Object.fromEntries(names.map((name) => [name, ignored]));

const phase = perContext(
  (context): z.ZodType<Phase> =>
    named(
      context,
      'Phase',
      z.strictObject({ ...phaseShape(context), ...ignoredFigures(PHASE_FIGURES) }).superRefine(checkPhase),
      { description: 'A part of the day, by exactly one of `factor`, `requiredFlows` and `volume`.' },
    ),
);

const emergency = perContext(
  (context): z.ZodType<Emergency> =>
    named(
      context,
      'Emergency',
      z.strictObject({ ...emergencyShape(context), ...ignoredFigures(EMERGENCY_FIGURES) }),
      { description: 'What must go on when the mains fail.' },
    ),
);

export const scheduleInput = perContext(
  (context): z.ZodType<Schedule> =>
    named(
      context,
      'Schedule',
      z.strictObject({
        tariff: scheduleTariff(context),
        phases: described(context, z.array(phase(context)).min(1).max(PHASES_MAX).superRefine(checkPhases), {
          description: 'The phases of the day, in any order.',
        }),
        emergency: emergency(context).optional(),
        ...acceptedFields(context),
        ...ignoredFigures(SCHEDULE_FIGURES),
      }),
      { description: 'The phases of a loop as their user enters them.' },
    ),
);
