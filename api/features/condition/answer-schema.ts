/** Documents the condition of a loop. */
import { z } from '@hono/zod-openapi';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { dataBasisField } from '../../fields/data-basis.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { baselineSchema } from './baseline-schema.ts';
import { CAUSES, causeField, causeSchema } from './cause-schema.ts';
import { evidenceSchema, nextReadingSchema } from './evidence-schema.ts';
import {
  countField,
  instantField,
  measureField,
  outletField,
  share,
  shareInterval,
  slipField,
} from './gauge-schema.ts';
import { shortfallSchema, waitingSchema } from './outlook-schema.ts';
import { seriesSchema } from './series-schema.ts';

const VERDICTS = [
  ...['not-enough-readings', 'baseline-forming', 'as-expected', 'changed', 'unexplained'],
  ...CAUSES,
] as const;

const entriesSchema = (context: SchemaContext) =>
  z.strictObject({
    verdict: described(context, z.enum(['agree', 'differ', 'not-determined']), {
      description:
        'Whether the baseline is as the entries predict, within 2.6 standard errors of the readings, the accuracy of the meters and the tolerance of the pump. `not-determined`: without readings.',
      examples: ['agree'],
    }),
    differences: described(
      context,
      z.array(
        z.strictObject({
          measure: measureField(context),
          outlet: outletField(context),
          residual: share(context, 'measured/predicted - 1 in the baseline.', 0.09),
          interval: shareInterval(context, { what: 'the residual', low: 0.04, high: 0.14 }),
        }),
      ),
      { description: 'The measures that differ.', examples: [[]] },
    ),
    slip: slipField(context).optional(),
  });

const detectableSchema = (context: SchemaContext) =>
  z.strictObject({
    cause: causeField(context),
    magnitude: share(
      context,
      'Least magnitude that the meters at hand show in a month in 80 %; absent: none.',
      0.04,
    ).optional(),
    flowChange: share(context, 'Change of the total flow at that magnitude.', -0.04).optional(),
  });

const setAsideSchema = (context: SchemaContext) =>
  z.strictObject({
    time: instantField(context, 'Of the reading.', '2026-05-03T10:00:00.000Z'),
    measure: measureField(context),
    outlet: outletField(context),
    slip: slipField(context),
    factor: share(context, 'What was read over what its neighbours show, about.', 0.264),
  });

const belowRequiredSchema = (context: SchemaContext) =>
  z.strictObject({
    outlet: described(context, z.string(), { description: 'The outlet.', examples: ['far end'] }),
    flow: computed(context, 'flow', {
      description: 'As measured on the last days, at the installed setting.',
      example: 2600,
    }),
    requiredFlow: computed(context, 'flow', { description: 'Required.', example: 3000 }),
  });

const COUNTS = {
  readings: 'Readings in the range.',
  judged: 'Readings that were judged one by one: a sample where there are over 20,000.',
  used: 'Readings of a running pump with every valve open.',
  stopped: 'Readings set aside because the pump was stopped.',
  closedValve: 'Readings set aside because an outlet, or the whole loop, was closed.',
  rareSetting:
    'Readings set aside for a setting that the pump does not have, or that is too rare to be solved for.',
  setAside: 'Values set aside because they differ by the factor of a unit.',
} as const;

const countsSchema = (context: SchemaContext) =>
  z.strictObject({
    readings: countField(context, COUNTS.readings, 365),
    judged: countField(context, COUNTS.judged, 365),
    used: countField(context, COUNTS.used, 360),
    stopped: countField(context, COUNTS.stopped, 5),
    closedValve: countField(context, COUNTS.closedValve, 0),
    rareSetting: countField(context, COUNTS.rareSetting, 0),
    setAside: countField(context, COUNTS.setAside, 0),
  });

const statisticSchema = (context: SchemaContext) =>
  z.strictObject({
    value: share(context, 'Greatest likelihood ratio over windows, causes and magnitudes.', 41.2),
    threshold: share(context, 'A change is reported above it, where it still lasts.', 16),
    windowDays: countField(context, 'Days of the window that gives it.', 30),
  });

const taskSchema = (context: SchemaContext) =>
  z.strictObject({
    id: described(context, z.string(), { description: 'Id of the task.', examples: ['0198f1c2'] }),
    name: described(context, z.string(), {
      description: 'Name of the task.',
      examples: ['Clean the screen'],
    }),
    nextDue: described(context, z.iso.date(), {
      description: 'When it is due now: today at the latest.',
      examples: ['2026-06-20'],
    }),
  });

