import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CurveAt } from '../../curves/curve-gap.ts';
import { fitHeadCurve } from '../../curves/fit-head-curve.ts';
import { type HeadCurve, headAtSpeed, risingFlows } from '../../curves/head-curve.ts';
import { type Intersection, intersections } from '../../curves/intersections.ts';
import { systemHeadAt } from '../../curves/system-curve.ts';
import { expectClose } from '../expect-close.ts';
import { BRASCH_WHYMAN_PUMP } from '../reference/pump-curves.ts';
import { expectValue } from './expect-value.ts';

/** A curve H = c0 + c1 Q + .. with flow in its own unit up to flowScale. */
const pumpOf = (coefficients: readonly number[], flowScale: number): HeadCurve => ({
  shape: 'sum-of-powers',
  powers: coefficients.map((_, power) => power),
  coefficients: coefficients.map((coefficient, power) => coefficient * flowScale ** power),
  flowScale,
  range: { min: 0, max: flowScale },
  r2: 1,
  standardError: 0,
  degreesOfFreedom: 1,
  residuals: [],
  leaveOneOut: 0,
  drooping: true,
});

interface Meeting {
  readonly system: CurveAt;
  readonly speedRatio?: number;
  readonly guess?: number;
}

const crossings = (curve: HeadCurve, { system, speedRatio = 1, guess }: Meeting): readonly Intersection[] =>
  expectValue(
    intersections({
      pumpHead: (flow) => headAtSpeed(curve, { flow, speedRatio }),
      systemHead: system,
      turningFlows: risingFlows(curve).map((flow) => flow * speedRatio),
      flowScale: curve.flowScale * speedRatio,
      guess,
    }),
  );

const quadratic =
  (staticHead: number, coefficient: number): CurveAt =>
  (flow) =>
    systemHeadAt({ staticHead, coefficient }, flow);

const flowsOf = (found: readonly Intersection[]): readonly number[] => found.map((crossing) => crossing.flow);

const expectFlows = (found: readonly Intersection[], expected: readonly number[]): void => {
  expect(found.length, `crossings at ${flowsOf(found)}`).toBe(expected.length);
  for (const [index, flow] of expected.entries()) {
    expectClose(found[index]?.flow ?? Number.NaN, flow, { relative: 1e-11 });
  }
};

/** The Blasius system of the published example, with the slope of its formula. */
const blasius: CurveAt = (flow) => {
  const { staticHead, diameter, length, viscosity } = BRASCH_WHYMAN_PUMP.system;
  const { density, gravity } = BRASCH_WHYMAN_PUMP;
  const velocityHead = 8 / (Math.PI ** 2 * diameter ** 4 * gravity);
  const reynolds = (4 * density) / (Math.PI * diameter * viscosity);
  const friction = (8 * length * 0.0396) / (diameter * reynolds ** 0.25);
  return {
    head: staticHead + velocityHead * (flow ** 2 + friction * flow ** 1.75),
    slope: velocityHead * (2 * flow + 1.75 * friction * flow ** 0.75),
  };
};

describe('where a falling pump curve meets a system', () => {
  it(`is the published duty point (${BRASCH_WHYMAN_PUMP.source})`, () => {
    const { points, expected, tolerance } = BRASCH_WHYMAN_PUMP;
    const curve = expectValue(fitHeadCurve(points.map((point) => ({ ...point, speedRatio: 1 }))));
    const [duty, ...others] = crossings(curve, { system: blasius });
    expect(others).toEqual([]);
    expectClose(duty?.flow ?? Number.NaN, expected.flow, { relative: tolerance.flow });
    expectClose(duty?.head ?? Number.NaN, expected.head, { relative: tolerance.head });
    expect(duty?.stable).toBe(true);
  });

  it('is the closed form for two parabolas, at any speed', () => {
    const part = fc.double({ min: 0.1, max: 10, noNaN: true });
    const speeds = fc.double({ min: 0.2, max: 1, noNaN: true });
    fc.assert(
      fc.property(part, part, part, speeds, (shutoff, steepness, k, speedRatio) => {
        // r^2 a - b Q^2 = k Q^2, whatever the speed.
        const flow = speedRatio * Math.sqrt(shutoff / (steepness + k));
        const curve = pumpOf([shutoff, 0, -steepness], 2 * Math.sqrt(shutoff / steepness));
        const found = crossings(curve, { system: quadratic(0, k), speedRatio });
        expectFlows(found, [flow]);
        expectClose(found[0]?.head ?? Number.NaN, k * flow ** 2, { relative: 1e-10 });
      }),
      { seed: 1 },
    );
  });

  it('lies on the tangent beyond the data, also far beyond', () => {
    // H = 10 - Q^2 to Q = 1, then 9 - 2 (Q - 1) = 11 - 2 Q; with k Q^2 that gives Q = (-1 + sqrt(1 + 11 k))/k.
    const curve = pumpOf([10, 0, -1], 1);
    for (const k of [2, 0.5, 1e-3]) {
      expectFlows(crossings(curve, { system: quadratic(0, k) }), [(-1 + Math.sqrt(1 + 11 * k)) / k]);
    }
  });

  it('does not exist when the static head is not below shutoff', () => {
    const curve = pumpOf([10, -1, -1], 3);
    expect(crossings(curve, { system: quadratic(10, 1) })).toEqual([]);
    expect(crossings(curve, { system: quadratic(12, 1) })).toEqual([]);
    expect(crossings(curve, { system: quadratic(0, 1), speedRatio: 0 })).toEqual([]);
  });

  it('takes at most eight evaluations of the system, and twelve on a very poor guess', () => {
    const { points } = BRASCH_WHYMAN_PUMP;
    const curve = expectValue(fitHeadCurve(points.map((point) => ({ ...point, speedRatio: 1 }))));
    for (const [guess, speedRatio] of [
      [undefined, 1],
      [undefined, 0.8],
      [0.0335, 1],
      [0.001, 1],
    ] as const) {
      let evaluations = 0;
      const system: CurveAt = (flow) => {
        evaluations += 1;
        return blasius(flow);
      };
      const found = crossings(curve, { system, speedRatio, ...(guess === undefined ? {} : { guess }) });
      expect(found).toHaveLength(1);
      expect(evaluations).toBeLessThanOrEqual(guess === 0.001 ? 12 : 8);
    }
  });
});

