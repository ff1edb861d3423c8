/** Puts a duty point into sentences. */

import type { Gravity } from '../../../models/selection/gravity.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { dangerWords } from '../../wording/dangers.ts';
import { say, sayNumber } from '../../wording/numbers-in-words.ts';
import type { DutyAnswer } from './duty-answer.ts';
import { pumpWords } from './pump-words.ts';

export function dutyPointSentence(
  duty: DutyAnswer,
  { loopName, currency, system, gravity }: SentenceTerms & { readonly gravity: Gravity | null },
): string {
  return `${gravityWords(gravity, system)}${dutyWords(duty, { loopName, currency, system })}`;
}

/** That no pump is needed; empty where one is. */
export const gravityWords = (gravity: Gravity | null, system: UnitSystem): string =>
  gravity === null
    ? ''
    : `No pump is needed: ${say(gravity.flow, 'flow', system)} runs by gravity alone, ${say(gravity.required, 'flow', system)} is required. `;

function dutyWords(duty: DutyAnswer, { loopName, currency, system }: SentenceTerms): string {
  const pump = `${pumpWords(duty)} at setting ${sayNumber(duty.setting)} %`;
  const dangers = dangerWords(duty.cautions);
  if (duty.flow === 0) {
    return `${dangers}${pump} moves no water on ${loopName} and draws ${useWords(duty, currency)}.`;
  }
  const lands = `moves ${say(duty.flow, 'flow', system)} at ${say(duty.head, 'head', system)} on ${loopName}`;
  return `${dangers}${pump} ${lands}: ${useWords(duty, currency)}.${limitingWords(duty, system)}`;
}

export function limitingWords({ outlets, limitingOutlet }: DutyAnswer, system: UnitSystem): string {
  const limiting = outlets.find(({ name }) => name === limitingOutlet);
  if (limiting === undefined || limiting.requiredFlow === null) return '';
  return ` ${limiting.name} limits: ${say(limiting.flow, 'flow', system)} of the ${say(limiting.requiredFlow, 'flow', system)} it needs.`;
}

export function useWords({ power, annualEnergy, annualCost }: DutyAnswer, currency: string): string {
  const cost = annualCost === null ? 'no price is set' : `${sayNumber(annualCost)} ${currency} a year`;
  return `${say(power, 'power', 'metric')}, ${say(annualEnergy, 'energy', 'metric')} a year, ${cost}`;
}

export interface SentenceTerms {
  readonly loopName: string;
  readonly currency: string;
  readonly system: UnitSystem;
}
