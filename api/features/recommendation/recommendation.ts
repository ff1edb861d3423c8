/** The main job: a loop, candidates and what running costs, turned into the answer of a recommendation. */
import { failed, type Result, success } from '../../../curves/result.ts';
import { fitOnLoop } from '../../../models/calibration/applied.ts';
import { borrowedCalibration } from '../../../models/cautions/measured.ts';
import { meanPriceCautions } from '../../../models/cautions/time.ts';
import { drainBack } from '../../../models/hazards/drain-back.ts';
import { MODEL_VERSION } from '../../../models/model-version.ts';
import { invalidRequest, type Place, type Problem } from '../../http/problem.ts';
import { runHeavy } from '../../http/run-job.ts';
import type { AnswerCache } from '../../question/answer-cache.ts';
import { type SelectionPlaces, selectionProblem } from '../../question/solve-problems.ts';
import { tariffAnswer } from '../../question/tariff-answer.ts';
import type { TariffPrice } from '../../question/tariff-price.ts';
import type { LoopCache, ReadyLoop, VersionedLoop } from '../../records/loop/compiled-loops.ts';
import { dataBasisOf } from '../../records/loop/data-basis.ts';
import type { SiteRecord } from '../../records/site/kind.ts';
import type { HeavyWork } from '../../threads/worker-pool.ts';
import { againstAsBuilt } from './against-as-built.ts';
import type { RecommendationAnswer } from './answer-schema.ts';
import { assuranceAnswer } from './assurance-answer.ts';
import { bestsBeside } from './baselines.ts';
import { questionKey } from './cache-key.ts';
import { detailProblem, statedAssurance } from './detail-problems.ts';
import {
  computeRecommendation,
  isLongSelection,
  type RecommendationFigures,
  type RecommendationWork,
} from './job.ts';
import { statedLifeCycle } from './life-cycle-question.ts';
import { lifeCycleWords } from './life-cycle-sentence.ts';
import type { RecommendationOptions, RecommendationQuestion } from './question.ts';
import { recommendationSummary } from './sentence.ts';
import { screenLimitWords } from './without-screen-limit-answer.ts';

export interface Recommended {
  readonly body: RecommendationAnswer;
  /** All that the answer follows from besides the query: the basis it states, and the site. */
  readonly validator: { readonly basis: unknown };
}

export interface RecommendationMeans {
  readonly loops: LoopCache;
  readonly heavyWork: HeavyWork;
  readonly answers: AnswerCache<Recommended>;
}

export const recommend = (
  means: RecommendationMeans,
  question: RecommendationQuestion,
): Promise<Result<Recommended, Problem>> =>
  means.answers.answer(questionKey(question), () => recommendAnew(means, question));

