/** Answers told in one or two plain sentences. */
import type { Caution } from '../../models/cautions/catalogue.ts';
import type { UnitSystem } from '../units/unit-system.ts';
import { afterDangers, dangerWords } from './danger-words.ts';
import type { DutyAnswer } from './duty-answer.ts';
import { pumpWords } from './pump-words.ts';
import { say, sayNumber } from './say.ts';
import { type Notes, summaryNotes, unassuredWords } from './summary-notes.ts';

interface Telling {
  readonly loopName: string;
  readonly currency: string;
  readonly system: UnitSystem;
}

function limitingWords({ outlets, limitingOutlet }: DutyAnswer, system: UnitSystem): string {
  const limiting = outlets.find(({ name }) => name === limitingOutlet);
  if (limiting === undefined || limiting.requiredFlow === null) return '';
  return ` ${limiting.name} limits: ${say(limiting.flow, 'flow', system)} of the ${say(limiting.requiredFlow, 'flow', system)} it needs.`;
}

function useWords({ power, annualEnergy, annualCost }: DutyAnswer, currency: string): string {
  const cost = annualCost === null ? 'no price is set' : `${sayNumber(annualCost)} ${currency} a year`;
  return `${say(power, 'power', 'metric')}, ${say(annualEnergy, 'energy', 'metric')} a year, ${cost}`;
}

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

export function dutyPointSummary(duty: DutyAnswer, { loopName, currency, system }: Telling): string {
  const pump = `${pumpWords(duty)} at setting ${sayNumber(duty.setting)} %`;
  const dangers = dangerWords(duty.cautions);
  if (duty.flow === 0) {
    return `${dangers}${pump} moves no water on ${loopName} and draws ${useWords(duty, currency)}.`;
  }
  const lands = `moves ${say(duty.flow, 'flow', system)} at ${say(duty.head, 'head', system)} on ${loopName}`;
  return `${dangers}${pump} ${lands}: ${useWords(duty, currency)}.${limitingWords(duty, system)}`;
}
