/** Lists every job that a worker thread does. */
import { calibrationJob } from './features/calibration/job.ts';
import { conditionJob } from './features/condition/job.ts';
import { designJob } from './features/design/job.ts';
import { dutyPointJob } from './features/duty-point/job.ts';
import { recommendationJob } from './features/recommendation/job.ts';
import { scheduleJob } from './features/schedule/job.ts';
import { siteSummaryJob } from './features/site-summary/job.ts';
import { systemCurveJob } from './features/system-curve/job.ts';
import { upgradePlanJob } from './features/upgrade-plan/job.ts';
import { readingsJob } from './records/reading/job.ts';
import { plausibilityJob } from './records/reading/plausibility-job.ts';
import type { SentJob } from './threads/job.ts';

/** Of each only its name is known here; what is sent to it was checked by its type where it was sent. */
export const JOBS: readonly SentJob<never, unknown>[] = [
  calibrationJob,
  conditionJob,
  designJob,
  dutyPointJob,
  plausibilityJob,
  readingsJob,
  recommendationJob,
  scheduleJob,
  siteSummaryJob,
  systemCurveJob,
  upgradePlanJob,
];

export function jobNamed(name: string): SentJob<never, unknown> {
  const job = JOBS.find((one) => one.name === name);
  if (job === undefined) throw new Error(`invariant: there is no job ${name}`);
  return job;
}
