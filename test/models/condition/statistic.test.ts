/** The likelihood ratio and the rule of persistence, by hand. */
import { describe, expect, it } from 'vitest';
import type { Compared, Term, Window } from '../../../models/condition/evidence.ts';
import type { Signature } from '../../../models/condition/signatures.ts';
import { isReported, statisticOf, THRESHOLD } from '../../../models/condition/statistic.ts';
import { gaugeOf } from '../../../models/readings/measure.ts';
import { expectClose } from '../../expect-close.ts';

const term = (place: number, difference: number, facts: Partial<Term> = {}): Term => ({
  ...{ place, difference, variance: 1e-4, degrees: 30 },
  ...facts,
});

const signature = (points: Signature['points'], cause: Signature['cause'] = 'clogged-intake'): Signature => ({
  ...{ cause, prior: 0.2, points },
});

const window = (terms: readonly Term[], days = 30): Window => ({ days, terms });

/** A series whose last days have a residual. */
const series = (place: number, values: readonly number[], everyDays = 1): Compared => ({
  gauge: gaugeOf(place === 0 ? 'flow' : 'power'),
  values: values.map((residual, i) => ({
    ...{ day: 100 + i * everyDays, time: 100 + i * everyDays, residual },
    ...{ predicted: 1, headPressure: 1, readingCount: 1 },
  })),
  accuracy: 0.02,
  noise: {
    ...{ posterior: [{ phi: 0, weight: 1, variance: 1e-4 }], deviation: 0.01, correlation: 0, degrees: 30 },
    likeliest: {
      variance: 1e-4,
      fit: { coefficients: [0], inverse: [[1]], squares: 1e-4, logDeterminant: 0 },
    },
  },
  baseline: { mean: 0, variance: 1e-5 },
});

describe('the statistic', () => {
  it('is (nu+1) ln(1 + d^2/(nu V)) where a shift meets the difference', () => {
    const found = statisticOf(
      [window([term(0, -0.05)])],
      [signature([{ magnitude: 0.05, shifts: [-0.05] }])],
    );
    expectClose(found?.value ?? Number.NaN, 31 * Math.log(1 + 0.05 ** 2 / (30 * 1e-4)), { relative: 1e-12 });
  });

  it('comes near (d/s)^2 with many degrees, of a normal error', () => {
    const many = { degrees: 1e7 };
    const found = statisticOf(
      [window([term(0, -0.05, many), term(1, -0.02, many)])],
      [signature([{ magnitude: 0.05, shifts: [-0.05, -0.02] }])],
    );
    expectClose(found?.value ?? Number.NaN, 25 + 4, { relative: 1e-4 });
  });

  it('is that of the window, cause and magnitude that say most', () => {
    const found = statisticOf(
      [window([term(0, -0.03)], 30), window([term(0, -0.06)], 7)],
      [
        signature([
          { magnitude: 0.02, shifts: [-0.02] },
          { magnitude: 0.06, shifts: [-0.06] },
        ]),
        signature([{ magnitude: 0.3, shifts: [-0.3] }], 'worn-pump'),
      ],
    );
    expect(found).toMatchObject({
      window: { days: 7 },
      point: { magnitude: 0.06 },
      signature: { cause: 'clogged-intake' },
    });
  });

  it('is none without a window', () => {
    expect(statisticOf([], [signature([{ magnitude: 0.05, shifts: [-0.05] }])])).toBeNull();
  });
});

describe('a change', () => {
  const present = { now: 120, after: 0 };
  const reported = (magnitude: number, values: readonly number[], everyDays = 1) => {
    const found = statisticOf(
      [window([term(0, -magnitude)])],
      [signature([{ magnitude, shifts: [-magnitude] }])],
    );
    if (found === null) throw new Error('no statistic');
    return isReported(found, [series(0, values, everyDays)], present);
  };

  it('is reported beyond the threshold of 16', () => {
    expect(THRESHOLD).toBe(16);
    // Just below and above four standard errors.
    expect(reported(0.039, Array(20).fill(-0.039))).toBe(false);
    expect(reported(0.05, Array(20).fill(-0.05))).toBe(true);
  });

  it('is not where it is gone again, of the last seven days less than half', () => {
    expect(reported(0.06, [...Array(13).fill(-0.06), ...Array(7).fill(-0.025)])).toBe(false);
    expect(reported(0.06, [...Array(13).fill(-0.06), ...Array(7).fill(-0.035)])).toBe(true);
  });

  it('looks at the last three values where seven days hold fewer', () => {
    const weekly = (last: number) => reported(0.06, [-0.06, -0.06, ...Array(3).fill(last)], 5);
    expect(weekly(-0.02)).toBe(false);
    expect(weekly(-0.05)).toBe(true);
  });

  it('is not below 3 %, as sure as it may be', () => {
    const found = statisticOf(
      [window([term(0, -0.025, { variance: 1e-6 })])],
      [signature([{ magnitude: 0.025, shifts: [-0.025] }])],
    );
    if (found === null) throw new Error('no statistic');
    expect(found.value).toBeGreaterThan(THRESHOLD);
    expect(isReported(found, [series(0, Array(20).fill(-0.025))], present)).toBe(false);
    // It has grown beyond since.
    expect(
      isReported(found, [series(0, [...Array(13).fill(-0.02), ...Array(7).fill(-0.034)])], present),
    ).toBe(true);
  });
});
