/** The rates of a few loops a row, so that none of the rules that keep them can be lost unseen; the many are in RESULTS.md. */
import { describe, expect, it } from 'vitest';
import type { RateRow } from './row.ts';
import { SUBJECTS } from './rows.ts';

/** Loops a row: enough for each subject to be met, few enough for a minute. */
const LOOPS: Readonly<Record<string, number>> = {
  'Healthy loops reported in a year': 1,
  'Clogs found': 1,
  Causes: 2,
  'Meters that drift': 1,
  Calibration: 6,
  Shortfall: 1,
  Waiting: 1,
  Cleanings: 2,
  'Stopped pumps': 3,
  'Next reading': 2,
  Entries: 3,
};

/** Of one loop a row, so many of all may be reported: what one in twenty is of them. */
const HEALTHY_MOST = 2;

const missed = (rows: readonly RateRow[]) =>
  rows.filter(({ holds }) => !holds).map(({ name, figure }) => `${name}: ${figure}`);

describe('rates of few loops', () => {
  for (const { name, rows } of SUBJECTS) {
    it(`keep their limits: ${name}`, { timeout: 120_000 }, () => {
      const found = missed(rows({ loops: LOOPS[name] ?? 1 }));
      const most = name.startsWith('Healthy') ? HEALTHY_MOST : 0;
      expect(found.slice(most)).toEqual([]);
    });
  }
});
