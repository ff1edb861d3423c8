/** Puts a duty point into sentences. */

import type { Gravity } from '../../../models/selection/gravity.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { sayAgainst, saySignedPercent } from '../../wording/against-limit.ts';
import { dangerWords } from '../../wording/dangers.ts';
import { sayMoney } from '../../wording/money.ts';
import { say, sayNumber } from '../../wording/numbers-in-words.ts';
import { quoted } from '../../wording/quoted.ts';
import type { DutyAnswer } from './duty-answer.ts';
import { pumpWords } from './pump-words.ts';

/** Of the figures in a sentence. */
const DIGITS = 3;

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
  const pump = `${upperFirst(pumpWords(duty))} at ${sayNumber(duty.setting)} %`;
  const dangers = dangerWords(duty.cautions);
  const loop = `loop ${quoted(loopName)}`;
  if (duty.flow === 0) return `${dangers}${pump} moves no water on ${loop}: ${useWords(duty, currency)}.`;
  const [flow, head] = [say(duty.flow, 'flow', system, DIGITS), say(duty.head, 'head', system, DIGITS)];
  return `${dangers}${pump} on ${loop} delivers ${flow} at ${head}: ${useWords(duty, currency)}.${limitingWords(duty, system)}`;
}

const upperFirst = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** The outlet of the smallest margin, with a blank before it; empty where none requires a flow. */
export function limitingWords({ outlets, limitingOutlet }: DutyAnswer, system: UnitSystem): string {
  const limiting = outlets.find(({ name }) => name === limitingOutlet);
  if (limiting === undefined || limiting.requiredFlow === null || limiting.margin === null) return '';
  const { flow: value, requiredFlow: stated, margin } = limiting;
  const said = sayAgainst({ value, stated }, 'flow', system);
  const what = margin < 0 ? 'is below required' : 'has the smallest margin';
  return ` Outlet ${quoted(limiting.name)} ${what}: ${said.value}, required ${said.stated} (${saySignedPercent(margin)}).`;
}

export function useWords({ power, annualEnergy, annualCost }: DutyAnswer, currency: string): string {
  const watts = say(power, 'power', 'metric', DIGITS);
  const energy = say(annualEnergy, 'energy', 'metric', DIGITS);
  return annualCost === null
    ? `${watts} and ${energy} per year, without a price`
    : `${watts}, ${energy} and ${sayMoney(annualCost, currency)} per year`;
}

export interface SentenceTerms {
  readonly loopName: string;
  readonly currency: string;
  readonly system: UnitSystem;
}
