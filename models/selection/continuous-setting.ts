/** Finds the smallest feasible setting when the controller's steps are left out of account. */
import { findRoot } from '../../curves/find-root.ts';
import type { ExactDuty } from '../duty/duty-point.ts';
import { estimateDuty, exactDuty, type SampledLoop } from '../duty/sampled-loop.ts';
import type { Limits } from '../loop/limits.ts';
import { SolveFailure } from '../network/solve-failure.ts';
import type { Settings } from '../pump/pump.ts';
import { type PumpMaker, pumpAtSetting } from '../pump/pump-at-setting.ts';
import { gridSize, settingAt } from '../pump/settings-grid.ts';
import { criteriaFor } from './criteria.ts';
import type { Judgement } from './criterion.ts';
import type { Running } from './options.ts';
import type { Candidate, WorstCase } from './select.ts';
import { tighterJudgements } from './tighter-judgements.ts';

interface ContinuousQuestion {
  readonly sampled: SampledLoop;
  readonly worstCase: WorstCase | undefined;
  readonly candidate: Candidate;
  readonly limits: Limits;
  readonly running: Running;
}

/**
 * The duty at the smallest setting [% of full], of any decimals, at which every criterion holds.
 *
 * It lies between the last grid setting that is not feasible and `duty`, the smallest that is: where the criterion
 * with the least clearance is just met. `duty` itself where it is at the lowest setting.
 * Errors: throws `SolveFailure` where network or search reach a limit.
 */
export function continuousDuty(question: ContinuousQuestion, duty: ExactDuty): ExactDuty {
  const { candidate, sampled } = question;
  const before = settingBefore(candidate.pump.entered.settings, duty.setting);
  if (before === null) return duty;
  const root = findRoot({
    evaluate: (setting) => ({ value: leastClearance(question, setting) }),
    low: before,
    high: duty.setting,
  });
  if (!root.ok) {
    // A duty that just qualifies, to rounding, leaves nothing to look for.
    if (root.failure.code === 'not-bracketed') return duty;
    throw new SolveFailure(root.failure);
  }
  return landed(question, { sampled }, root.value.root);
}

function settingBefore(settings: Settings, setting: number): number | null {
  const size = gridSize(settings);
  for (let index = 1; index < size; index++) {
    if (settingAt(settings, index) >= setting) return settingAt(settings, index - 1);
  }
  return null;
}

interface End {
  readonly sampled: SampledLoop;
  readonly pumpAt?: PumpMaker | undefined;
}

function landed(
  { candidate }: ContinuousQuestion,
  { sampled, pumpAt = pumpAtSetting }: End,
  setting: number,
) {
  const pump = pumpAt(candidate.pump, { setting, count: candidate.count });
  return exactDuty(sampled, pump, estimateDuty(sampled, pump, sampled.required?.flow));
}

function judgements(question: ContinuousQuestion, end: End, setting: number): readonly Judgement[] {
  const { candidate, limits, running } = question;
  const { elevation } = running;
  const duty = landed(question, end, setting);
  const criteria = criteriaFor({ loop: end.sampled.loop, pump: candidate.pump, limits, elevation });
  return criteria.map((criterion) => criterion.judge(duty));
}

function leastClearance(question: ContinuousQuestion, setting: number): number {
  const { sampled, worstCase } = question;
  const plain = judgements(question, { sampled }, setting);
  const all =
    worstCase === undefined ? plain : tighterJudgements(plain, judgements(question, worstCase, setting));
  return Math.min(...all.map(({ clearance }) => clearance));
}
