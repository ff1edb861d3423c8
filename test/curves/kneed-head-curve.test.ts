/** Head curves from knot to knot, where no sum of powers meets the points. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitHeadCurve } from '../../curves/fit-head-curve.ts';
import { headAt, headSlopeAt, type PiecewiseHead, risingFlows } from '../../curves/head-curve.ts';
import { expectClose } from '../expect-close.ts';
import { KNEED_TABLES, SUMS_OF_POWERS } from '../reference/head-curves.ts';
import { expectValue } from './expect-value.ts';

type Pair = readonly [flow: number, head: number];
const fullSpeed = (pairs: readonly Pair[]) => pairs.map(([flow, head]) => ({ flow, head, speedRatio: 1 }));

function piecewiseThrough(pairs: readonly Pair[]): PiecewiseHead {
  const curve = expectValue(fitHeadCurve(fullSpeed(pairs)));
  if (curve.shape !== 'piecewise') throw new Error(`expected knots, got ${curve.shape}`);
  return curve;
}

const rms = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value ** 2, 0) / values.length);

describe('a head curve from knot to knot', () => {
  it.each(KNEED_TABLES)(
    'has the slopes and heads of $name ($source)',
    ({ points, slopes, heads, tolerance }) => {
      const curve = piecewiseThrough(points);
      expect(curve.knots.map(({ flow, head }) => [flow, head])).toEqual(points);
      for (const [index, slope] of slopes.entries()) {
        expectClose(1000 * (curve.knots[index]?.slope ?? Number.NaN), slope, {
          relative: tolerance,
          absolute: 1e-12,
        });
      }
      for (const [flow, head] of heads) expectClose(headAt(curve, flow), head, { relative: tolerance });
    },
  );

  it('meets every point, and has no standard error without spare points', () => {
    const curve = piecewiseThrough(KNEED_TABLES[0].points);
    expect(curve.standardError).toBeNull();
    expectClose(curve.r2 ?? 0, 1, { relative: 1e-12 });
    for (const residual of curve.residuals) expectClose(residual, 0, { absolute: 1e-12 });
  });

  it('takes points within 1 % of the largest flow as one knot at their mean, but one at flow 0 as shutoff', () => {
    const curve = piecewiseThrough([
      [0, 8.1],
      [100, 7.9],
      [3000, 7.8],
      [6000, 7.3],
      [9000, 6.5],
      [10_500, 5.6],
      [11_450, 4.3],
      [11_550, 4.1],
      [12_000, 2.5],
    ]);
    expect(curve.knots.map(({ flow }) => flow)).toEqual([0, 3000, 6000, 9000, 10_500, 11_500, 12_000]);
    expectClose(curve.knots[0]?.head ?? 0, 8, { relative: 1e-12 });
    expectClose(curve.knots[5]?.head ?? 0, 4.2, { relative: 1e-12 });
    expect(curve.degreesOfFreedom).toBe(2);
    const squares = curve.residuals.reduce((sum, residual) => sum + residual ** 2, 0);
    expectClose(curve.standardError ?? 0, Math.sqrt(squares / 2), { relative: 1e-12 });
  });

  it('has a slope that agrees with differences of its head, before, between and beyond the knots', () => {
    for (const { points } of KNEED_TABLES) {
      const curve = piecewiseThrough(points);
      for (const share of [0.1, 0.3, 0.62, 0.87, 0.97, 1.2]) {
        const flow = share * curve.flowScale;
        const step = 1e-5 * curve.flowScale;
        const difference = (headAt(curve, flow + step) - headAt(curve, flow - step)) / (2 * step);
        expectClose(headSlopeAt(curve, flow), difference, { relative: 1e-4 });
      }
    }
  });

  it('turns once where points droop, at the knot of the greatest head', () => {
    const drooping = piecewiseThrough(KNEED_TABLES[3].points);
    expect(drooping.drooping).toBe(true);
    expect(risingFlows(drooping)).toEqual([2000]);
    expect(risingFlows(piecewiseThrough(KNEED_TABLES[0].points))).toEqual([]);
  });

  it('runs one way between knots, whatever they are', () => {
    const steps = fc.array(
      fc.tuple(fc.double({ min: 0.05, max: 1, noNaN: true }), fc.double({ min: 0.001, max: 9, noNaN: true })),
      { minLength: 5, maxLength: 9 },
    );
    fc.assert(
      fc.property(steps, fc.double({ min: 0, max: 1, noNaN: true }), (drops, first) => {
        let [flow, head] = [first, 90];
        const pairs: Pair[] = [[flow, head]];
        for (const [along, down] of drops) {
          flow += along;
          head -= down;
          pairs.push([flow, head]);
        }
        const fit = fitHeadCurve(fullSpeed(pairs));
        if (!fit.ok || fit.value.shape !== 'piecewise') return;
        let before = Number.POSITIVE_INFINITY;
        for (let share = 0; share <= 1.3; share += 0.005) {
          const here = headAt(fit.value, share * fit.value.flowScale);
          expect(here).toBeLessThanOrEqual(before + 1e-12);
          before = here;
        }
      }),
      { seed: 1 },
    );
  });

  it('survives storage as JSON bit for bit', () => {
    const curve = piecewiseThrough(KNEED_TABLES[1].points);
    expect(JSON.parse(JSON.stringify(curve))).toEqual(curve);
  });
});

describe('the choice between knots and a sum of powers', () => {
  it.each(SUMS_OF_POWERS)(
    'goes by the residual of the sum: $share ($source)',
    ({ points, share, tolerance, powers }) => {
      const curve = expectValue(fitHeadCurve(fullSpeed(points)));
      const largest = Math.max(...points.map(([, head]) => head));
      const residuals = curve.shape === 'piecewise' ? curve.sumResiduals : curve.residuals;
      expectClose(rms(residuals ?? []) / largest, share, { relative: tolerance });
      expect(curve.shape).toBe(share > 0.01 ? 'piecewise' : 'sum-of-powers');
      if (curve.shape === 'sum-of-powers') expect(curve.powers).toEqual(powers);
    },
  );

  it('keeps the sum where there are fewer than five knots, or knots that neither fall nor droop once', () => {
    const four = expectValue(
      fitHeadCurve(
        fullSpeed([
          [0, 8],
          [6000, 7.9],
          [9000, 7.5],
          [10_000, 2],
        ]),
      ),
    );
    expect(four.shape).toBe('sum-of-powers');
    const wavy = expectValue(
      fitHeadCurve(
        fullSpeed([
          [0, 8],
          [2000, 6],
          [4000, 7.4],
          [6000, 6.9],
          [8000, 5.5],
          [10_000, 2],
        ]),
      ),
    );
    expect(wavy.shape).toBe('sum-of-powers');
  });
});
