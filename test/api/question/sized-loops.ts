/** Loops of few and of many outlets, to judge the size of jobs by. */
import type { Branch } from '../../../models/loop/loop.ts';
import { compileLoop } from '../../../models/network/compiled-loop.ts';
import { fitPump } from '../../../models/pump/pump-model.ts';
import { expectValue } from '../../curves/expect-value.ts';
import { canister250, kelpFlume } from '../../reference/independent/kelp-flume.ts';

export const flume = expectValue(compileLoop(kelpFlume));

export const manifold = (outlets: number) => {
  const branches = Array.from({ length: outlets }, (_, i): Branch => {
    return { run: [], outlet: { name: `o${i}`, requiredFlow: 1e-6 } };
  });
  const discharge = { run: [{ pipe: 'sch40 2', length: 1 }], branches };
  return expectValue(compileLoop({ ...kelpFlume, discharge }));
};

const pump = { entered: canister250, fit: expectValue(fitPump(canister250)), id: null, count: 1 };

/** Alike, with settings of a step [%]. */
export const candidates = (number: number, step = 1) => {
  const settings = { min: 1, max: 100, step };
  return Array.from({ length: number }, () => ({ ...pump, entered: { ...canister250, settings } }));
};

export const [candidate = pump] = candidates(1);
