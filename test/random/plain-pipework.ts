/** Takes one-way runs, outlets in air, charged steps of bore and reducing tees out of a loop. */
import type { Branch, PipeworkLoop } from '../../models/loop/loop.ts';
import { firstBore, lastBore } from '../../models/network/bores.ts';

/** A stated tee stays where all of its sides are as wide as the leg. */
function plain(branch: Branch, upstream: number | null): Branch {
  const leg = lastBore(branch.run) ?? upstream;
  const { outlet, branches, split, run } = branch;
  const isReducing = (side: Branch): boolean => {
    const bore = firstBore(side.run);
    return leg !== null && bore !== null && bore < leg;
  };
  const isEqual = branches !== undefined && !branches.slice(1).some(isReducing);
  return {
    run,
    ...(outlet === undefined ? {} : { outlet: { ...outlet, exit: 'submerged' } }),
    ...(branches === undefined ? {} : { branches: branches.map((child) => plain(child, leg)) }),
    ...(split !== undefined && isEqual ? { split } : {}),
  };
}

/** Of a loop without check valves. */
export const plainPipework = (loop: PipeworkLoop): PipeworkLoop => ({
  ...loop,
  boreChanges: 'ignored',
  discharge: plain(loop.discharge, lastBore(loop.suction)),
});
