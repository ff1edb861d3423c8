/** The job of a recommendation chooses among candidates, and computes what its answer says about each. */
import { type Result, success } from '../../../curves/result.ts';
import type { Assurance } from '../../../models/assurance/assure-loop.ts';
import { type Choice, choose } from '../../../models/assurance/choose-assured.ts';
import type { Caution } from '../../../models/cautions/catalogue.ts';
import { gravityCautions } from '../../../models/cautions/gravity.ts';
import { loopCautions } from '../../../models/cautions/loop-cautions.ts';
import type { ExactDuty } from '../../../models/duty/duty-point.ts';
import { estimateDuty, exactDuty, type SampledLoop } from '../../../models/duty/sampled-loop.ts';
import type { Limits } from '../../../models/loop/limits.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import type { RequiredDuty } from '../../../models/network/required-duty.ts';
import { solving } from '../../../models/network/solve-failure.ts';
import { type PumpAtSetting, pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import type { PumpModel } from '../../../models/pump/pump-model.ts';
import { gridSize } from '../../../models/pump/settings-grid.ts';
import { type BalanceFailure, balancedLoop } from '../../../models/selection/balanced-loop.ts';
import { closeToBest } from '../../../models/selection/close-to.ts';
import { type Gravity, servedByGravity } from '../../../models/selection/gravity.ts';
import type { Balancing, Running } from '../../../models/selection/options.ts';
import { type RejectionCause, rejectionCause } from '../../../models/selection/rejection-cause.ts';
import type { Ranked, Rejected } from '../../../models/selection/select.ts';
import { withoutScreenLimit } from '../../../models/selection/without-screen-limit.ts';
import { oncePerObject } from '../../caches/once-per-object.ts';
import { type CandidateWork, pumpReference } from '../../question/candidates.ts';
import { branchesOf, idleSolves, LONG, SETTING, SOLVES } from '../../question/job-size.ts';
import { loopJob } from '../../records/loop/loop-job.ts';
import { type DutyAnswer, dutyAnswer } from '../duty-point/duty-answer.ts';
import { uncertaintyAnswer } from '../duty-point/uncertainty-answer.ts';
import { type WorstCaseAnswer, worstCaseAnswer } from './assurance-answer.ts';
import { type LossesAnswer, lossesAnswer } from './losses-answer.ts';
import { type WithoutScreenLimitAnswer, withoutScreenLimitAnswer } from './without-screen-limit-answer.ts';

export interface RecommendationWork {
  readonly candidates: readonly CandidateWork[];
  readonly balancing: Balancing;
  readonly limits: Limits;
  readonly running: Running;
  readonly rankingLimit: number;
  /** Null: none asked for. */
  readonly assurance: Assurance | null;
  readonly detail: 'plain' | 'losses';
}

/** What may as well be the best. */
export interface CloseAnswer {
  /** Places in the request, in the order of the ranking. */
  readonly closeTo: readonly number[];
  /** The pump whose power is to be measured, at its setting [%]; null where nothing is close. */
  readonly measure: {
    readonly pump: { readonly name: string };
    readonly count: number;
    readonly setting: number;
  } | null;
}

export interface RejectedCandidate extends Rejected {
  /** Null where settings and limits are the whole reason. */
  readonly cause: RejectionCause | null;
}

export interface RecommendationFigures {
  readonly ranking: readonly DutyAnswer[];
  readonly rejected: readonly RejectedCandidate[];
  readonly feasible: number;
  readonly requiredDuty: RequiredDuty | null;
  /** Of the best; null without one, or without an assurance. */
  readonly worstCase: WorstCaseAnswer;
  readonly losses: LossesAnswer;
  /** Null where the screen decides nothing. */
  readonly withoutScreenLimit: WithoutScreenLimitAnswer | null;
  readonly close: CloseAnswer;
  /** What runs without a pump; null where that does not serve every outlet. */
  readonly gravity: Gravity | null;
  readonly cautions: readonly Caution[];
}

/** The samples of a loop serve every question about it. */
const balanced = oncePerObject(balancedLoop);

export const recommendationJob = loopJob<RecommendationWork, Result<RecommendationFigures, BalanceFailure>>({
  name: 'recommendation',
  isLong: (loop, { detail, candidates }) => detail === 'losses' || isLongSelection(loop, candidates),
  compute,
});

function compute(
  model: CompiledLoop,
  work: RecommendationWork,
): Result<RecommendationFigures, BalanceFailure> {
  const balancedModel = balanced(model, work.balancing);
  if (!balancedModel.ok) return balancedModel;
  const { candidates, rankingLimit } = work;
  const question = {
    ...work,
    candidates: candidates.map((candidate) => ({ pump: candidate, count: candidate.count })),
  };
  const chosen = choose(model, question, balancedModel.value);
  if (!chosen.ok) return chosen;
  const { sampled } = chosen.value.balanced;
  const { ranking, rejected } = chosen.value.selection;
  const solved = solving(() => ({
    ranking: ranking.slice(0, rankingLimit).map((one) => rankedAnswer(one, chosen.value, work)),
    worstCase: worstCaseOfBest(chosen.value, work),
    gravity: servedByGravity(sampled),
    close: closeAnswer(ranking, work),
    withoutScreenLimit: screenLimitAnswer(chosen.value, work),
  }));
  if (!solved.ok) return solved;
  const { gravity } = solved.value;
  return success({
    ...solved.value,
    rejected: rejected.map((one) => {
      const pump = candidateAt(work, one.candidate);
      return { ...one, cause: rejectionCause(sampled, { pump, count: pump.count }, one.outcome.failing) };
    }),
    feasible: ranking.length,
    requiredDuty: sampled.required,
    losses: work.detail === 'losses' ? lossesAnswer(model, question, chosen.value) : null,
    cautions: [...gravityCautions(gravity), ...loopCautions(sampled.loop)],
  });
}

function screenLimitAnswer(
  { balanced: { sampled }, selection, worstCase }: Choice,
  work: RecommendationWork,
): WithoutScreenLimitAnswer | null {
  const { candidates, limits, running } = work;
  const pumps = candidates.map((candidate) => ({ pump: candidate, count: candidate.count }));
  const found = withoutScreenLimit({ selection, sampled, candidates: pumps, limits, running, worstCase });
  if (found === null) return null;
  return withoutScreenLimitAnswer(found, pumpReference(candidateAt(work, found.ranked.candidate)));
}

export function candidateAt(
  { candidates }: Pick<RecommendationWork, 'candidates'>,
  place: number,
): CandidateWork {
  const candidate = candidates[place];
  if (candidate === undefined) throw new Error(`invariant: there is no candidate ${place}`);
  return candidate;
}

const landOn =
  (sampled: SampledLoop) =>
  (pump: PumpAtSetting): ExactDuty =>
    exactDuty(sampled, pump, estimateDuty(sampled, pump, sampled.required?.flow));

function rankedAnswer(
  { candidate, duty, rankedBy: _rankedBy, ...use }: Ranked,
  choice: Choice,
  work: RecommendationWork,
): DutyAnswer {
  const { limits, running, assurance } = work;
  const { sampled, trims } = choice.balanced;
  const pump = candidateAt(work, candidate);
  const land = landOn(sampled);
  const worst = dutyAtWorstCase(choice, pump, duty);
  const others = worst === null ? [] : [worst];
  const uncertainty = uncertaintyAnswer({ pump, duty, running, assurance, land, others });
  const context = { loop: sampled.loop, pump, limits, elevation: running.elevation };
  const isUnpriced = running.lifeCycle !== undefined && pump.entered.price === undefined;
  return dutyAnswer({
    isUnpriced,
    candidate,
    pump: pumpReference(pump),
    context,
    duty,
    use,
    trims,
    uncertainty,
  });
}

function closeAnswer(ranking: readonly Ranked[], work: RecommendationWork): CloseAnswer {
  const { closeTo, measure } = closeToBest(ranking);
  return {
    closeTo: closeTo.map(({ candidate }) => candidate),
    measure: measure && {
      pump: { name: candidateAt(work, measure.candidate).entered.name },
      count: measure.duty.count,
      setting: measure.duty.setting,
    },
  };
}

/** Null without an assurance. */
function dutyAtWorstCase({ worstCase }: Choice, pump: CandidateWork, duty: ExactDuty): ExactDuty | null {
  if (worstCase === undefined) return null;
  const { sampled, pumpAt = pumpAtSetting } = worstCase;
  return landOn(sampled)(pumpAt(pump, duty));
}

function worstCaseOfBest(choice: Choice, work: RecommendationWork): WorstCaseAnswer {
  const [best] = choice.selection.ranking;
  if (best === undefined || choice.worstCase === undefined) return null;
  const worst = dutyAtWorstCase(choice, candidateAt(work, best.candidate), best.duty);
  return worst === null ? null : worstCaseAnswer(choice.worstCase.sampled.loop.system, worst);
}

/** Where no bisection finds the setting, all settings of all candidates are judged. */
function isLongSelection(loop: CompiledLoop, candidates: readonly PumpModel[]): boolean {
  const branches = branchesOf(loop);
  const solves = SOLVES.shared + (SOLVES.candidate + idleSolves(loop)) * candidates.length;
  const settings = candidates.reduce((sum, { entered: pump }) => sum + gridSize(pump.settings), 0);
  return branches * solves + (SETTING.own + SETTING.branch * branches) * settings > LONG;
}
