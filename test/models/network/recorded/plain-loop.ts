/** Invented loops without one-way runs, free outlets, charged steps of bore and reducing tees. */
import type { Branch, PipeworkLoop } from '../../../../models/loop/loop.ts';
import { firstBore, lastBore } from '../../../../models/network/bores.ts';
import { drawsFrom, mulberry32 } from '../../../random/draw.ts';
import { randomPipework } from '../../../random/pipework.ts';

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

/** The same loop for the same seed. */
export function plainLoop(seed: number): PipeworkLoop {
  const loop = randomPipework(drawsFrom(mulberry32(seed)));
  return {
    ...loop,
    boreChanges: 'ignored',
    discharge: plain(loop.discharge, lastBore(loop.suction)),
  };
}
