/** Documents what was measured on a loop at one moment. */
import { z } from '@hono/zod-openapi';
import { boundedList } from '../../fields/bounded-list.ts';
import { bodyInstant } from '../../fields/instant.ts';
import { READINGS_MAX } from '../../fields/limits.ts';
import { described, named } from '../../units/described.ts';
import { type EnteredQuantity, entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const FLOW = { minimum: 0, maximum: 10 } as const;
const PRESSURE_MAX = 1e7;
/** All of the air's pressure, at sea level and a little more [Pa]. */
const VACUUM = -110_000;

const SETTING: EnteredQuantity = {
  description: "What the pump was set to, 0 where it was stopped; else within the installed pump's settings.",
  minimum: 0,
  maximum: 100,
  example: 80,
};
const POWER_ENTRY: EnteredQuantity = {
  description: 'Electrical power drawn by the pumps of the loop together.',
  minimum: 0,
  maximum: 1e6,
  example: 118,
};
const FLOW_ENTRY: EnteredQuantity = {
  description:
    'Total flow. A flow of 0 while the pump runs needs a head or both pressures, which are then those of a closed valve.',
  ...FLOW,
  example: 8200,
};
const HEAD_ENTRY: EnteredQuantity = {
  description: 'Head across the pump.',
  minimum: -100,
  maximum: 1_000,
  example: 2.1,
};
const pressureEntry = (place: string, example: number): EnteredQuantity => ({
  description: `Pressure just ${place} the pump as its gauge shows it, at the pump's level, above that of the air; in pipes of unlike bores state \`gauges\` of the loop.`,
  minimum: VACUUM,
  maximum: PRESSURE_MAX,
  example,
});

const outletFlowsField = (context: SchemaContext) =>
  described(
    context,
    z.record(
      z.string().min(1).max(120),
      entered(context, 'flow', { description: 'Flow of the outlet.', ...FLOW, example: 3100 }),
    ),
    { description: 'Flow of outlets by their names.', examples: [{ 'far end': 3100 }] },
  ).optional();

const shape = (context: SchemaContext) => ({
  time: bodyInstant(context, {
    description: 'When it was measured; not in the future.',
    example: '2026-01-15T11:30:00.000Z',
  }),
  setting: entered(context, 'setting', SETTING),
  power: entered(context, 'power', POWER_ENTRY).optional(),
  flow: entered(context, 'flow', FLOW_ENTRY).optional(),
  outletFlows: outletFlowsField(context),
  head: entered(context, 'head', HEAD_ENTRY).optional(),
  suctionPressure: entered(context, 'pressure', pressureEntry('before', 2.4)).optional(),
  dischargePressure: entered(context, 'pressure', pressureEntry('behind', 23)).optional(),
});

export const readingSchema = perContext((context) =>
  named(context, 'Reading', z.strictObject(shape(context)), {
    description: 'What was measured on a loop at one moment; what was not measured is left out.',
  }),
);

export const readingRows = perContext((context) =>
  boundedList(context, () => readingSchema(context), { min: 1, max: READINGS_MAX }),
);

export const readingsInput = perContext((context) =>
  named(
    context,
    'Readings',
    z.strictObject({
      readings: described(context, readingRows(context), {
        description: `One to ${READINGS_MAX} readings; their times do not fall.`,
      }),
    }),
    { description: 'Readings of a loop: all are stored, or none.' },
  ),
);
