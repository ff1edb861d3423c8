/** The readings of a series in a stretch of time, as a condition. */
import { type Expression, expressionBuilder, type SqlBool } from 'kysely';
import type { Tables } from '../../store/tables.ts';
import type { ReadingChoice } from './contract.ts';

/** On readings and on the flows of their outlets alike. */
export function isChosen(
  series: number,
  { from, before }: Pick<ReadingChoice, 'from' | 'before'>,
): Expression<SqlBool> {
  const column = expressionBuilder<Tables, 'reading' | 'reading_outlet'>();
  return column.and([column('series', '=', series), column('time', '>=', from), column('time', '<', before)]);
}
