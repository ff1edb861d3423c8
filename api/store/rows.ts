/** Rows read back as records. */
import type { RowCommon } from './tables.ts';

export const common = (row: RowCommon) => ({
  id: row.id,
  ...(typeof row.key === 'string' ? { key: row.key } : {}),
  version: row.version,
  createdAt: row.created_at,
  updatedAt: row.updated_at,
  name: row.name,
});
