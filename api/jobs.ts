/** Work that may take long, as functions from plain data to plain data: they run here or in a worker thread alike. */
import type { Result } from '../curves/result.ts';
import type { Loop } from '../models/loop/loop.ts';
import type { Unsolved } from '../models/network/solve-failure.ts';
import { type BalanceFailure, balancedLoop } from '../models/selection/balanced-loop.ts';
import type { LoopFigures } from '../models/site-summary/loop-figures.ts';
import type { UpgradePlan } from '../models/upgrade-plan/choose-upgrades.ts';
import type { PlanFailure } from '../models/upgrade-plan/solve-plan.ts';
import {
  type CalibrationFigures,
  type CalibrationWork,
  computeCalibration,
} from './features/calibration/job.ts';
import { type ConditionFigures, type ConditionWork, computeCondition } from './features/condition/job.ts';
import { computeDutyPoint, type DutyPointFigures, type DutyPointWork } from './features/duty-point/job.ts';
import {
  computeRecommendation,
  type RecommendationFigures,
  type RecommendationWork,
} from './features/recommendation/job.ts';
import { computePlan, type PlannedFigures, type PlanWork } from './features/schedule/job.ts';
import { computeSummarySlice, type SummarySlice } from './features/site-summary/job.ts';
import {
  computeSystemCurve,
  type SystemCurveFigures,
  type SystemCurveWork,
} from './features/system-curve/job.ts';
import { computeUpgradePlan, type UpgradePlanWork } from './features/upgrade-plan/job.ts';
import { compiled } from './records/loop/compile.ts';
import { type ReadingsRead, type ReadingsWork, readReadings } from './records/reading/job.ts';

interface OnLoop<Work> {
  readonly loop: Loop;
  readonly work: Work;
}

export interface JobInputs {
  readonly recommendation: OnLoop<RecommendationWork>;
  readonly dutyPoint: OnLoop<DutyPointWork>;
  readonly systemCurve: OnLoop<SystemCurveWork>;
  readonly plan: OnLoop<PlanWork>;
  readonly calibration: OnLoop<CalibrationWork>;
  readonly upgradePlan: UpgradePlanWork;
  readonly readings: ReadingsWork;
  readonly condition: OnLoop<ConditionWork>;
  readonly summarySlice: SummarySlice;
}

export interface JobResults {
  readonly recommendation: Result<RecommendationFigures, BalanceFailure>;
  readonly dutyPoint: Result<DutyPointFigures, Unsolved>;
  readonly systemCurve: Result<SystemCurveFigures, Unsolved>;
  readonly plan: Result<PlannedFigures, Unsolved>;
  readonly calibration: CalibrationFigures;
  readonly upgradePlan: Result<UpgradePlan, PlanFailure>;
  readonly readings: ReadingsRead;
  readonly condition: Result<ConditionFigures, Unsolved>;
  readonly summarySlice: readonly (LoopFigures | null)[];
}

export type JobName = keyof JobInputs;

/** At once, or by and by where a job must first load what it needs. */
type Done<Name extends JobName> = JobResults[Name] | Promise<JobResults[Name]>;

type Jobs = { readonly [Name in JobName]: (input: JobInputs[Name]) => Done<Name> };

const jobs: Jobs = {
  recommendation({ loop, work }) {
    const model = compiled(loop);
    const balanced = balancedLoop(model, work.balancing);
    return balanced.ok ? computeRecommendation({ model, balanced: balanced.value }, work) : balanced;
  },
  dutyPoint: ({ loop, work }) => computeDutyPoint(compiled(loop), work),
  systemCurve: ({ loop, work }) => computeSystemCurve(compiled(loop), work),
  plan: ({ loop, work }) => computePlan(compiled(loop), work),
  calibration: ({ loop, work }) => computeCalibration(compiled(loop), work),
  upgradePlan: computeUpgradePlan,
  readings: readReadings,
  condition: ({ loop, work }) => computeCondition(compiled(loop), work),
  summarySlice: computeSummarySlice,
};

export const runJob = <Name extends JobName>(name: Name, input: JobInputs[Name]): Done<Name> =>
  jobs[name](input);
