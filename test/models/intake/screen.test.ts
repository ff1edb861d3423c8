/** Screen velocities against continuity, published areas, an integrated momentum balance. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { screenVelocities } from '../../../models/intake/screen.ts';
import type { IntakeScreen } from '../../../models/loop/loop.ts';
import { expectClose } from '../../expect-close.ts';
import { CLOGGED_SCREENS } from '../../reference/screens.ts';

const FOOT = 0.3048;
const CYLINDER = { shape: 'cylinder', diameter: 0.06, length: 0.5, openFraction: 0.35, count: 1 } as const;
const FLAT = { shape: 'flat', width: 0.3, length: 0.2, openFraction: 0.4, count: 2 } as const;

const clean = (screen: IntakeScreen, flow: number) => screenVelocities({ screen, flow, cloggedFraction: 0 });

/**
 * Peak/mean of a cylinder by stepping along it from the closed end: slot velocity v = Cd sqrt(2 dp/rho), pressure falling
 * inside by momentum alone as dp/rho = c^2 + V^2, V the velocity in the bore. Midpoint steps of the second order.
 */
function unevennessByIntegration(openAreaOverBoreArea: number): number {
  const steps = 20_000;
  const slot = (inner: number) => 0.6 * Math.sqrt(2 * (1 + inner * inner));
  const width = openAreaOverBoreArea / steps;
  let inner = 0;
  for (let step = 0; step < steps; step += 1) {
    const middle = inner + (width / 2) * slot(inner);
    inner += width * slot(middle);
  }
  return slot(inner) / (inner / openAreaOverBoreArea);
}

describe('mean through-slot velocity', () => {
  it('of 1 ft3/s through 3.0 ft2 of effective area is 0.33 ft/s (California fish screening criteria 2000)', () => {
    const screen = { shape: 'flat', width: 3 * FOOT, length: FOOT, openFraction: 1, count: 1 } as const;
    expectClose(clean(screen, FOOT ** 3).mean, 0.33 * FOOT, { relative: 0.015 });
  });

  it('of 10 m3/h through 0.01823 m2 open is 0.5 ft/s, the limit of 40 CFR 125.84 (by continuity)', () => {
    const screen = { shape: 'flat', width: 0.1, length: 0.1823, openFraction: 1, count: 1 } as const;
    expectClose(clean(screen, 10 / 3600).mean, 0.1524, { relative: 5e-4 });
  });

  it('is flow over the open area that clogging leaves, all screens together', () => {
    const { mean } = screenVelocities({ screen: FLAT, flow: 1e-3, cloggedFraction: 0.5 });
    expectClose(mean, 1e-3 / (2 * 0.3 * 0.2 * 0.4 * 0.5), { relative: 1e-12 });
  });

  it('counts the wall of a cylinder, not its end', () => {
    expectClose(clean(CYLINDER, 2e-3).mean, 2e-3 / (Math.PI * 0.06 * 0.5 * 0.35), { relative: 1e-12 });
  });
});

describe('a box', () => {
  const BOX = { shape: 'box', width: 0.2, length: 0.3, height: 0.1, openFraction: 0.4, count: 1 } as const;

  it('draws evenly through four sides and top: 0.16 m2 of 0.2 by 0.3 by 0.1 m (by hand)', () => {
    const { mean, peak } = clean(BOX, 1e-3);
    expectClose(mean, 1e-3 / (0.4 * 0.16), { relative: 1e-12 });
    expect(peak).toBe(mean);
  });

  it('without height is the flat screen of its top', () => {
    const { height, ...top } = BOX;
    expectClose(clean({ ...BOX, height: 1e-12 }, 1e-3).mean, clean({ ...top, shape: 'flat' }, 1e-3).mean, {
      relative: 1e-9,
    });
  });
});

describe('peak through-slot velocity', () => {
  it('of a flat screen is its mean', () => {
    const { mean, peak } = screenVelocities({ screen: FLAT, flow: 1e-3, cloggedFraction: 0.3 });
    expect(peak).toBe(mean);
  });

  it.each([0.05, 0.2, 0.5, 1])('of a cylinder %d m long agrees with the integrated balance', (length) => {
    const screen = { ...CYLINDER, length };
    const ratio = (Math.PI * 0.06 * length * 0.35) / ((Math.PI / 4) * 0.06 ** 2);
    const { mean, peak } = clean(screen, 2e-3);
    expectClose(peak / mean, unevennessByIntegration(ratio), { relative: 1e-5 });
  });

  it('is as uneven for several screens as for one', () => {
    const one = clean(CYLINDER, 2e-3);
    const several = clean({ ...CYLINDER, count: 3 }, 2e-3);
    expectClose(several.peak / several.mean, one.peak / one.mean, { relative: 1e-12 });
  });

  it('clogged evenly is that of a clean screen with as much left open', () => {
    const clogged = screenVelocities({ screen: CYLINDER, flow: 2e-3, cloggedFraction: 0.4 });
    const half = clean({ ...CYLINDER, openFraction: 0.6 * CYLINDER.openFraction }, 2e-3);
    expectClose(clogged.mean, half.mean, { relative: 1e-12 });
    expectClose(clogged.peak, half.peak, { relative: 1e-12 });
  });

  it.each(CLOGGED_SCREENS)(
    'of $screen.diameter m by $screen.length m, $cloggedFraction clogged ($source)',
    ({ screen, flow, cloggedFraction, mean, peak, tolerance }) => {
      const found = screenVelocities({ screen, flow, cloggedFraction });
      expectClose(found.mean, mean, { relative: tolerance });
      expectClose(found.peak, peak, { relative: tolerance });
    },
  );

  it('tends to the mean on a very short cylinder, without losing digits', () => {
    const { mean, peak } = clean({ ...CYLINDER, length: 1e-9 }, 1e-9);
    expectClose(peak, mean, { relative: 1e-12 });
  });

  it('is continuous where the series takes over from the hyperbolic function', () => {
    const lengthAt = (y: number) => (y * 0.06) / (Math.SQRT2 * 0.6 * 4 * 0.35);
    const unevenness = (y: number) => {
      const { mean, peak } = clean({ ...CYLINDER, length: lengthAt(y) }, 1e-6);
      return peak / mean;
    };
    expectClose(unevenness(0.9999e-4), unevenness(1.0001e-4), { relative: 1e-11 });
  });

  it('is never below the mean and grows with length', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 5, noNaN: true }), (length) => {
        const here = clean({ ...CYLINDER, length }, 1e-3);
        const longer = clean({ ...CYLINDER, length: 1.1 * length }, 1e-3);
        expect(here.peak).toBeGreaterThanOrEqual(here.mean);
        expect(longer.peak / longer.mean).toBeGreaterThan(here.peak / here.mean);
      }),
      { seed: 1 },
    );
  });
});
