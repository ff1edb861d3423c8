/** Interpolation between sampled states of a loop. */
import { describe, expect, it } from 'vitest';
import { sampledSystem } from '../../../models/network/sampled-system.ts';
import { expectClose } from '../../expect-close.ts';
import { kelpFlume } from '../../reference/independent/kelp-flume.ts';
import { modelOf } from '../example-loops.ts';

const { system } = modelOf(kelpFlume);
const samples = sampledSystem(system);
const flows = Array.from({ length: 200 }, (_, i) => 1e-5 * 1.037 ** i);

describe('a sampled system', () => {
  it('gives heads and outlet flows of the system itself within its stated accuracy', () => {
    for (const flow of flows) {
      const exact = system.stateAt(flow);
      // 1e-4 where a pipe changes its flow regime between two samples.
      expectClose(samples.headAt(flow).head, exact.head, { relative: 1e-4 });
      for (const [i, outlet] of samples.outletFlowsAt(flow).entries()) {
        expectClose(outlet, exact.outletFlows[i] ?? Number.NaN, { relative: 1e-4 });
      }
    }
  });

  it('agrees to a millionth where all pipes are turbulent', () => {
    for (const flow of flows.filter((one) => one > 1.5e-3)) {
      expectClose(samples.headAt(flow).head, system.stateAt(flow).head, { relative: 1e-6 });
    }
  });

  it('gives the slope of its own heads', () => {
    for (const flow of [3e-4, 2e-3, 6e-3]) {
      const step = 1e-5 * flow;
      const difference = samples.headAt(flow + step).head - samples.headAt(flow - step).head;
      expectClose(samples.headAt(flow).slope, difference / (2 * step), { relative: 1e-5 });
    }
  });

  it('solves flows below its least sample as asked', () => {
    for (const flow of [0, 1e-12, 5e-9]) {
      expect(samples.headAt(flow).head).toBe(system.stateAt(flow).head);
      expect(samples.near(flow)).toBeUndefined();
    }
  });
});
