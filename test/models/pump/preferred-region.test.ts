/** The preferred operating region against a pump whose best point is known by calculus. */
import { describe, expect, it } from 'vitest';
import { preferredRegion } from '../../../models/pump/preferred-region.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { expectClose } from '../../expect-close.ts';
import { canister, LITRE_PER_HOUR, pumpModelOf } from '../example-loops.ts';

const L = LITRE_PER_HOUR;
const WATER = { density: 1023 };

/** Draws the same at every flow, so that efficiency goes with Q H, H = 6 - 4 (Q/12000)^2: best at 12000/sqrt 2 L/h. */
const even: Pump = {
  ...canister,
  powerPoints: [2000, 6000, 10000].map((flow) => ({ setting: 100, power: 250, flow: flow * L })),
};

describe('the preferred operating region', () => {
  it('is 70 to 120 % of the best-efficiency flow (ANSI/HI 9.6.3, as trade articles give it)', () => {
    const region = preferredRegion(pumpModelOf(even).fit, WATER);
    const best = (12000 * L) / Math.SQRT2;
    expectClose(region?.min ?? Number.NaN, 0.7 * best, { relative: 1e-6 });
    expectClose(region?.max ?? Number.NaN, 1.2 * best, { relative: 1e-6 });
  });

  it('has no upper end where efficiency still rises at the last point entered', () => {
    const cut = { ...even, headPoints: even.headPoints.slice(0, 3) };
    const region = preferredRegion(pumpModelOf(cut).fit, WATER);
    expectClose(region?.min ?? Number.NaN, 0.7 * 8000 * L, { relative: 1e-6 });
    expect(region?.max).toBe(Number.POSITIVE_INFINITY);
  });

  it('is not known where power does not depend on flow', () => {
    expect(preferredRegion(pumpModelOf(canister).fit, WATER)).toBeNull();
  });
});
