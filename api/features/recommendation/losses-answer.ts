/** Answers where the head of the best candidate is lost. */
import type { Choice, Question } from '../../../models/assurance/choose-assured.ts';
import { largerPipe } from '../../../models/components/larger-pipe.ts';
import { type LossRow, lossRows } from '../../../models/losses/loss-rows.ts';
import { lossSavings, type Saving, type Savings } from '../../../models/losses/loss-savings.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import { solving } from '../../../models/network/solve-failure.ts';
import { toPointer } from '../../http/json-pointer.ts';
import type { RecommendationAnswer } from './answer-schema.ts';

export type LossesAnswer = RecommendationAnswer['losses'];

/** `model` is the loop as entered, which the changes are made to. */
export function lossesAnswer(model: CompiledLoop, question: Question, choice: Choice): LossesAnswer {
  const [best] = choice.selection.ranking;
  if (best === undefined) return null;
  const { loop } = choice.balanced.sampled;
  if (!loop.system.passesWater) return null;
  // The flows of every branch, at the flow of the duty itself.
  const listed = solving(() =>
    lossRows(loop, loop.system.stateAt(best.duty.flow, best.duty.state ?? undefined)),
  );
  if (!listed.ok || listed.value === null) return null;
  const { hydraulicPower, rows } = listed.value;
  const savings = lossSavings({ model, question, choice, rows });
  return {
    hydraulicPower,
    rows: rows.map((row, place) => {
      const { path, share, kind, ...figures } = row;
      return {
        element: toPointer(path),
        kind: kind === 'tee-branch' ? 'tee-mouth' : kind,
        ...figures,
        powerShare: share,
        annualEnergy: share * best.annualEnergy,
        annualCost: best.annualCost === null ? null : share * best.annualCost,
        savings: savingsAnswer(row, savings.get(place)),
      };
    }),
  };
}

type SavingsAnswer = NonNullable<LossesAnswer>['rows'][number]['savings'];

function savingsAnswer({ name }: LossRow, savings: Savings | undefined): SavingsAnswer {
  if (savings === undefined) return null;
  const wider = name === null ? null : largerPipe(name);
  const { boreUp, halved, removed } = savings;
  return {
    boreUp: boreUp === null || wider === null ? null : { pipe: wider.name, ...savingAnswer(boreUp) },
    halved: halved === null ? null : savingAnswer(halved),
    removed: removed === null ? null : savingAnswer(removed),
  };
}

const savingAnswer = ({
  grid,
  continuous,
}: Saving): { grid: Saving['grid']; continuous: Saving['continuous'] } => ({
  grid,
  continuous,
});
