/** Answers what an assurance costs a year. */
import type { ExactDuty } from '../../../models/duty/duty-point.ts';
import { outletFigures } from '../../../models/network/margins.ts';
import type { System } from '../../../models/network/system.ts';
import type { DutyAnswer } from '../duty-point/duty-answer.ts';
import type { RecommendationAnswer } from './answer-schema.ts';

type AssuranceAnswer = NonNullable<RecommendationAnswer['assurance']>;
export type WorstCaseAnswer = AssuranceAnswer['badEnd'];

export function worstCaseAnswer(
  { outlets }: System,
  { flow, head, power, outletFlows }: ExactDuty,
): WorstCaseAnswer {
  const figures = outletFigures(outlets, outletFlows);
  return {
    ...{ flow, head, power },
    outlets: figures.map(({ name, flow: gets, requiredFlow }) => ({ name, flow: gets, requiredFlow })),
  };
}

/** The best with the assurance against the best without. */
export function assuranceAnswer(
  best: DutyAnswer | null,
  without: DutyAnswer | null,
  worstCase: WorstCaseAnswer,
): AssuranceAnswer {
  const extra = (sum: number | null, before: number | null) =>
    sum === null || before === null ? null : sum - before;
  return {
    without: without === null ? null : withoutFigures(without),
    extraEnergy: extra(best?.annualEnergy ?? null, without?.annualEnergy ?? null),
    extraCost: extra(best?.annualCost ?? null, without?.annualCost ?? null),
    badEnd: worstCase,
  };
}

function withoutFigures(duty: DutyAnswer): AssuranceAnswer['without'] {
  const { candidate, pump, count, setting, annualEnergy, annualCost } = duty;
  return { candidate, pump, count, setting, annualEnergy, annualCost };
}
