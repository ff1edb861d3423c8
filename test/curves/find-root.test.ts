import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot, ROOT_ITERATIONS } from '../../curves/find-root.ts';
import { expectClose } from '../expect-close.ts';
import { expectValue } from './expect-value.ts';

interface Hard {
  readonly name: string;
  readonly f: (x: number) => number;
  readonly slope: (x: number) => number;
  readonly low: number;
  readonly high: number;
  readonly root: number;
  readonly absolute?: number;
}

/** Roots known in closed form or by construction; shapes that defeat a bare Newton or secant method. */
const HARD: readonly Hard[] = [
  { name: 'cos x, half of pi', f: Math.cos, slope: (x) => -Math.sin(x), low: 0, high: 3, root: Math.PI / 2 },
  {
    name: 'x^3 - 2, cube root of 2',
    f: (x) => x ** 3 - 2,
    slope: (x) => 3 * x ** 2,
    low: 0,
    high: 2,
    root: Math.cbrt(2),
  },
  {
    name: 'exp x - 1e9, far off and steep',
    f: (x) => Math.exp(x) - 1e9,
    slope: Math.exp,
    low: 0,
    high: 100,
    root: Math.log(1e9),
  },
  {
    name: 'arctan, where Newton diverges from afar',
    f: (x) => Math.atan(x - 1),
    slope: (x) => 1 / (1 + (x - 1) ** 2),
    low: -50,
    high: 500,
    root: 1,
  },
  {
    name: 'cube root, slope without bound',
    f: (x) => Math.cbrt(x - 1),
    slope: (x) => Math.cbrt(x - 1) ** -2 / 3,
    low: -1,
    high: 8,
    root: 1,
  },
  {
    name: 'x^3, a triple root at 0',
    f: (x) => x ** 3,
    slope: (x) => 3 * x ** 2,
    low: -1,
    high: 2,
    root: 0,
    absolute: 1e-11,
  },
  {
    name: 'x^20 - 1, flat then steep',
    f: (x) => x ** 20 - 1,
    slope: (x) => 20 * x ** 19,
    low: 0,
    high: 10,
    root: 1,
  },
  {
    name: '1 - 1e-9/x, all at one end',
    f: (x) => 1 - 1e-9 / x,
    slope: (x) => 1e-9 / x ** 2,
    low: 1e-12,
    high: 1,
    root: 1e-9,
    absolute: 1e-15,
  },
  { name: 'a falling line', f: (x) => 3 - 2 * x, slope: () => -2, low: 0, high: 10, root: 1.5 },
];

