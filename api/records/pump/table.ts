/** Makes stored pumps a table. */
import type { z } from '@hono/zod-openapi';
import type { Table } from '../../http/csv.ts';
import type { pumpItem } from './schema.ts';

type Item = z.input<ReturnType<typeof pumpItem>>;

const COLUMNS = [
  { name: 'id' },
  { name: 'name' },
  { name: 'version' },
  { name: 'createdAt' },
  { name: 'updatedAt' },
  { name: 'settingMin', quantity: 'setting' },
  { name: 'settingMax', quantity: 'setting' },
  { name: 'settingStep', quantity: 'setting' },
  { name: 'standbyPower', quantity: 'power' },
  { name: 'price' },
] as const;

export const pumpTable = ({ items }: { items: readonly Item[] }): Table => ({
  columns: COLUMNS,
  rows: items.map(({ id, name, version, createdAt, updatedAt, settings, standbyPower, price }) => [
    id,
    name,
    version,
    createdAt,
    updatedAt,
    settings?.min,
    settings?.max,
    settings?.step,
    standbyPower,
    price,
  ]),
});
