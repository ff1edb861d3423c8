/** The pull of a covered intake against hydrostatics worked by hand. */
import { describe, expect, it } from 'vitest';
import { coveredIntake } from '../../../models/intake/covered-intake.ts';
import type { Intake, IntakeScreen } from '../../../models/loop/loop.ts';
import { expectClose } from '../../expect-close.ts';
import { loopOf, modelOf, outlet, pipe, pumpByLaw } from '../example-loops.ts';

const SEA_LEVEL = { elevation: 0 };
const bare = loopOf(outlet('jet', {}, [pipe(0.05, 2)]));
const withScreen = (screen: IntakeScreen) =>
  modelOf({ ...bare, intake: { lossCoefficient: 0.5, screen } satisfies Intake });
const pumpOf = (shutoff: number) =>
  pumpByLaw((flow) => ({ head: shutoff - 1e6 * flow ** 2, slope: -2e6 * flow }));
const FACE = { openFraction: 0.4, count: 1 } as const;

describe('a covered intake', () => {
  it('bare at 50 mm under 6 m of suction holds with 118 N in seawater of 1023.34 kg/m3', () => {
    const found = coveredIntake(modelOf(bare), pumpOf(6), SEA_LEVEL);
    expect(found?.suctionHead).toBe(6);
    expectClose(found?.force ?? 0, 1023.343 * 9.80665 * 6 * (Math.PI / 4) * 0.05 ** 2, { relative: 1e-6 });
  });

  it.each([
    [{ shape: 'flat', width: 0.3, length: 0.13, ...FACE }, 0.3 * 0.13],
    [{ shape: 'cylinder', diameter: 0.06, length: 0.5, ...FACE }, 0.06 * 0.5],
    [{ shape: 'box', width: 0.3, length: 0.4, height: 0.2, ...FACE }, 0.3 * 0.4],
  ] as const)('with a screen pulls on its largest side: %o', (screen, area) => {
    const found = coveredIntake(withScreen(screen), pumpOf(2), SEA_LEVEL);
    expectClose(found?.force ?? 0, 1023.343 * 9.80665 * 2 * area, { relative: 1e-6 });
  });

  it('pulls no harder than water boils: 9.77 m at sea level and 25 degC', () => {
    // (101325 - 3170)/(1023.343 x 9.80665), vapour pressure of IAPWS-95.
    const found = coveredIntake(modelOf(bare), pumpOf(30), SEA_LEVEL);
    expectClose(found?.suctionHead ?? 0, 9.781, { relative: 1e-3 });
    expect(coveredIntake(modelOf(bare), pumpOf(30), { elevation: 3000 })?.suctionHead).toBeLessThan(7);
  });

  it('is none where several screens share the flow, or no bore is known', () => {
    const several = { shape: 'flat', width: 0.3, length: 0.13, openFraction: 0.4, count: 2 } as const;
    expect(coveredIntake(withScreen(several), pumpOf(2), SEA_LEVEL)).toBeNull();
    const { suction, discharge, staticHead, ...common } = bare;
    const systemCurve = { points: [{ flow: 1e-3, head: 1 }] };
    const curve = modelOf({ ...common, systemCurve, outlets: [{ name: 'all', share: 1 }] });
    expect(coveredIntake(curve, pumpOf(2), SEA_LEVEL)).toBeNull();
  });
});
