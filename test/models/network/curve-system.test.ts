/** A loop known by its system curve. */
import { describe, expect, it } from 'vitest';
import type { SystemCurveLoop } from '../../../models/loop/loop.ts';
import { compileLoop } from '../../../models/network/compiled-loop.ts';
import { expectClose } from '../../expect-close.ts';
import { modelOf } from '../example-loops.ts';

const loop: SystemCurveLoop = {
  name: 'nursery raceways',
  water: { temperature: 25, salinity: 35 },
  pumpElevation: 0,
  frictionMultiplier: 1,
  systemCurve: { staticHead: 1.8, points: [{ flow: 2e-3, head: 3 }] },
  outlets: [
    { name: 'first', share: 0.4, requiredFlow: 5e-4 },
    { name: 'second', share: 0.6 },
  ],
};

describe('a system by its curve', () => {
  it('needs H = Hs + k Q^2', () => {
    const { system } = modelOf(loop);
    expectClose(system.stateAt(0).head, 1.8, { relative: 1e-12 });
    expectClose(system.stateAt(1e-3).head, 1.8 + 1.2 / 4, { relative: 1e-12 });
    expectClose(system.stateAt(1e-3).slope, (2 * 1.2 * 1e-3) / 2e-3 ** 2, { relative: 1e-12 });
  });

  it('multiplies k, not the static head, by the friction multiplier', () => {
    const { system } = modelOf({ ...loop, frictionMultiplier: 2 });
    expectClose(system.stateAt(1e-3).head, 1.8 + (2 * 1.2) / 4, { relative: 1e-12 });
  });

  it('gives every outlet its share', () => {
    const { outletFlows, suctionLoss, network } = modelOf(loop).system.stateAt(1e-3);
    expectClose(outletFlows[0] ?? Number.NaN, 4e-4, { relative: 1e-12 });
    expectClose(outletFlows[1] ?? Number.NaN, 6e-4, { relative: 1e-12 });
    expect({ suctionLoss, network }).toEqual({ suctionLoss: 0, network: null });
  });

  it('names the points that make no curve', () => {
    const points = [{ flow: 0, head: 2 }];
    const built = compileLoop({ ...loop, systemCurve: { points } });
    expect(built).toMatchObject({ ok: false, failure: { path: ['systemCurve', 'points'] } });
  });
});
