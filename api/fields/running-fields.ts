/** Documents the parameters that price the running of a pump. */
import type { SchemaContext } from '../units/schema-context.ts';
import type { NumberField } from './number-field.ts';
import { queryDecimal, queryWhole } from './query-field.ts';

/** More pumps in parallel than any manifold takes. */
export const COUNT_MAX = 20;

export const PRICE = {
  description: "Money per kWh; the site's price where it is left out. Negative where feeding in is paid.",
  minimum: -1000,
  maximum: 1000,
  example: 0.21,
} as const satisfies NumberField;

export const HOURS_PER_DAY = {
  description: 'Hours a day at the setting; standby for the rest. 24 where it is left out.',
  minimum: 0,
  maximum: 24,
  example: 24,
} as const satisfies NumberField;

export const COUNT = {
  description: 'Equal pumps in parallel; 1 where it is left out.',
  minimum: 1,
  maximum: COUNT_MAX,
  example: 1,
} as const satisfies NumberField;

export const HOURS_DEFAULT = 24;

export const runningQuery = (context: SchemaContext) => ({
  count: queryWhole(context, COUNT).optional(),
  price: queryDecimal(context, PRICE).optional(),
  hoursPerDay: queryDecimal(context, HOURS_PER_DAY).optional(),
});
