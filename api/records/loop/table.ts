/** Makes stored loops a table. */
import type { z } from '@hono/zod-openapi';
import type { Table } from '../../http/csv.ts';
import type { loopItem } from './schema.ts';

type Item = z.input<ReturnType<typeof loopItem>>;

const COLUMNS = [
  { name: 'id' },
  { name: 'name' },
  { name: 'version' },
  { name: 'createdAt' },
  { name: 'updatedAt' },
  { name: 'pumpElevation', quantity: 'elevation' },
] as const;

export const loopTable = ({ items }: { items: readonly Item[] }): Table => ({
  columns: COLUMNS,
  rows: items.map(({ id, name, version, createdAt, updatedAt, pumpElevation }) => [
    id,
    name,
    version,
    createdAt,
    updatedAt,
    pumpElevation,
  ]),
});
