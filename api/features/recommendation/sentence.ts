/** Answers told in one or two plain sentences. */
import type { Caution } from '../../../models/cautions/catalogue.ts';
import { limitingWords, type Telling, useWords } from '../../answers/duty-words.ts';
import { afterDangers } from '../../wording/dangers.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';
import type { DutyAnswer } from '../duty-point/duty-answer.ts';
import { pumpWords } from '../duty-point/pump-words.ts';
import { type Notes, summaryNotes, unassuredWords } from './sentence-notes.ts';

/** Dangers first, then pump, setting, watts, kWh, cost, limiting outlet and what else decided; or why there is none. */
export function recommendationSummary(
  best: DutyAnswer | null,
  {
    rejected,
    candidates,
    cautions,
    ...telling
  }: Telling &
    Notes & {
      readonly candidates: number;
      readonly rejected: readonly { readonly pump: { readonly name: string }; readonly detail: string }[];
      /** Those of the loop, whatever the pump. */
      readonly cautions: readonly Caution[];
    },
): string {
  const { loopName, currency, system } = telling;
  if (best !== null) {
    const setting = `setting ${sayNumber(best.setting)} %`;
    const run = `Run ${pumpWords(best)} at ${setting} on ${loopName}: ${useWords(best, currency)}.`;
    const dangers = afterDangers([...best.cautions, ...cautions], run);
    return `${dangers}${limitingWords(best, system)}${summaryNotes(best, telling)}`;
  }
  const [first] = rejected;
  if (first === undefined) return `There is no pump to judge for ${loopName}: enter one first.`;
  const none =
    candidates === 1 ? 'The candidate does not serve' : `None of the ${candidates} candidates serves`;
  return `${none} ${loopName} at any setting. ${first.pump.name}: ${first.detail}${unassuredWords(telling)}`;
}