async function recommendAnew(
  { loops, heavyWork }: RecommendationMeans,
  question: RecommendationQuestion,
): Promise<Result<Recommended, Problem>> {
  const { site, loop, options, places, system } = question;
  const asked = workAsked(question);
  if (!asked.ok) return asked;
  const { work, currency } = asked.value;
  const { candidates, balancing, limits } = work;
  const { price, hoursPerDay, heat } = work.running;
  const ready = loops.ready(loop, ['loop']);
  if (!ready.ok) return ready;
  const where = { heavyWork, loop, ready: ready.value, places };
  const compute = (one: RecommendationWork) => computeHereOrThere({ ...where, work: one });
  const figures = await compute(work);
  if (!figures.ok) return figures;
  const beside = await bestsBeside(work, compute);
  if (!beside.ok) return beside;
  const { asBuilt, unassured } = beside.value;
  const { ranking, rejected, feasible, requiredDuty, worstCase, losses, cautions } = figures.value;
  const { withoutScreenLimit } = figures.value;
  const { screen } = loop.document.intake ?? {};
  const best = ranking[0] ?? null;
  const assured = work.assurance === null ? null : assuranceAnswer(best, unassured, worstCase);
  const telling = {
    ...{ loopName: loop.document.name, currency, system, candidates: candidates.length, rejected, cautions },
    ...{ limits, assured: options.assurance ?? null, assurance: assured, heat },
  };
  const basis = {
    modelVersion: MODEL_VERSION,
    loop: { id: loop.id, version: loop.version },
    pumps: question.candidates.map(({ id, version }) => ({ id, version })),
  };
  return success({
    body: {
      best,
      ranking: [...ranking],
      rejected: [...rejected],
      counts: { candidates: candidates.length, feasible, rejected: rejected.length },
      requiredDuty,
      againstAsBuilt: againstAsBuilt(best, asBuilt),
      assurance: assured,
      losses,
      withoutScreenLimit,
      drainBack: drainBack(loop.document),
      assumptions: {
        ...{ price, currency, hoursPerDay, balancing, objective: options.objective ?? 'energy-cost', limits },
        lifeCycle: work.running.lifeCycle ?? null,
        tariff: tariffAnswer(question.tariff),
        assurance: options.assurance ?? null,
        heat: heat ?? null,
      },
      summary: `${recommendationSummary(best, telling)}${screenLimitWords(withoutScreenLimit, { limits, screen, currency, system })}${lifeCycleWords(best, work.running.lifeCycle, currency)}`,
      cautions: [...cautions, ...cautionsBeside(question, hoursPerDay)],
      dataBasis: dataBasisOf(loop),
      basis,
    },
    validator: { basis: { ...basis, site: site.version, tariff: question.tariff } },
  });
}

/** Of what the figures rest on besides the loop: its calibration, the tariff. */
const cautionsBeside = ({ loop, candidates, tariff }: RecommendationQuestion, hoursPerDay: number) => [
  ...borrowedCalibration(loop.calibration, candidates),
  ...meanPriceCautions({ tariff: tariff?.name ?? null, hoursPerDay }),
];

interface Asked {
  readonly work: RecommendationWork;
  readonly currency: string;
}

/** What is to be computed, and the money that it is told in. */
function workAsked(question: RecommendationQuestion): Result<Asked, Problem> {
  const { site, loop, options, places, system } = question;
  const candidates = question.candidates.map((one) => ({ ...one, fit: fitOnLoop(one, loop.calibration) }));
  const money = moneyOf(site, { ...options, tariff: question.tariff }, places.currency);
  if (!money.ok) return money;
  const { price, currency } = money.value;
  const { hoursPerDay, balancing, limits, rankingLimit, detail, heat } = options;
  const assurance = statedAssurance(options.assurance, loop.calibration);
  if (!assurance.ok) return assurance;
  const beyond = detailProblem(detail, candidates.length);
  if (beyond !== null) return failed(beyond);
  const lifeCycle = statedLifeCycle(question, price);
  if (!lifeCycle.ok) return lifeCycle;
  const { elevation } = site.document;
  const running = { price, hoursPerDay, elevation, heat, lifeCycle: lifeCycle.value };
  const stated = { balancing, limits, assurance: assurance.value, detail };
  return success({ work: { ...stated, candidates, running, rankingLimit, system }, currency });
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

async function computeHereOrThere({
  heavyWork,
  loop,
  ready,
  work,
  places,
}: {
  readonly heavyWork: HeavyWork;
  readonly loop: VersionedLoop;
  readonly ready: ReadyLoop;
  readonly work: RecommendationWork;
  readonly places: SelectionPlaces;
}): Promise<Result<RecommendationFigures, Problem>> {
  const failedOn = { ...places, isInline: loop.id === null };
  if (work.detail === 'losses' || isLongSelection(ready.model, work.candidates)) {
    const done = await runHeavy(heavyWork, 'recommendation', { loop: ready.model.entered, work });
    if (!done.ok) return done;
    return done.value.ok ? done.value : failed(selectionProblem(done.value.failure, failedOn));
  }
  const balanced = ready.balanced(work.balancing);
  const figures = balanced.ok
    ? computeRecommendation({ model: ready.model, balanced: balanced.value }, work)
    : balanced;
  return figures.ok ? figures : failed(selectionProblem(figures.failure, failedOn));
}
