import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atSpeed } from '../../curves/affinity.ts';
import { fitHeadCurve } from '../../curves/fit-head-curve.ts';
import { headAt, headSlopeAt, risingFlows } from '../../curves/head-curve.ts';
import { HEAD_CURVE_CANDIDATES } from '../../curves/head-curve-candidates.ts';
import { expectClose } from '../expect-close.ts';
import { BRASCH_WHYMAN_PUMP, SCHASCHKE_PUMP } from '../reference/pump-curves.ts';
import { expectValue } from './expect-value.ts';
import { sumOfPowersThrough } from './sum-of-powers-through.ts';

type Pair = readonly [flow: number, head: number];
const fullSpeed = (pairs: readonly Pair[]) => pairs.map(([flow, head]) => ({ flow, head, speedRatio: 1 }));

describe('a head curve fitted to published points', () => {
  it(`meets the table within 0.5 % of its largest head (${BRASCH_WHYMAN_PUMP.source})`, () => {
    const { points } = BRASCH_WHYMAN_PUMP;
    const curve = expectValue(fitHeadCurve(points.map((point) => ({ ...point, speedRatio: 1 }))));
    for (const { flow, head } of points) expectClose(headAt(curve, flow), head, { absolute: 0.005 * 20.63 });
    expect(curve.r2).toBeGreaterThan(0.9999);
    expect(curve.drooping).toBe(false);
  });

  it(`recovers 12 - 70 Q - 4300 Q^2 (${SCHASCHKE_PUMP.source})`, () => {
    const [a = 0, b = 0, c = 0] = SCHASCHKE_PUMP.coefficients;
    const flows = [0, 0.008, 0.016, 0.024, 0.04];
    const curve = sumOfPowersThrough(fullSpeed(flows.map((flow) => [flow, a + b * flow + c * flow ** 2])));
    expect(curve.powers).toEqual([0, 1, 2]);
    expectClose(curve.coefficients[0] ?? 0, a, { relative: 1e-12 });
    expectClose((curve.coefficients[1] ?? 0) / curve.flowScale, b, { relative: 1e-10 });
    expectClose((curve.coefficients[2] ?? 0) / curve.flowScale ** 2, c, { relative: 1e-10 });
  });
});

