/** Lists that are given up early, unions told apart by a key. */
import { z } from '@hono/zod-openapi';
import { describe, expect, it } from 'vitest';
import { boundedList } from '../../../api/fields/bounded-list.ts';
import { keyedUnion } from '../../../api/fields/keyed-union.ts';
import { documentedContext, schemaContext } from '../../../api/units/schema-context.ts';

const context = schemaContext({ system: 'metric', side: 'request' });
const doubled = z.codec(z.number(), z.number(), { decode: (n) => 2 * n, encode: (n) => n / 2 });

const pathsOf = (schema: z.ZodType, value: unknown) =>
  schema.safeParse(value).error?.issues.map(({ path }) => path.join('/')) ?? [];

describe('a bounded list', () => {
  const list = boundedList(context, () => z.strictObject({ n: doubled }), { min: 1, max: 100 });

  it('reads and writes its items', () => {
    expect(list.parse([{ n: 1 }, { n: 2 }])).toEqual([{ n: 2 }, { n: 4 }]);
    expect(z.encode(list, [{ n: 2 }])).toEqual([{ n: 1 }]);
  });

  it('tells where its items are wrong, ten of them at most', () => {
    expect(pathsOf(list, [{ n: 1 }, { n: 'x' }])).toEqual(['1/n']);
    expect(pathsOf(list, Array(50).fill({}))).toEqual(Array.from({ length: 10 }, (_, i) => `${i}/n`));
  });

  it('is told to be too long or too short before its items are looked at', () => {
    expect(pathsOf(list, [])).toEqual(['']);
    expect(pathsOf(list, Array(101).fill('x'))).toEqual(['']);
    expect(pathsOf(list, 'x')).toEqual(['']);
  });
});

describe('a keyed union', () => {
  const options = [
    { key: 'a', schema: z.strictObject({ a: doubled, c: z.number().optional() }) },
    { key: 'b', schema: z.strictObject({ b: z.string() }) },
  ] as const;
  const make = (where: typeof context) =>
    keyedUnion<{ a: number; c?: number | undefined } | { b: string }>(where, [...options]);

  it('reads and writes by the option whose key is there', () => {
    for (const union of [make(context), make(documentedContext('request'))]) {
      expect(union.parse({ a: 1 })).toEqual({ a: 2 });
      expect(z.encode(union, { a: 2 })).toEqual({ a: 1 });
      expect(z.encode(union, { b: 'x' })).toEqual({ b: 'x' });
    }
  });

  it.each([
    [{ a: 'x' }, 'a'],
    [{ a: 1, c: 'x' }, 'c'],
    [{ b: 1 }, 'b'],
    [{ c: 1 }, ''],
    [null, ''],
    [[], ''],
  ])('tells where %j is wrong', (value, path) => {
    expect(pathsOf(make(context), value)).toEqual([path]);
  });

  it('does not take an inherited key for one', () => {
    const odd = keyedUnion<unknown>(context, [
      { key: 'toString', schema: z.unknown() },
      { key: 'a', schema: z.strictObject({ a: z.number() }) },
    ]);
    expect(odd.parse({ a: 1 })).toEqual({ a: 1 });
  });
});
