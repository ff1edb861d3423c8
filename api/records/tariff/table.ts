/** Makes stored tariffs a table. */
import type { z } from '@hono/zod-openapi';
import type { Table } from '../../http/csv.ts';
import type { tariffList } from './schema.ts';

const NAMES = ['id', 'key', 'name', 'version', 'createdAt', 'updatedAt'] as const;

export const tariffTable = ({ items }: z.input<ReturnType<typeof tariffList>>): Table => ({
  columns: NAMES.map((name) => ({ name })),
  rows: items.map((item) => NAMES.map((name) => item[name])),
});
