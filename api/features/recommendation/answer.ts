/** Answers a recommendation from its figures, with sentences in the units that are asked for. */

import { borrowedCalibration } from '../../../models/cautions/measured.ts';
import { meanPriceCautions } from '../../../models/cautions/time.ts';
import { annualUse } from '../../../models/duty/energy.ts';
import { drainBack } from '../../../models/hazards/drain-back.ts';
import { basisOf } from '../../fields/basis.ts';
import { pumpReference } from '../../question/candidates.ts';
import { tariffAnswer } from '../../question/tariff-answer.ts';
import { dataBasisOf } from '../../records/loop/data-basis.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import type { DutyAnswer } from '../duty-point/duty-answer.ts';
import type { RecommendationAnswer } from './answer-schema.ts';
import { assuranceAnswer } from './assurance-answer.ts';
import type { Baselines } from './baselines.ts';
import { candidateAt, type RecommendationFigures, type RecommendationWork } from './job.ts';
import type { RecommendationQuestion } from './question.ts';
import { rejectionAnswer } from './rejection-answer.ts';
import { recommendationSentence } from './sentence.ts';

/** All that an answer is made of, whatever its units. */
export interface ComputedRecommendation {
  readonly question: Omit<RecommendationQuestion, 'system' | 'places'>;
  readonly work: RecommendationWork;
  readonly currency: string;
  readonly figures: RecommendationFigures;
  readonly baselines: Baselines;
}

export interface Recommended {
  readonly body: RecommendationAnswer;
  /** All that the answer follows from besides the query: the basis it states, and the site. */
  readonly validator: { readonly basis: unknown };
}

export function recommendationAnswer(computed: ComputedRecommendation, system: UnitSystem): Recommended {
  const { question, figures, baselines, work } = computed;
  const { site, loop, tariff, options } = question;
  const { ranking, feasible, requiredDuty, worstCase, losses, withoutScreenLimit } = figures;
  const best = ranking[0] ?? null;
  const rejected = rejectedIn(computed, system);
  const assurance = work.assurance === null ? null : assuranceAnswer(best, baselines.unassured, worstCase);
  const basis = basisOf({ loop, pumps: question.candidates });
  return {
    body: {
      best: best && { ...best, closeTo: [...figures.close.closeTo] },
      ranking: [...ranking],
      rejected: [...rejected],
      counts: { candidates: work.candidates.length, feasible, rejected: rejected.length },
      requiredDuty,
      againstAsBuilt: againstAsBuilt(best, baselines.asBuilt),
      assurance,
      losses,
      withoutScreenLimit,
      drainBack: drainBack(loop.document),
      assumptions: assumptionsOf(computed),
      summary: recommendationSentence(best, {
        ...{ loopName: loop.document.name, currency: computed.currency, system, rejected, assurance },
        ...{ limits: work.limits, heat: work.running.heat, assured: options.assurance ?? null },
        ...{ candidates: work.candidates.length, cautions: figures.cautions, withoutScreenLimit },
        screen: loop.document.intake?.screen,
        lifeCycle: work.running.lifeCycle,
        ...{ gravity: figures.gravity, measure: figures.close.measure, close: closeNames(computed) },
      }),
      cautions: [...figures.cautions, ...otherCautions(question)],
      dataBasis: dataBasisOf(loop),
      basis,
    },
    validator: { basis: { ...basis, site: site.version, tariff } },
  };
}

const rejectedIn = ({ figures, work }: ComputedRecommendation, system: UnitSystem) =>
  figures.rejected.map((one) => {
    const candidate = candidateAt(work, one.candidate);
    const { count } = candidate;
    const standbyPower = count * candidate.entered.standbyPower;
    const useOf = (power: number) => annualUse({ ...work.running, power, standbyPower });
    return rejectionAnswer(one, { pump: pumpReference(candidate), count, system, useOf });
  });

/** Candidates that may as well be the best, by their pumps. */
const closeNames = ({ figures: { close }, work }: ComputedRecommendation) =>
  close.closeTo.map((place) => {
    const { count, entered: pump } = candidateAt(work, place);
    return { pump, count };
  });

function assumptionsOf({
  question: { options, tariff },
  work: { running, balancing, limits },
  currency,
}: ComputedRecommendation): RecommendationAnswer['assumptions'] {
  const { price, hoursPerDay, lifeCycle = null, heat = null } = running;
  return {
    ...{ price, currency, hoursPerDay, balancing, objective: options.objective ?? 'energy-cost', limits },
    lifeCycle,
    tariff: tariffAnswer(tariff),
    assurance: options.assurance ?? null,
    heat,
  };
}

/** Of what the figures rest on besides the loop: its calibration, the tariff. */
const otherCautions = ({ loop, candidates, tariff, options }: ComputedRecommendation['question']) => [
  ...borrowedCalibration(loop.calibration, candidates),
  ...meanPriceCautions({ tariff: tariff?.name ?? null, hoursPerDay: options.hoursPerDay }),
];

/** What trimming saves against the loop as built; null where one of the two is feasible at no setting. */
function againstAsBuilt(
  trimmed: DutyAnswer | null,
  asBuilt: DutyAnswer | null,
): RecommendationAnswer['againstAsBuilt'] {
  if (trimmed === null || asBuilt === null) return null;
  const { candidate, pump, count, setting, annualEnergy, annualCost } = asBuilt;
  return {
    ...{ candidate, pump, count, setting, annualEnergy, annualCost },
    energySaving: annualEnergy - trimmed.annualEnergy,
    costSaving: annualCost === null || trimmed.annualCost === null ? null : annualCost - trimmed.annualCost,
  };
}
