/** Texts of statements: made once for a number of parameters, a bounded number of them kept. */
import { CompiledQuery } from 'kysely';
import { expect, it } from 'vitest';
import { compiledOnce, KEPT_LENGTHS } from '../../../api/store/compiled-once.ts';

const counted = () => {
  let made = 0;
  const compiled = compiledOnce<unknown>();
  const of = (length: number) =>
    compiled(length, () => {
      made += 1;
      return { compile: () => CompiledQuery.raw(`${length} parameters`) };
    }).sql;
  return { of, made: () => made };
};

it('makes the text for a number of parameters once, never that of another number', () => {
  const { of, made } = counted();
  expect([of(2), of(3), of(2)]).toEqual(['2 parameters', '3 parameters', '2 parameters']);
  expect(made()).toBe(2);
});

it('keeps no text of a longer list', () => {
  const { of, made } = counted();
  expect([of(KEPT_LENGTHS + 1), of(KEPT_LENGTHS + 1)]).toHaveLength(2);
  expect(made()).toBe(2);
});
