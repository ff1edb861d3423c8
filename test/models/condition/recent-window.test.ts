/** What counts as now: steps, cleanings, noise. */
import { describe, expect, it } from 'vitest';
import { assessSeries } from '../../../models/condition/assess-series.ts';
import { cameAbout } from '../../../models/condition/onset.ts';
import { presentOf } from '../../../models/condition/recent-window.ts';
import type { Residual } from '../../../models/condition/residuals.ts';
import { expectClose } from '../../expect-close.ts';
import { normals } from '../calibration/synthetic.ts';
import { DAY, START, YEAR } from './synthetic.ts';

const HOUR = DAY / 24;

/** Residuals each `step` ms for some days, by the days that have passed. */
function residuals(
  days: number,
  valueAt: (day: number) => number,
  { step = DAY, noise = 0, seed = 1 } = {},
): readonly Residual[] {
  const normal = normals(seed);
  return Array.from({ length: Math.round((days * DAY) / step) }, (_, i) => {
    const value = valueAt((i * step) / DAY) + noise * normal();
    return { time: START + i * step, predicted: 1, measured: 1 + value, value };
  });
}

const assessed = (list: readonly Residual[], cleanings: readonly number[] = []) => {
  const found = assessSeries({ measure: 'flow', outlet: null, residuals: list }, cleanings);
  if (found === null) throw new Error('too few');
  return found;
};

describe('the present', () => {
  it.each([
    ['five days ago, read once a day', 5, DAY],
    ['twelve days ago, read once a day', 12, DAY],
    ['three days ago, read by the hour', 3, HOUR],
    ['fourteen days ago, read by the hour', 14, HOUR],
  ])('begins where it fell at once, %s', (_, ago, step) => {
    for (let seed = 1; seed <= 20; seed += 1) {
      const list = residuals(90, (day) => (day >= 90 - ago ? -0.2 : 0), { step, noise: 0.015, seed });
      const one = assessed(list);
      expectClose(one.residual, -0.2, { absolute: 0.03 });
      expect(one.since).toBeGreaterThanOrEqual(START + (90 - ago - 1) * DAY);
      expect(cameAbout(one)).toBe(true);
    }
  });

  it('is the last thirty days where they scatter alone, or drift slowly', () => {
    for (let seed = 1; seed <= 100; seed += 1) {
      const list = residuals(90, (day) => (-0.1 * day) / 365, { noise: 0.03, seed });
      expect(presentOf(list, null)).toHaveLength(30);
    }
  });

  it('is the same by day and by night where a controller has a setting for each', () => {
    const list = residuals(60, (day) => (day % 1 < 0.5 ? 0 : -0.04), { step: HOUR, noise: 0.01 });
    expect(presentOf(list, null)).toHaveLength(30 * 24);
  });

  it('begins with the last cleaning, once three readings were taken after it', () => {
    const list = residuals(60, (day) => (day < 57 ? -0.1 : 0));
    expectClose(assessed(list, [START + 56.5 * DAY]).residual, 0, { absolute: 1e-12 });
    expectClose(assessed(list.slice(0, 58), [START + 56.5 * DAY]).residual, -0.1, { absolute: 1e-12 });
  });
});

describe('a trend between cleanings', () => {
  const cleanings = [30, 60, 90, 120, 150].map((day) => START + day * DAY);
  const perYear = -0.8;
  const sawtooth = (noise = 0, seed = 1) =>
    residuals(180, (day) => ((day % 30) / 365.25) * perYear, { noise, seed });

  it('is that of each cycle, where the whole of them goes nowhere', () => {
    const one = assessed(sawtooth(), cleanings);
    expectClose(one.trend?.slope ?? Number.NaN, perYear, { relative: 1e-9 });
    expect(Math.abs(assessed(sawtooth()).trend?.slope ?? Number.NaN)).toBeLessThan(0.1 * Math.abs(perYear));
  });

  it('goes through the last cycle', () => {
    const { trend } = assessed(sawtooth(), cleanings);
    const at = (day: number) => (trend?.intercept ?? 0) + ((trend?.slope ?? 0) * (START + day * DAY)) / YEAR;
    expectClose(at(150), 0, { absolute: 1e-9 });
    expectClose(at(165), (15 / 365.25) * perYear, { absolute: 1e-9 });
  });

  it('has the true slope in its interval of 95 % in nine of ten seeded runs and more', () => {
    const seeds = Array.from({ length: 200 }, (_, i) => i + 1);
    const inside = seeds.filter((seed) => {
      const { trend } = assessed(sawtooth(0.02, seed), cleanings);
      return trend !== null && trend.interval.low <= perYear && perYear <= trend.interval.high;
    });
    expect(inside.length).toBeGreaterThanOrEqual(180);
  });
});

describe('what came about', () => {
  it('is not what was there from the first reading on, under noise', () => {
    const told = Array.from({ length: 100 }, (_, i) => i + 1).filter((seed) =>
      cameAbout(assessed(residuals(60, () => -0.06, { noise: 0.02, seed }))),
    );
    expect(told.length).toBeLessThanOrEqual(10);
  });

  it('is what grew', () => {
    expect(cameAbout(assessed(residuals(200, (day) => -0.001 * day, { noise: 0.02 })))).toBe(true);
  });
});