describe('where a drooping pump curve meets a system', () => {
  it('is twice, unstable then stable, when it starts below the static head', () => {
    // 5 + 4 Q - Q^2 = 6 + Q^2/2 at Q = (4 -+ sqrt 10)/3.
    const found = crossings(pumpOf([5, 4, -1], 5), { system: quadratic(6, 0.5) });
    expectFlows(found, [(4 - Math.sqrt(10)) / 3, (4 + Math.sqrt(10)) / 3]);
    expect(found.map((crossing) => crossing.stable)).toEqual([false, true]);
  });

  it('is once, stable, when it starts above', () => {
    const found = crossings(pumpOf([5, 4, -1], 5), { system: quadratic(3, 0.5) });
    expectFlows(found, [(4 + Math.sqrt(16 + 12)) / 3]);
    expect(found[0]?.stable).toBe(true);
  });

  it('is nowhere when its peak stays below', () => {
    expect(crossings(pumpOf([5, 4, -1], 5), { system: quadratic(8, 0.5) })).toEqual([]);
  });

  it('is found even where the peak passes the system by a hair, by slopes rather than by luck', () => {
    // 5 + 4 Q - Q^2 - (s + Q^2/2) has its peak 23/3 - s at Q = 4/3; both roots fall into one scanned step.
    const hair = 1e-6;
    const found = crossings(pumpOf([5, 4, -1], 5), { system: quadratic(23 / 3 - hair, 0.5) });
    const half = Math.sqrt(hair / 1.5);
    expect(found).toHaveLength(2);
    expectClose(found[0]?.flow ?? Number.NaN, 4 / 3 - half, { relative: 1e-8 });
    expectClose(found[1]?.flow ?? Number.NaN, 4 / 3 + half, { relative: 1e-8 });
  });

  it('is the closed form of two parabolas for any droop', () => {
    const part = fc.double({ min: 0.2, max: 5, noNaN: true });
    fc.assert(
      fc.property(part, part, part, fc.double({ min: -3, max: 3, noNaN: true }), (b, c, k, lift) => {
        const curve = pumpOf([6, b, -c], (3 * b) / c + 3);
        const discriminant = b ** 2 - 4 * (c + k) * lift;
        // Left to their own tests: tangency, and roots on the tangent beyond the data.
        if (Math.abs(discriminant) < 1e-6 || Math.abs(lift) < 1e-6) return;
        const roots =
          discriminant < 0 ? [] : [-1, 1].map((sign) => (b + sign * Math.sqrt(discriminant)) / (2 * (c + k)));
        if (roots.some((root) => root > curve.flowScale)) return;
        const found = crossings(curve, { system: quadratic(6 + lift, k) });
        const expected = roots.filter((root) => root > 0);
        expect(found.length).toBe(expected.length);
        for (const [index, flow] of expected.entries()) {
          expectClose(found[index]?.flow ?? Number.NaN, flow, { relative: 1e-8 });
        }
      }),
      { seed: 1 },
    );
  });

  it.each([1, 2])(
    'is three times where a valley lies between, steepness %i: stable, unstable, stable',
    (m) => {
      // Pump less system is -m (Q - 1)(Q - 2)(Q - 3); at m = 1 the curve turns exactly at the first crossing.
      const pump = pumpOf([4 + 6 * m, -11 * m, 1 + 6 * m, -m], 4.5);
      const found = crossings(pump, { system: quadratic(4, 1) });
      expectFlows(found, [1, 2, 3]);
      expect(found.map((crossing) => crossing.stable)).toEqual([true, false, true]);
      for (const { flow, head } of found) expectClose(head, 4 + flow ** 2, { relative: 1e-10 });
    },
  );

  it('moves with speed along the affinity parabola of a system without static head', () => {
    const pump = pumpOf([5, 4, -1], 5);
    const [full] = crossings(pump, { system: quadratic(0, 2) });
    const [half] = crossings(pump, { system: quadratic(0, 2), speedRatio: 0.5 });
    expectClose(half?.flow ?? Number.NaN, (full?.flow ?? 0) / 2, { relative: 1e-11 });
    expectClose(half?.head ?? Number.NaN, (full?.head ?? 0) / 4, { relative: 1e-11 });
  });
});

describe('the search for intersections', () => {
  it('says so when the pump never falls below the system', () => {
    const outcome = intersections({
      pumpHead: () => ({ head: 10, slope: 0 }),
      systemHead: () => ({ head: 1, slope: 0 }),
      turningFlows: [],
      flowScale: 1,
    });
    expect(!outcome.ok && outcome.failure.code).toBe('no-end');
  });

  it('hands on a system without a value', () => {
    const outcome = intersections({
      pumpHead: (flow) => ({ head: 10 - flow, slope: -1 }),
      systemHead: (flow) => ({ head: flow > 1 && flow < 9 ? Number.NaN : flow, slope: 1 }),
      turningFlows: [],
      flowScale: 12,
    });
    expect(!outcome.ok && outcome.failure.code).toBe('no-value');
  });
});