describe('root finding', () => {
  for (const { name, f, slope, low, high, root, absolute = 0 } of HARD) {
    it(`finds the root of ${name}, with slopes and without`, () => {
      const kept = expectValue(findRoot({ evaluate: (x) => ({ value: f(x), slope: slope(x) }), low, high }));
      expectClose(kept.root, root, { relative: 4e-12, absolute });
      const bare = expectValue(findRoot({ evaluate: (x) => ({ value: f(x) }), low, high }));
      expectClose(bare.root, root, { relative: 4e-12, absolute });
      expect(bare.residual).toBe(f(bare.root));
      expect(Math.max(kept.iterations, bare.iterations)).toBeLessThan(ROOT_ITERATIONS / 2);
    });
  }

  it('takes no more than eight evaluations where a slope is smooth', () => {
    const root = expectValue(
      findRoot({ evaluate: (x) => ({ value: Math.exp(-x) - x, slope: -Math.exp(-x) - 1 }), low: 0, high: 1 }),
    );
    // The omega constant, W(1) = 0.567143290409783873 (OEIS A030178).
    expectClose(root.root, 0.5671432904097838, { relative: 1e-12 });
    expect(root.iterations + 2).toBeLessThanOrEqual(8);
  });

  it('starts at the guess and uses the values it is given', () => {
    const asked: number[] = [];
    const evaluate = (x: number) => {
      asked.push(x);
      return { value: x ** 2 - 2, slope: 2 * x };
    };
    const root = expectValue(findRoot({ evaluate, low: 0, high: 2, lowValue: -2, highValue: 2, guess: 1.4 }));
    expect(asked[0]).toBe(1.4);
    expect(asked.length).toBe(root.iterations);
    expect(asked.length).toBeLessThanOrEqual(4);
    expectClose(root.root, Math.SQRT2, { relative: 1e-12 });
  });

  it('ignores a guess outside the bracket', () => {
    const evaluate = (x: number) => ({ value: x - 1 });
    expectClose(expectValue(findRoot({ evaluate, low: 0, high: 3, guess: 7 })).root, 1, { relative: 1e-12 });
  });

  it('takes an end that is the root', () => {
    const evaluate = (x: number) => ({ value: x });
    expect(expectValue(findRoot({ evaluate, low: 0, high: 3 }))).toEqual({
      root: 0,
      iterations: 0,
      residual: 0,
    });
    expect(expectValue(findRoot({ evaluate, low: -3, high: 0 })).root).toBe(0);
  });

  it('gets past slopes that are missing, 0 or not finite at some places', () => {
    const broken = (x: number): number | undefined =>
      x > 3 ? Number.NaN : x > 2 ? 0 : x > 1.5 ? undefined : 2 * x;
    const evaluate = (x: number) => ({ value: x ** 2 - 2, slope: broken(x) });
    expectClose(expectValue(findRoot({ evaluate, low: 0, high: 9, guess: 8 })).root, Math.SQRT2, {
      relative: 1e-12,
    });
  });

  it('survives slopes of the wrong sign and size', () => {
    const evaluate = (x: number) => ({ value: x ** 2 - 2, slope: -0.3 });
    expectClose(expectValue(findRoot({ evaluate, low: 0, high: 9 })).root, Math.SQRT2, { relative: 1e-9 });
  });

  it('stops at the noise of a function that is itself solved for', () => {
    const noise = (x: number): number => 1e-10 * Math.sin(1e13 * x);
    const evaluate = (x: number) => ({ value: x ** 2 - 2 + noise(x), slope: 2 * x });
    const root = expectValue(findRoot({ evaluate, low: 0, high: 2 }));
    expectClose(root.root, Math.SQRT2, { absolute: 1e-9 });
    expect(root.iterations).toBeLessThan(20);
  });

  it('finds the jump of a function that has no root', () => {
    const evaluate = (x: number) => ({ value: x < Math.E ? -1 : 1 });
    expectClose(expectValue(findRoot({ evaluate, low: 0, high: 100 })).root, Math.E, { absolute: 1e-11 });
  });

  it('finds any root of any rising cubic', () => {
    const part = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(
      fc.property(part, part, fc.double({ min: 0.001, max: 999, noNaN: true }), (a, b, root) => {
        const f = (x: number): number => a * (x ** 3 - root ** 3) + b * (x - root);
        const slope = (x: number): number => 3 * a * x ** 2 + b;
        const kept = expectValue(
          findRoot({ evaluate: (x) => ({ value: f(x), slope: slope(x) }), low: 0, high: 1000 }),
        );
        expectClose(kept.root, root, { relative: 1e-11, absolute: 1e-12 });
        const bare = expectValue(findRoot({ evaluate: (x) => ({ value: f(x) }), low: 0, high: 1000 }));
        expectClose(bare.root, root, { relative: 1e-11, absolute: 1e-12 });
      }),
      { seed: 1 },
    );
  });

  it('refuses ends of one sign, or without a value', () => {
    expect(findRoot({ evaluate: (x) => ({ value: x ** 2 + 1 }), low: 0, high: 2 })).toEqual({
      ok: false,
      failure: { code: 'not-bracketed', lowValue: 1, highValue: 5 },
    });
    const undefinedEnd = findRoot({ evaluate: (x) => ({ value: Math.log(x) }), low: -1, high: 2 });
    expect(!undefinedEnd.ok && undefinedEnd.failure.code).toBe('not-bracketed');
  });

  it('says where a function has no value inside the bracket', () => {
    const evaluate = (x: number) => ({ value: x > 1 && x < 4 ? Number.NaN : x - 2 });
    expect(findRoot({ evaluate, low: 0, high: 5 })).toEqual({
      ok: false,
      failure: { code: 'no-value', x: 2 },
    });
  });

  it('ends within its limit even on slopes that mislead it at every step', () => {
    let evaluations = 0;
    const evaluate = (x: number) => {
      evaluations += 1;
      return { value: x <= 0 ? -1 : 1, slope: evaluations % 2 === 0 ? 1e3 : -1e-3 };
    };
    findRoot({ evaluate, low: -1, high: 1e9 });
    expect(evaluations).toBeLessThanOrEqual(ROOT_ITERATIONS + 3);
  });
});
