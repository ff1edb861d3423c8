/** Picks from a loop what decides its flows, whatever it is called and is asked to give. */
import type { Branch, Loop, Outlet } from './loop.ts';
import { exitOf } from './outlet-exit.ts';

/** Plain data without names, requirements and limits; equal for loops that a calibration of one fits alike. */
export function hydraulicsOf(loop: Loop): object {
  const { frictionMultiplier, installed, intake } = loop;
  const common = {
    frictionMultiplier,
    installed: installed === undefined ? null : { pump: installed.pump, count: installed.count },
  };
  if ('systemCurve' in loop) {
    const shares = loop.outlets.map(({ share }) => share);
    return { ...common, systemCurve: loop.systemCurve, shares };
  }
  const { staticHead, suction, discharge, boreChanges } = loop;
  const entrance = intake?.lossCoefficient ?? null;
  const steps = boreChanges === 'ignored' ? { boreChanges } : {};
  return { ...common, ...steps, entrance, staticHead, suction, discharge: branchOf(discharge) };
}

const branchOf = ({ run, split, outlet, branches = [] }: Branch): object => ({
  run,
  split: split ?? null,
  outlet: outlet === undefined ? null : endOf(outlet),
  branches: branches.map(branchOf),
});

/** A default that is stated is no other exit than one that is not. */
function endOf(outlet: Outlet): object {
  const { nozzleDiameter, nozzleCount, lossCoefficient, staticHead } = outlet;
  const exit = exitOf(outlet) === exitOf({ staticHead }) ? {} : { exit: exitOf(outlet) };
  return { nozzleDiameter, nozzleCount, lossCoefficient, staticHead, ...exit };
}
