/** What a power cut lets back into the basin, against volumes worked by hand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drainBack } from '../../../models/hazards/drain-back.ts';
import type { PipeworkLoop, SystemCurveLoop } from '../../../models/loop/loop.ts';
import { expectClose } from '../../expect-close.ts';
import { loopOf, outlet, pipe } from '../example-loops.ts';

const PIPES = (Math.PI / 4) * 0.05 ** 2 * 10;
const returning = (facts: Partial<PipeworkLoop> = {}) =>
  loopOf(outlet('raceway', { requiredFlow: 1e-3 }, [pipe(0.05, 10)]), {
    staticHead: 1.8,
    tank: { area: 6 },
    siphonBreakDepth: 0.05,
    basin: { area: 1.6, freeboard: 0.2 },
    ...facts,
  });

describe('drain-back', () => {
  it('is the tank down to the siphon break and the discharge pipes', () => {
    const found = drainBack(returning());
    expectClose(found?.volume ?? 0, 0.3 + PIPES, { relative: 1e-12 });
    expectClose(found?.freeVolume ?? 0, 0.32, { relative: 1e-12 });
    expect(found?.floods).toBe(false);
  });

  it('floods a basin with less freeboard than that', () => {
    expect(drainBack(returning({ siphonBreakDepth: 0.06 }))?.floods).toBe(true);
    expect(drainBack(returning({ basin: { area: 1.6, freeboard: 0.19 } }))?.floods).toBe(true);
  });

  it('does not rely on a check valve', () => {
    const installed = { pump: 'any', count: 1, setting: 80, checkValves: true };
    expect(drainBack(returning({ installed }))?.volume).toBe(drainBack(returning())?.volume);
  });

  it('is told without a basin, but not whether it floods', () => {
    const found = drainBack(returning({ basin: undefined }));
    expect(found).toMatchObject({ freeVolume: null, floods: null, maximumSiphonBreakDepth: null });
    expectClose(found?.volume ?? 0, 0.3 + PIPES, { relative: 1e-12 });
  });

  it('is not known without siphon break or surface', () => {
    expect(drainBack(returning({ siphonBreakDepth: undefined }))).toBeNull();
    expect(drainBack(returning({ tank: { volume: 3 } }))).toBeNull();
  });

  it('of a loop known by its system curve counts the tank alone', () => {
    const curve: SystemCurveLoop = {
      ...{ name: 'curve', water: { temperature: 20, salinity: 35 }, pumpElevation: 0, frictionMultiplier: 1 },
      systemCurve: { points: [{ flow: 1e-3, head: 2 }] },
      outlets: [{ name: 'all', share: 1 }],
      tank: { area: 6 },
      siphonBreakDepth: 0.05,
    };
    expectClose(drainBack(curve)?.volume ?? 0, 0.3, { relative: 1e-12 });
  });
});

describe('the deepest siphon break', () => {
  it('just fills the basin', () => {
    const depth = drainBack(returning())?.maximumSiphonBreakDepth ?? 0;
    expectClose(drainBack(returning({ siphonBreakDepth: depth }))?.volume ?? 0, 0.32, { relative: 1e-12 });
  });

  it('is at the surface where the pipes alone are too much', () => {
    expect(drainBack(returning({ basin: { area: 0.01, freeboard: 0.1 } }))?.maximumSiphonBreakDepth).toBe(0);
  });

  it('parts what floods from what does not', () => {
    const depths = fc.double({ min: 0, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(depths, (siphonBreakDepth) => {
        const found = drainBack(returning({ siphonBreakDepth }));
        const deepest = found?.maximumSiphonBreakDepth ?? 0;
        fc.pre(Math.abs(siphonBreakDepth - deepest) > 1e-9);
        expect(found?.floods).toBe(siphonBreakDepth > deepest);
      }),
      { seed: 1 },
    );
  });
});
