/** Computes a recommendation, and keeps its figures for those who ask again. */
import { failed, type Result, success } from '../../../curves/result.ts';
import { fitOnLoop } from '../../../models/calibration/applied.ts';
import { limitsOf } from '../../../models/loop/limits.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import { oncePerObject } from '../../caches/once-per-object.ts';
import { invalidRequest, type Place, type Problem } from '../../http/problem.ts';
import { runJob } from '../../http/run-job.ts';
import { type AnswerCache, answerCache } from '../../question/answer-cache.ts';
import { selectionProblem } from '../../question/solve-problems.ts';
import type { TariffPrice } from '../../question/tariff-price.ts';
import type { CompiledLoops } from '../../records/loop/compiled-loops.ts';
import type { SiteRecord } from '../../records/site/kind.ts';
import type { WorkerPool } from '../../threads/worker-pool.ts';
import { type ComputedRecommendation, type Recommended, recommendationAnswer } from './answer.ts';
import { computeBaselines } from './baselines.ts';
import { detailProblem, statedAssurance } from './detail-problems.ts';
import { type RecommendationFigures, type RecommendationWork, recommendationJob } from './job.ts';
import { statedLifeCycle } from './life-cycle-question.ts';
import type { RecommendationOptions, RecommendationQuestion } from './question.ts';

/** Answers about more candidates are too large to keep many of. */
const CANDIDATES_MAX = 50;
const KEPT_RECOMMENDATIONS = 200;

export interface RecommendationDeps {
  readonly loops: CompiledLoops;
  readonly workers: WorkerPool;
  readonly answers: AnswerCache<ComputedRecommendation>;
}

export const recommendationDeps = (loops: CompiledLoops, workers: WorkerPool): RecommendationDeps => ({
  ...{ loops, workers },
  answers: answerCache({ max: KEPT_RECOMMENDATIONS }),
});

/** The same answer for the same figures, so that it is also written once. */
const answered = oncePerObject(recommendationAnswer);

export async function recommend(
  deps: RecommendationDeps,
  question: RecommendationQuestion,
): Promise<Result<Recommended, Problem>> {
  const computed = await deps.answers.answer(cacheKey(question), () => compute(deps, question));
  return computed.ok ? success(answered(computed.value, question.system)) : computed;
}

/**
 * All that the figures follow from, as a text. Stored records are in it by id and version, which never mean something else
 * later: an import, which may bring them back changed, raises the version of the site. Null for a question with a loop or a
 * pump that came with the request, and for one that rests on more than it states.
 */
export function cacheKey({
  site,
  loop,
  candidates,
  system: _system,
  places: _places,
  ...stated
}: RecommendationQuestion): string | null {
  const isStored = loop.id !== null && candidates.every(({ id }) => id !== null);
  if (!isStored || stated.options.assurance !== undefined || candidates.length > CANDIDATES_MAX) return null;
  const pumps = candidates.map(({ id, version, count }) => [id, version, count]);
  return JSON.stringify([site.id, site.version, loop.id, loop.version, pumps, stated]);
}

async function compute(
  { loops, workers }: RecommendationDeps,
  question: RecommendationQuestion,
): Promise<Result<ComputedRecommendation, Problem>> {
  const asked = workAsked(question);
  if (!asked.ok) return asked;
  const { work, currency } = asked.value;
  const model = loops.compile(question.loop, ['loop']);
  if (!model.ok) return model;
  const figuresOf = (one: RecommendationWork) =>
    computeFigures(workers, question, { ready: model.value, work: one });
  const figures = await figuresOf(work);
  if (!figures.ok) return figures;
  const baselines = await computeBaselines(work, figuresOf);
  if (!baselines.ok) return baselines;
  return success({ question, work, currency, figures: figures.value, baselines: baselines.value });
}

interface Asked {
  readonly work: RecommendationWork;
  readonly currency: string;
}

/** What is to be computed, and the currency of its money. */
function workAsked(question: RecommendationQuestion): Result<Asked, Problem> {
  const { site, loop, options, places } = question;
  const candidates = question.candidates.map((one) => ({ ...one, fit: fitOnLoop(one, loop.calibration) }));
  const money = moneyOf(site, { ...options, tariff: question.tariff }, places.currency);
  if (!money.ok) return money;
  const { price, currency } = money.value;
  const { hoursPerDay, balancing, rankingLimit, detail, heat } = options;
  const limits = limitsOf(options.limits, loop.document.limits);
  const assurance = statedAssurance(options.assurance, loop.calibration);
  if (!assurance.ok) return assurance;
  const beyond = detailProblem(detail, candidates.length);
  if (beyond !== null) return failed(beyond);
  const lifeCycle = statedLifeCycle(question, price);
  if (!lifeCycle.ok) return lifeCycle;
  const { elevation } = site.document;
  const running = { price, hoursPerDay, elevation, heat, lifeCycle: lifeCycle.value };
  const stated = { balancing, limits, assurance: assurance.value, detail };
  return success({ work: { ...stated, candidates, running, rankingLimit }, currency });
}

/** Stored prices are in the site's currency and are never converted. */
function moneyOf(
  { document: site }: SiteRecord,
  {
    price,
    currency = site.currency,
    tariff,
  }: Pick<RecommendationOptions, 'price' | 'currency'> & { readonly tariff: TariffPrice | null },
  place: Place,
): Result<{ readonly price: number | null; readonly currency: string }, Problem> {
  if (price === undefined && currency !== site.currency) {
    const detail = `must be ${site.currency}, the currency of the site, unless a price comes with it`;
    return failed(invalidRequest([{ ...place, detail }]));
  }
  return success({ price: price ?? tariff?.price ?? site.price, currency });
}

async function computeFigures(
  workers: WorkerPool,
  { loop, places }: RecommendationQuestion,
  asked: { readonly ready: CompiledLoop; readonly work: RecommendationWork },
): Promise<Result<RecommendationFigures, Problem>> {
  const done = await runJob(workers, recommendationJob, asked);
  if (!done.ok) return done;
  const figures = done.value;
  return figures.ok
    ? figures
    : failed(selectionProblem(figures.failure, { ...places, isInline: loop.id === null }));
}
