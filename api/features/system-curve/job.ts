/** The job of a system curve computes the head that a loop needs against its flow. */
import { at } from '../../../curves/at.ts';
import type { Result } from '../../../curves/result.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import { type RequiredDuty, requiredDuty } from '../../../models/network/required-duty.ts';
import { solving, type Unsolved } from '../../../models/network/solve-failure.ts';
import type { SystemState } from '../../../models/network/system.ts';
import { branchesOf, LONG, SOLVES } from '../../question/job-size.ts';
import { loopJob } from '../../records/loop/loop-job.ts';

export interface SystemCurveWork {
  /** Largest flow of the table [m3/s]; null: one and a half times the flow that the loop is about. */
  readonly flow: number | null;
  /** How many, from 0 to the largest flow; one is the largest flow alone. */
  readonly points: number;
}

export interface SystemCurveFigures {
  readonly points: {
    readonly flow: number;
    readonly head: number;
    readonly outlets: { readonly name: string; readonly flow: number }[];
  }[];
  readonly requiredDuty: RequiredDuty | null;
}

const BEYOND = 1.5;
/** Velocity [m/s] in the widest bore that the table ends at where nothing else says how far to go. */
const BRISK = 2;

export const systemCurveJob = loopJob<SystemCurveWork, Result<SystemCurveFigures, Unsolved>>({
  name: 'system-curve',
  isLong: (loop, { points }) => branchesOf(loop) * (SOLVES.requiredDuty + points) > LONG,
  compute,
});

function compute(
  loop: CompiledLoop,
  { flow, points }: SystemCurveWork,
): Result<SystemCurveFigures, Unsolved> {
  const { system } = loop;
  return solving(() => {
    const required = requiredDuty(system);
    const most = flow ?? BEYOND * (required?.flow ?? flowOfLoop(loop));
    let near: SystemState | undefined;
    const rows = Array.from({ length: system.passesWater ? points : 0 }, (_, index) => {
      near = system.stateAt(points === 1 ? most : (most * index) / (points - 1), near);
      const { outletFlows, head, flow: total } = near;
      return {
        flow: total,
        head,
        outlets: system.outlets.map(({ name }, outlet) => ({ name, flow: at(outletFlows, outlet) })),
      };
    });
    return { points: rows, requiredDuty: required };
  });
}

function flowOfLoop({ entered: loop, network }: CompiledLoop): number {
  if ('systemCurve' in loop) return Math.max(...loop.systemCurve.points.map((point) => point.flow));
  const bores = network?.branches.map(({ farBore }) => farBore ?? 0) ?? [];
  const widest = bores.reduce((most, bore) => Math.max(most, bore), 0.01);
  return BRISK * (Math.PI / 4) * widest ** 2;
}
