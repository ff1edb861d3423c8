/** Makes the best design and the ranking a table, the best first. */
import type { z } from '@hono/zod-openapi';
import { tableOf } from '../../http/table-of.ts';
import type { Table } from '../../http/write-csv.ts';
import { designSchema } from './answer-schema.ts';

type Wire = z.input<ReturnType<typeof designSchema>>;

const rankingTable = tableOf(designSchema, 'ranking', [
  'candidate',
  { name: 'pump', at: 'pump.id' },
  { name: 'name', at: 'pump.name' },
  'count',
  'setting',
  'flow',
  'requiredHead',
  'head',
  'power',
  'annualEnergy',
  'annualCost',
  'presentValue',
  'pumpCost',
  'energyCost',
  'pipeCost',
  'trimCost',
]);

export const designTable = (wire: Wire): Table =>
  rankingTable(wire.best === null ? wire : { ...wire, ranking: [wire.best, ...wire.ranking] });
