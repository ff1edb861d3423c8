/** The system of known pipework: suction in series with the tree of the discharge. */
import { describe, expect, it } from 'vitest';
import { lossOver } from '../../../models/network/network.ts';
import { solving } from '../../../models/network/solve-failure.ts';
import { expectClose } from '../../expect-close.ts';
import { LITRE_PER_HOUR, loopOf, modelOf, networkOf, outlet, pipe, solved } from '../example-loops.ts';

const loop = loopOf(
  { run: [pipe(0.04, 2)], branches: [outlet('a', {}, [pipe(0.03, 3)]), outlet('b')] },
  { suction: [pipe(0.05, 1), { fitting: 'elbow-90', count: 2 }], staticHead: 0.7 },
);

describe('a system of pipework', () => {
  const { system } = modelOf(loop);
  const network = networkOf(loop);

  it('needs the head of the suction and of the discharge together', () => {
    const state = system.stateAt(1.5e-3);
    expectClose(state.suctionLoss, lossOver(network.suction, 1.5e-3).head, { relative: 1e-12 });
    expectClose(state.head - state.suctionLoss, solved(network, 1.5e-3).rootHead, { relative: 1e-12 });
    expectClose(system.suctionLossAt(1.5e-3), state.suctionLoss, { relative: 1e-12 });
  });

  it('needs the static head at rest', () => {
    expectClose(system.stateAt(0).head, 0.7, { relative: 1e-12 });
  });

  it('shares the total flow over its outlets', () => {
    const { outletFlows } = system.stateAt(1.5e-3);
    expectClose(
      outletFlows.reduce((sum, flow) => sum + flow, 0),
      1.5e-3,
      { relative: 1e-12 },
    );
  });

  it.each([1, 10, 1e3, 1e5, 1e6])('answers at %d L/h', (litresPerHour) => {
    expect(solving(() => system.stateAt(litresPerHour * LITRE_PER_HOUR)).ok).toBe(true);
  });

  it.each([
    ['the suction', { suction: [pipe(0.05, 1), { valve: 'ball', opening: 0 } as const] }],
    ['the discharge', { discharge: outlet('jet', {}, [{ valve: 'ball', opening: 0 }]) }],
  ])('passes no water where a valve of %s is shut', (_, facts) => {
    expect(modelOf({ ...loop, ...facts }).system.passesWater).toBe(false);
  });

  it('answers without any loss but the jets', () => {
    const lossless = loopOf(
      { run: [], branches: [outlet('a'), { run: [], branches: [outlet('b'), outlet('c')] }] },
      { suction: [] },
    );
    const { outletFlows } = modelOf(lossless).system.stateAt(3e-3);
    for (const flow of outletFlows) expectClose(flow, 1e-3, { relative: 1e-9 });
  });
});
