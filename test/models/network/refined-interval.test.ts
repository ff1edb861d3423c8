/** Samples of a system whose slopes change at once where valves open. */
import { describe, expect, it } from 'vitest';
import { pipeworkSystem } from '../../../models/network/pipework-system.ts';
import { sampledSystem } from '../../../models/network/sampled-system.ts';
import type { System } from '../../../models/network/system.ts';
import { expectClose } from '../../expect-close.ts';
import { loopOf, networkOf, outlet, pipe } from '../example-loops.ts';

/** Outlets in air that begin to run one after the other, one of them behind a tee. */
const opening = (): System =>
  pipeworkSystem(
    networkOf(
      loopOf({
        run: [pipe(0.04, 2)],
        branches: [
          outlet('low', { nozzleDiameter: 0.012 }, [pipe(0.03, 2)]),
          outlet('middle', { staticHead: 0.4 }, [pipe(0.03, 1)]),
          {
            run: [pipe(0.03, 1)],
            split: 'tee-90',
            branches: [
              outlet('high', { staticHead: 0.9 }, [pipe(0.03, 1)]),
              outlet('side', { staticHead: 0.95 }, [pipe(0.02, 1)]),
            ],
          },
        ],
      }),
    ),
  );

const FLOWS = Array.from({ length: 400 }, (_, step) => 2e-4 * 1.011 ** step);

describe('a system with kinks', () => {
  const system = opening();
  const samples = sampledSystem(system);

  it('is told apart from one without', () => {
    expect(system.hasKinks).toBe(true);
    const smooth = networkOf(loopOf({ run: [pipe(0.04, 2)], branches: [outlet('a'), outlet('b')] }));
    expect(pipeworkSystem(smooth).hasKinks).toBe(false);
  });

  it('opens its outlets one by one within the flows looked at', () => {
    const running = FLOWS.map((flow) => system.stateAt(flow).outletFlows.filter((one) => one > 0).length);
    expect(new Set(running)).toEqual(new Set([1, 2, 3, 4]));
  });

  it('is met by its samples, also beside the kinks', () => {
    for (const flow of FLOWS) {
      const exact = system.stateAt(flow);
      const { head, slope } = samples.headAt(flow);
      expectClose(head, exact.head, { absolute: 2e-5 * exact.slope * flow });
      expect(Number.isFinite(slope)).toBe(true);
      for (const [i, own] of samples.outletFlowsAt(flow).entries()) {
        expectClose(own, exact.outletFlows[i] ?? Number.NaN, { relative: 1e-4, absolute: 2e-6 * flow });
      }
    }
  });

  it('has an exact state to start from that is another solution of the network', () => {
    for (const flow of FLOWS) {
      const [cold, warm] = [system.stateAt(flow), system.stateAt(flow, samples.near(flow))];
      expectClose(warm.head, cold.head, { relative: 1e-11 });
    }
  });

  it('says that no outlet falls', () => {
    expect(samples.outletsRise({ from: 2e-4, to: 1e-2 })).toBe(true);
  });
});
