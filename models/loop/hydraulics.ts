/** Picks from a loop what decides its flows, whatever it is called and is asked to give. */
import type { Branch, Loop, Outlet } from './loop.ts';

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
  const { staticHead, suction, discharge } = loop;
  const entrance = intake?.lossCoefficient ?? null;
  return { ...common, entrance, staticHead, suction, discharge: branchOf(discharge) };
}

const branchOf = ({ run, split, outlet, branches = [] }: Branch): object => ({
  run,
  split: split ?? null,
  outlet: outlet === undefined ? null : exitOf(outlet),
  branches: branches.map(branchOf),
});

const exitOf = ({ nozzleDiameter, nozzleCount, lossCoefficient, staticHead }: Outlet): object => ({
  nozzleDiameter,
  nozzleCount,
  lossCoefficient,
  staticHead,
});
