/** The conditions that queries on all kinds of records share. */
import { type Expression, expressionBuilder, type SqlBool } from 'kysely';
import type { Tables } from './tables.ts';
import type { ExpectedVersion, InSite, PageRequest, RecordKey } from './versions.ts';

type Condition = Expression<SqlBool>;

const column = expressionBuilder<Tables, 'pump' | 'loop' | 'tariff' | 'schedule'>();

export const isRecord = ({ siteId, id }: RecordKey): Condition =>
  column.and([column('site_id', '=', siteId), column('id', '=', id)]);

export const hasVersion = (expected: ExpectedVersion): Condition =>
  expected === 'any' ? column.lit(true) : column('version', '=', expected);

/** The column of a user's key; without one where nothing is said of it. */
export const keyColumn = (key: string | null | undefined) => (key === undefined ? {} : { key });

/** The records that a page may show: of its site, of its name, after its start. */
export function mayBeOnPage({ siteId, name, after }: PageRequest & InSite): Condition {
  const conditions = [column('site_id', '=', siteId)];
  if (name !== undefined) conditions.push(column('name', '=', name));
  if (after === null) return column.and(conditions);
  const place = column.refTuple('created_at', 'id');
  return column.and([...conditions, column(place, '>', column.tuple(after.createdAt, after.id))]);
}
