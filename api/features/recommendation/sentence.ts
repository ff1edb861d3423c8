/** Puts a recommendation into one or two plain sentences, and one for each thing that decides besides. */
import type { Caution } from '../../../models/cautions/catalogue.ts';
import type { IntakeScreen } from '../../../models/loop/loop.ts';
import type { LifeCycleTerms } from '../../../models/money/candidate-life-cycle.ts';
import type { Gravity } from '../../../models/selection/gravity.ts';
import { afterDangers } from '../../wording/dangers.ts';
import { sayMoney } from '../../wording/money.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';
import { quoted } from '../../wording/quoted.ts';
import type { DutyAnswer } from '../duty-point/duty-answer.ts';
import { pumpWords } from '../duty-point/pump-words.ts';
import { gravityWords, limitingWords, type SentenceTerms, useWords } from '../duty-point/sentence.ts';
import type { RecommendationAnswer } from './answer-schema.ts';
import { type Notes, noteSentences, unassuredWords } from './note-sentences.ts';
import { screenLimitWords } from './without-screen-limit-answer.ts';

interface Facts extends SentenceTerms, Notes {
  readonly rejected: readonly { readonly pump: { readonly name: string }; readonly detail: string }[];
  /** Those of the loop, whatever the pump. */
  readonly cautions: readonly Caution[];
  readonly withoutScreenLimit: RecommendationAnswer['withoutScreenLimit'];
  /** Of the loop. */
  readonly screen: IntakeScreen | undefined;
  /** Undefined where the ranking is by energy. */
  readonly lifeCycle: LifeCycleTerms | undefined;
  /** What runs without a pump; null where that does not serve every outlet. */
  readonly gravity: Gravity | null;
}

export function recommendationSentence(best: DutyAnswer | null, facts: Facts): string {
  const choice = best === null ? withoutChoice(facts) : choiceWords(best, facts);
  const screenLimit = screenLimitWords(facts.withoutScreenLimit, facts);
  return `${gravityWords(facts.gravity, facts.system)}${choice}${screenLimit}${lifeCycleWords(best, facts)}`;
}

/** Dangers first, then pump, setting, watts, kWh, cost, limiting outlet and what else decided. */
function choiceWords(best: DutyAnswer, facts: Facts): string {
  const { loopName, currency, system, cautions } = facts;
  const where = `at ${sayNumber(best.setting)} % on loop ${quoted(loopName)}`;
  const run = `Run ${pumpWords(best)} ${where}: ${useWords(best, currency)}.`;
  const dangers = afterDangers([...best.cautions, ...cautions], run);
  return `${dangers}${limitingWords(best, system)}${noteSentences(best, facts)}`;
}

/** Why there is none. */
function withoutChoice(facts: Facts): string {
  const { loopName, rejected } = facts;
  const [first] = rejected;
  if (first === undefined) return `There is no pump to judge for loop ${quoted(loopName)}: enter one first.`;
  const none = `No candidate is feasible on loop ${quoted(loopName)}.`;
  return `${none} Pump ${quoted(first.pump.name)}: ${lowerFirst(first.detail)}${unassuredWords(facts)}`;
}

/** A sentence that goes on after a colon; one that begins with an abbreviation stays as it is. */
const lowerFirst = (text: string): string =>
  /^[A-Z]{2}/.test(text) ? text : `${text.charAt(0).toLowerCase()}${text.slice(1)}`;

/** The life-cycle cost of the best; empty where the ranking is by energy. */
function lifeCycleWords(
  best: DutyAnswer | null,
  { lifeCycle, currency }: Pick<Facts, 'lifeCycle' | 'currency'>,
): string {
  const cost = best?.lifeCycleCost ?? null;
  if (lifeCycle === undefined || cost === null) return '';
  return ` Newly bought it costs ${sayMoney(cost, currency)} over ${lifeCycle.years} years, the least of all feasible candidates.`;
}