const outlookFields = (context: SchemaContext) => ({
  course: described(context, z.enum(['sudden', 'gradual']), {
    description: 'How the change came about; absent where the readings do not show which.',
    examples: ['gradual'],
  }).optional(),
  onset: described(
    context,
    z.strictObject({
      earliest: instantField(context, 'Start of the 95 % interval.', '2026-05-12T00:00:00.000Z'),
      latest: instantField(context, 'End of the interval.', '2026-05-28T00:00:00.000Z'),
    }),
    { description: 'When the change began; absent without a change.' },
  ).optional(),
  nextReading: nextReadingSchema(context).optional(),
  shortfallForecast: shortfallSchema(context).optional(),
  waiting: waitingSchema(context).optional(),
  cleaningTask: described(context, taskSchema(context), {
    description:
      'The maintenance task that cleans the screen, brought forward by this verdict; absent where nothing asks for a cleaning, for a period in the past, or without such a task.',
  }).optional(),
});

const readingFields = (context: SchemaContext) => ({
  belowRequired: described(context, z.array(belowRequiredSchema(context)), {
    description: 'Outlets whose measured flow is below required; absent where there are none.',
  }).optional(),
  setAside: described(context, z.array(setAsideSchema(context)), {
    description:
      'The latest values set aside because they differ by the factor of a unit, 20 at most; absent where there are none.',
  }).optional(),
  counts: countsSchema(context),
  from: instantField(
    context,
    'The first reading; absent without one.',
    '2026-04-01T10:00:00.000Z',
  ).optional(),
  to: instantField(context, 'The last reading; absent without one.', '2026-06-20T10:00:00.000Z').optional(),
  cleanedAt: described(context, z.array(z.iso.datetime()), {
    description: 'With `include=cleanedAt`: when screen or wet end were cleaned in that time, the latest 50.',
    examples: [[]],
  }).optional(),
  series: described(context, z.array(seriesSchema(context)), {
    description: 'With `include=series`: each measure day by day.',
  }).optional(),
});

export const conditionSchema = perContext((context) =>
  named(
    context,
    'Condition',
    z.strictObject({
      verdict: described(context, z.enum(VERDICTS), {
        description:
          'The main finding. `not-enough-readings`: none, or under 3 days with readings in every window. `baseline-forming`: the baseline is not complete. `as-expected`: no change since the baseline. `changed`: a change that no single cause explains with a probability of 0.8. `unexplained`: a change that no single cause explains at all. Else the code of the cause.',
        examples: ['clogged-intake'],
      }),
      provisional: described(context, z.boolean(), {
        description: 'True where the verdict precedes a complete baseline; absent otherwise.',
        examples: [true],
      }).optional(),
      summary: described(context, z.string(), {
        description: 'The answer in a few plain sentences.',
        examples: ['Loop "Kelp flume" has not changed since its baseline.'],
      }),
      causes: described(context, z.array(causeSchema(context)), {
        description: 'The fewest causes whose probabilities reach 0.9 together; empty without a change.',
      }),
      causePairs: described(context, z.array(z.array(causeField(context))), {
        description: 'Of `unexplained`: pairs of causes that explain the change together; absent otherwise.',
      }).optional(),
      statistic: described(context, statisticSchema(context), {
        description: 'What decides on a change; absent where too little was read.',
      }).optional(),
      baseline: baselineSchema(context).optional(),
      entries: described(context, entriesSchema(context), {
        description: 'Whether the loop differs from what was entered.',
      }),
      evidence: described(context, z.array(evidenceSchema(context)), {
        description: 'Each measure that was read, against its baseline.',
      }),
      detectable: described(context, z.array(detectableSchema(context)), {
        description: 'What the meters at hand can show.',
      }),
      ...outlookFields(context),
      ...readingFields(context),
      dataBasis: dataBasisField(context),
      cautions: described(context, z.array(cautionSchema(context)), {
        description: 'What to know before acting on it.',
      }),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'Whether a loop has changed since its baseline, why, and what follows.' },
  ),
);

export type ConditionAnswer = WithoutUnits<z.output<ReturnType<typeof conditionSchema>>>;
