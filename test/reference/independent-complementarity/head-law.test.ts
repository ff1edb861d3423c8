/** Piecewise and assumed head curves against worked figures. */
import { describe, expect, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import type { ExtendedPump } from '../../random/extended-loop.ts';
import { LH, pumpE, STATED } from './cases.ts';
import { firstStableFlow, fitPump, type Served } from './duty.ts';
import { assumedHead, type HeadLaw, headLaw } from './head-law.ts';

type Point = readonly [flow: number, head: number];

const pumpOf = (points: readonly Point[]): ExtendedPump => ({
  ...pumpE,
  headPoints: points.map(([flow, head]) => ({ flow: flow * LH, head, setting: 100 })),
});

function lawOf(points: readonly Point[]): HeadLaw {
  const law = headLaw(pumpOf(points));
  if (law === undefined) throw new Error('the points make no curve');
  return law;
}

interface Case {
  readonly name: string;
  readonly points: readonly Point[];
  /** Percent of the largest head that the sum of powers leaves. */
  readonly misfit: number;
  /** m per 1000 L/h. */
  readonly slopes: readonly number[];
  readonly heads: readonly Point[];
}

const CASES: readonly Case[] = [
  {
    // Figures of a separate calculation.
    name: 'a knee',
    points: [
      [0, 8],
      [3000, 7.8],
      [6000, 7.3],
      [9000, 6.5],
      [10_500, 5.6],
      [11_500, 4.2],
      [12_000, 2.5],
    ],
    misfit: 3.3237,
    slopes: [-0.0166667, -0.0952381, -0.205128, -0.385714, -0.863014, -2.07961, -4.06667],
    heads: [
      [1500, 7.92946],
      [7500, 6.96772],
      [11_000, 5.05207],
      [11_750, 3.47419],
      [12_200, 1.68667],
    ],
  },
  {
    // Figures of a separate calculation.
    name: 'points that begin with a flow',
    points: [
      [2800, 23.2],
      [3900, 21.3],
      [5000, 18.9],
      [5600, 15.2],
      [5900, 11],
    ],
    misfit: 2.1979,
    slopes: [],
    heads: [
      [4500, 20.2008],
      [0, 25.3],
      [1400, 24.775],
    ],
  },
  {
    // Figures of a separate calculation.
    name: 'a sharper knee',
    points: [
      [0, 6.2],
      [2500, 6.1],
      [5000, 5.8],
      [7500, 5.3],
      [9000, 4.7],
      [9800, 3.4],
      [10_200, 1.4],
    ],
    misfit: 6.1255,
    slopes: [0, -0.06, -0.15, -0.274286, -0.68395, -2.6, -6.125],
    heads: [
      [6000, 5.63583],
      [9400, 4.24161],
      [10_300, 1.4 - 0.6125],
    ],
  },
];

describe.each(CASES)('$name', ({ points, misfit, slopes, heads }) => {
  const law = lawOf(points);

  it('is met by no sum of powers', () => {
    expect(law.shape).toBe('piecewise');
    expectClose(100 * (law.misfit ?? Number.NaN), misfit, STATED);
  });

  it('has the stated slopes', () => {
    for (const [index, slope] of slopes.entries())
      expectClose((law.knots?.[index]?.slope ?? Number.NaN) * 1000 * LH, slope, {
        ...STATED,
        absolute: 1e-12,
      });
  });

  it.each(heads)('has at %d L/h %d m', (flow, head) => {
    expectClose(law.at(flow * LH), head, STATED);
  });

  it('passes its points', () => {
    for (const [flow, head] of points) expectClose(law.at(flow * LH), head, { relative: 1e-12 });
  });
});

describe('points that a sum of powers meets', () => {
  it('keep it', () => {
    const law = lawOf([
      [0, 40],
      [7200, 39.5],
      [14_400, 38],
      [21_600, 35],
      [28_800, 30],
      [36_000, 20],
    ]);
    expect(law.shape).toBe('sum-of-powers');
    expectClose(100 * (law.misfit ?? Number.NaN), 0.1162, { relative: 5e-4 });
  });
});

/** A system of a head at a flow in L/h, quadratic and without static head. */
const quadraticSystem = (flow: number, head: number): Served => ({
  head: (at) => head * (at / (flow * LH)) ** 2,
  outlets: () => [],
});

describe('a knee against a system of 4.1 m at 9400 L/h', () => {
  it('lands where stated', () => {
    const pump = pumpOf(CASES[2]?.points ?? []);
    const running = { fitted: fitPump(pump), count: 1, setting: 100 };
    expectClose(firstStableFlow(quadraticSystem(9400, 4.1), running) / LH, 9455.36, STATED);
  });
});

describe('two points', () => {
  const pump = pumpOf([
    [0, 6],
    [7000, 2.4],
  ]);

  it.each([
    [5000, 3, 5568.9, 5245.77, 5765.33],
    [9000, 1.2, 8333.15, 7948.85, 9218.61],
  ])('at %d L/h against %d m land where stated', (flow, head, expected, low, high) => {
    const flows = [1, 2, 3].map((power) => {
      const fitted = { ...fitPump(pump), head: assumedHead(pump, power) };
      return firstStableFlow(quadraticSystem(flow, head), { fitted, count: 1, setting: 100 }) / LH;
    });
    expectClose(flows[1] ?? Number.NaN, expected, STATED);
    expectClose(Math.min(...flows), low, STATED);
    expectClose(Math.max(...flows), high, STATED);
    expect(headLaw(pump)?.shape).toBe('assumed');
  });
});

describe('knots', () => {
  it('take points within one percent of the largest flow together', () => {
    const law = lawOf([
      [0, 6.2],
      [80, 6.3],
      [2500, 6.1],
      [5000, 5.8],
      [7500, 5.3],
      [9000, 4.7],
      [9800, 3.3],
      [9850, 3.5],
      [10_200, 1.4],
    ]);
    const knots = law.knots ?? [];
    expect(knots.map(({ flow }) => Math.round(flow / LH))).toEqual([0, 2500, 5000, 7500, 9000, 9825, 10_200]);
    expectClose(knots[0]?.head ?? Number.NaN, 6.25, { relative: 1e-12 });
  });
});