describe('fitting a head curve', () => {
  it('tries 22 sets of powers', () => {
    expect(HEAD_CURVE_CANDIDATES).toHaveLength(6 + 15 + 1);
    expect(new Set(HEAD_CURVE_CANDIDATES.map(String)).size).toBe(22);
  });

  it('recovers every falling curve of its candidates exactly, in any units of flow', () => {
    const term = fc.double({ min: 0.5, max: 5, noNaN: true });
    const powers = fc.constantFrom(...HEAD_CURVE_CANDIDATES);
    fc.assert(
      fc.property(powers, term, term, term, fc.constantFrom(1, 3600, 1e-4), (truth, b1, b2, b3, unit) => {
        const head = (x: number): number =>
          20 - truth.reduce((total, power, index) => total + ([b1, b2, b3][index] ?? 0) * x ** power, 0);
        const xs = [0, 0.2, 0.35, 0.5, 0.65, 0.8, 0.9, 1];
        const curve = sumOfPowersThrough(fullSpeed(xs.map((x) => [x * unit, head(x)])));
        expect(curve.powers).toEqual([0, ...truth]);
        for (const x of [0.1, 0.42, 0.77]) expectClose(headAt(curve, x * unit), head(x), { relative: 1e-9 });
      }),
      { seed: 1 },
    );
  });

  it('reduces points taken at other speeds by the affinity laws', () => {
    const at = (flow: number, speedRatio: number) => ({
      ...atSpeed({ flow, head: 10 - 3 * flow ** 2, speedRatio }),
      speedRatio,
    });
    const curve = sumOfPowersThrough([at(0, 0.5), at(0.6, 0.7), at(1, 1), at(0.3, 0.4)]);
    expect(curve.powers).toEqual([0, 2]);
    expect(curve.range).toEqual({ min: 0, max: 1 });
    expectClose(curve.coefficients[1] ?? 0, -3, { relative: 1e-10 });
  });

  it('gives the same curve whatever unit the flows are in', () => {
    const pairs: readonly Pair[] = [
      [0, 5.1],
      [6, 4.5],
      [10.5, 3.3],
      [14, 1.9],
      [3, 4.95],
    ];
    const one = sumOfPowersThrough(fullSpeed(pairs));
    const other = sumOfPowersThrough(fullSpeed(pairs.map(([flow, head]) => [flow / 3600, head])));
    expect(other.powers).toEqual(one.powers);
    for (const [index, coefficient] of one.coefficients.entries()) {
      expectClose(other.coefficients[index] ?? 0, coefficient, { relative: 1e-10 });
    }
  });

  it('keeps residuals in the order given: entered less fitted', () => {
    const pairs: readonly Pair[] = [
      [14, 1.9],
      [0, 5.1],
      [10.5, 3.3],
      [6, 4.5],
    ];
    const curve = expectValue(fitHeadCurve(fullSpeed(pairs)));
    for (const [index, [flow, head]] of pairs.entries()) {
      expectClose(curve.residuals[index] ?? Number.NaN, head - headAt(curve, flow), { absolute: 1e-12 });
    }
  });

  it('counts degrees of freedom as points less powers less one, repeats included', () => {
    const curve = sumOfPowersThrough(
      fullSpeed([
        [0, 5],
        [0, 5.02],
        [1, 4.4],
        [1, 4.38],
        [2, 2.5],
      ]),
    );
    expect(curve.powers).toHaveLength(2);
    expect(curve.degreesOfFreedom).toBe(3);
    const sse = curve.residuals.reduce((total, residual) => total + residual ** 2, 0);
    expectClose(curve.standardError ?? Number.NaN, Math.sqrt(sse / 3), { relative: 1e-12 });
  });

  it('allows one power only on three distinct flows, two on four, three on five', () => {
    const head = (x: number): number => 10 - x - 2 * x ** 2 - 3 * x ** 3;
    const on = (...xs: number[]) =>
      sumOfPowersThrough(fullSpeed(xs.map((x) => [x, head(x)]))).powers.length - 1;
    expect(on(0, 0.5, 1, 1)).toBe(1);
    expect(on(0, 0.3, 0.7, 1)).toBeLessThanOrEqual(2);
    expect(on(0, 0.25, 0.5, 0.75, 1)).toBe(3);
  });
});

