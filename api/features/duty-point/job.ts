/** The job of a duty point computes where a pump at a setting meets a loop, and what that takes. */
import type { Intersection } from '../../../curves/intersections.ts';
import { type Result, success } from '../../../curves/result.ts';
import { gravityCautions } from '../../../models/cautions/gravity.ts';
import { loopCautions } from '../../../models/cautions/loop-cautions.ts';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { annualUse } from '../../../models/duty/energy.ts';
import type { Limits } from '../../../models/loop/limits.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import { solving, type Unsolved } from '../../../models/network/solve-failure.ts';
import { type PumpAtSetting, pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { dutyHeat } from '../../../models/selection/duty-heat.ts';
import { type Gravity, servedByGravity } from '../../../models/selection/gravity.ts';
import type { Running } from '../../../models/selection/options.ts';
import { type CandidateWork, pumpReference } from '../../question/candidates.ts';
import { branchesOf, idleSolves, LONG, SOLVES } from '../../question/job-size.ts';
import { loopJob } from '../../records/loop/loop-job.ts';
import { type DutyAnswer, dutyAnswer } from './duty-answer.ts';
import { uncertaintyAnswer } from './uncertainty-answer.ts';

export interface DutyPointWork {
  readonly candidate: CandidateWork;
  readonly setting: number;
  readonly limits: Limits;
  readonly running: Running;
  /** Velocity [m/s] down to which the reach of every outlet is given; null: that of the reach each states. */
  readonly reachVelocity: number | null;
}

export interface DutyPointFigures {
  readonly duty: DutyAnswer;
  readonly intersections: readonly Intersection[];
  /** What runs without a pump; null where that does not serve every outlet. */
  readonly gravity: Gravity | null;
}

export const dutyPointJob = loopJob<DutyPointWork, Result<DutyPointFigures, Unsolved>>({
  name: 'duty-point',
  isLong: (loop) => branchesOf(loop) * (SOLVES.dutyPoint + idleSolves(loop)) > LONG,
  compute,
});

function compute(
  loop: CompiledLoop,
  { candidate, setting, limits, running, reachVelocity }: DutyPointWork,
): Result<DutyPointFigures, Unsolved> {
  const { count, entered: pump } = candidate;
  const solved = solving(() => {
    const duty = dutyPoint(loop, pumpAtSetting(candidate, { setting, count }));
    const land = (pumpAtEnd: PumpAtSetting) => dutyPoint(loop, pumpAtEnd, duty.state ?? undefined);
    const atRest = loop.system.passesWater ? loop.system.stateAt(0) : null;
    return {
      ...{ duty, gravity: servedByGravity({ loop, atRest }) },
      uncertainty: uncertaintyAnswer({ pump: candidate, duty, running, assurance: null, land }),
    };
  });
  if (!solved.ok) return solved;
  const { duty, gravity, uncertainty } = solved.value;
  const context = { loop, pump: candidate, limits, elevation: running.elevation };
  const use = {
    ...annualUse({ ...running, power: duty.power, standbyPower: count * pump.standbyPower }),
    heat: dutyHeat(context, duty, running),
  };
  const reference = pumpReference(candidate);
  const facts = { candidate: 0, pump: reference, context, duty, use, trims: [], uncertainty, reachVelocity };
  const answer = dutyAnswer(facts);
  return success({
    duty: { ...answer, cautions: [...answer.cautions, ...gravityCautions(gravity), ...loopCautions(loop)] },
    intersections: duty.crossings,
    gravity,
  });
}
