import { describe, expect, it } from 'vitest';
import { benchRow } from './bench-row.ts';
import { benchTable } from './bench-table.ts';
import { median } from './median.ts';

const row = (ratio: number, limit: { readonly atMost: number } | { readonly atLeast: number }) =>
  benchRow({ name: 'one / other', ratio, limit, detail: 'one 1 ms, other 2 ms' });

describe('a row of the bench', () => {
  it('holds up to a limit that it must not exceed, the limit included', () => {
    expect(row(0.2, { atMost: 0.2 }).holds).toBe(true);
    expect(row(0.21, { atMost: 0.2 }).holds).toBe(false);
  });

  it('holds from a limit that it must reach on', () => {
    expect(row(0.5, { atLeast: 0.5 }).holds).toBe(true);
    expect(row(0.49, { atLeast: 0.5 }).holds).toBe(false);
  });

  it('does not hold without a ratio', () => {
    expect(row(Number.NaN, { atMost: 0.2 }).holds).toBe(false);
    expect(row(Number.NaN, { atLeast: 0.5 }).holds).toBe(false);
  });
});

describe('the table', () => {
  it('shows case, ratio, limit and whether it holds, with the figures below each', () => {
    const lines = benchTable([row(0.123456, { atMost: 0.2 }), row(0.4, { atLeast: 0.5 })]).split('\n');
    expect(lines[0]?.split(/ {2,}/)).toEqual(['case', 'ratio', 'limit', 'holds']);
    expect(lines[2]?.split(/ {2,}/)).toEqual(['one / other', '0.123', '<= 0.2', 'yes']);
    expect(lines[3]).toBe('  one 1 ms, other 2 ms');
    expect(lines[4]?.split(/ {2,}/)).toEqual(['one / other', '0.400', '>= 0.5', 'NO']);
  });
});

describe('the median', () => {
  it('is the value in the middle, or half way between the two there', () => {
    expect(median([9, 1, 5])).toBe(5);
    expect(median([9, 1, 5, 6])).toBe(5.5);
  });

  it('does not exist of nothing', () => {
    expect(() => median([])).toThrow('nothing');
  });
});