describe('rising and drooping', () => {
  it('never gives a curve that rises to points that only fall', () => {
    const steps = fc.array(
      fc.tuple(fc.double({ min: 0.05, max: 1, noNaN: true }), fc.double({ min: 0.001, max: 2, noNaN: true })),
      { minLength: 3, maxLength: 9 },
    );
    fc.assert(
      fc.property(steps, fc.double({ min: 0, max: 1, noNaN: true }), (drops, first) => {
        let [flow, head] = [first, 40];
        const pairs: Pair[] = [[flow, head]];
        for (const [along, down] of drops) {
          flow += along;
          head -= down;
          pairs.push([flow, head]);
        }
        const fit = fitHeadCurve(fullSpeed(pairs));
        if (!fit.ok) {
          expect(fit.failure.code).toBe('no-falling-curve');
          return;
        }
        expect(fit.value.drooping).toBe(false);
        expect(risingFlows(fit.value)).toEqual([]);
        for (let share = 0; share <= 1.5; share += 0.01) {
          const allowed = (1e-9 * 40) / fit.value.flowScale;
          expect(headSlopeAt(fit.value, share * fit.value.flowScale)).toBeLessThanOrEqual(allowed * 1.000001);
        }
      }),
      { seed: 1 },
    );
  });

  it('keeps the droop of a table that droops', () => {
    // An invented table whose head peaks near a third of its flow.
    const curve = expectValue(
      fitHeadCurve(
        fullSpeed([
          [0, 10],
          [1, 10.6],
          [2, 10.7],
          [3, 9.9],
          [4, 8],
          [5, 5.2],
        ]),
      ),
    );
    expect(curve.drooping).toBe(true);
    const [peak = 0] = risingFlows(curve);
    expect(peak).toBeGreaterThan(1);
    expect(peak).toBeLessThan(2.5);
    expect(headAt(curve, peak)).toBeGreaterThan(headAt(curve, 0) + 0.5);
    expect(headSlopeAt(curve, 9)).toBeLessThan(0);
  });

  it('does not call an equal head at a higher flow a droop', () => {
    const flat = expectValue(
      fitHeadCurve(
        fullSpeed([
          [0, 5],
          [1, 5],
          [2, 4.2],
          [3, 2.5],
        ]),
      ),
    );
    expect(flat.drooping).toBe(false);
    expect(risingFlows(flat)).toEqual([]);
  });

  it('does not take the rounding of a speed reduction for a droop', () => {
    const curve = expectValue(
      fitHeadCurve([
        { flow: 0, head: 5, speedRatio: 1 },
        { flow: 0.7, head: 5 * 0.7 ** 2 * (1 + 1e-12), speedRatio: 0.7 },
        { flow: 2, head: 3, speedRatio: 1 },
      ]),
    );
    expect(curve.drooping).toBe(false);
  });

  it.each([
    [
      'rises all along',
      [
        [0, 1],
        [1, 2],
        [2, 3],
      ],
    ],
    [
      'is flat',
      [
        [0, 5],
        [1, 5],
        [2, 5],
        [3, 5],
      ],
    ],
    [
      'is all zero',
      [
        [0, 0],
        [1, 0],
        [2, 0],
      ],
    ],
  ] satisfies [string, Pair[]][])('refuses a table that %s', (_, pairs) => {
    expect(fitHeadCurve(fullSpeed(pairs))).toEqual({ ok: false, failure: { code: 'no-falling-curve' } });
  });
});

describe('points that no curve goes through', () => {
  it.each([
    [0, []],
    [1, [[1, 2]]],
    [
      2,
      [
        [0.5, 5],
        [0.5, 5.1],
        [1, 3],
        [1 + 1e-10, 3],
      ],
    ],
  ] satisfies [number, Pair[]][])('have %i distinct flows of 3', (distinct, pairs) => {
    expect(fitHeadCurve(fullSpeed(pairs))).toEqual({
      ok: false,
      failure: { code: 'too-few-distinct-flows', distinct, needed: 3 },
    });
  });

  it('rise to the last: nothing shows where the curve would fall', () => {
    const rising = fullSpeed([
      [0, 1],
      [1, 2],
      [2, 3],
      [3, 4],
      [4, 5],
    ]);
    expect(fitHeadCurve(rising)).toEqual({ ok: false, failure: { code: 'no-falling-curve' } });
  });

  it('count flows as distinct at full speed: one point seen at three speeds is one', () => {
    const seen = [1, 0.7, 0.3].map((speedRatio) => ({
      ...atSpeed({ flow: 2, head: 3, speedRatio }),
      speedRatio,
    }));
    expect(fitHeadCurve(seen)).toEqual({
      ok: false,
      failure: { code: 'too-few-distinct-flows', distinct: 1, needed: 3 },
    });
  });

  it('include one taken at standstill', () => {
    const points = [
      { flow: 0, head: 5, speedRatio: 1 },
      { flow: 1, head: 4, speedRatio: 0 },
    ];
    expect(fitHeadCurve(points)).toEqual({
      ok: false,
      failure: { code: 'speed-not-positive', index: 1, speedRatio: 0 },
    });
  });
});
