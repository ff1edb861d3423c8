/** Prepared statements: one for each text, never that of another text. */
import { expect, it } from 'vitest';
import { preparedOnce } from '../../../api/store/prepared-once.ts';

it('prepares a text once and keeps the statements of a limited number of texts', () => {
  const asked: string[] = [];
  const prepare = preparedOnce((sql) => {
    asked.push(sql);
    return { sql };
  });
  expect(prepare('select 1')).toBe(prepare('select 1'));
  expect(prepare('select 2')).toEqual({ sql: 'select 2' });
  expect(asked).toEqual(['select 1', 'select 2']);
  for (let other = 0; other < 1_000; other += 1) prepare(`other ${other}`);
  expect(prepare('select 1')).toEqual({ sql: 'select 1' });
  expect(asked.filter((sql) => sql === 'select 1')).toHaveLength(2);
});
