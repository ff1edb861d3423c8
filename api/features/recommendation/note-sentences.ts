/** Puts what else decides about a recommendation into a sentence each: screen, assurance, heat. */
import { PERCENT } from '../../../curves/percent.ts';
import type { HeatTerms } from '../../../models/duty/heat.ts';
import type { Limits } from '../../../models/loop/limits.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { sayMoney } from '../../wording/money.ts';
import { say, sayNumber } from '../../wording/numbers-in-words.ts';
import type { DutyAnswer } from '../duty-point/duty-answer.ts';
import { pumpWords } from '../duty-point/pump-words.ts';
import type { RecommendationAnswer } from './answer-schema.ts';
import type { AskedAssurance } from './assurance-request.ts';
import type { CloseAnswer } from './job.ts';

export interface Notes {
  readonly currency: string;
  readonly system: UnitSystem;
  readonly limits: Limits;
  /** What was asked for; null: nothing. */
  readonly assured: AskedAssurance | null;
  /** What it costs. */
  readonly assurance: RecommendationAnswer['assurance'];
  readonly heat: HeatTerms | undefined;
  /** Candidates that may as well be the best. */
  readonly close: readonly NamedPumps[];
  /** Whose power decides among them. */
  readonly measure: CloseAnswer['measure'];
}

type NamedPumps = Parameters<typeof pumpWords>[0];

export const noteSentences = (best: DutyAnswer, notes: Notes): string =>
  `${closeWords(notes)}${unevenWords(best, notes)}${assuranceWords(best, notes)}${heatWords(best, notes)}`;

/** Named at most; more are counted. */
const NAMED_MOST = 3;

function closeWords({ close, measure }: Notes): string {
  if (measure === null) return '';
  const more = close.length > NAMED_MOST ? ` and ${close.length - NAMED_MOST} more` : '';
  const others = `${close.slice(0, NAMED_MOST).map(pumpWords).join(', ')}${more}`;
  return ` It is too close to call against ${others} by the entered power points. Measure the power of ${pumpWords(measure)} at ${sayNumber(measure.setting)} %.`;
}

function unevenWords({ cautions, screen }: DutyAnswer, { limits, system }: Notes): string {
  const { throughSlotVelocity: limit } = limits;
  const isUneven = cautions.some(({ code }) => code === 'screen-uneven');
  if (!isUneven || screen === null || limit === null) return '';
  return ` The busiest slots of the intake screen draw ${say(screen.peakVelocity, 'velocity', system)}, above the limit of ${say(limit, 'velocity', system)} that its mean keeps to.`;
}

function assuredAgainst(assured: AskedAssurance): string {
  if (assured === 'calibration') return 'friction and head in the worst case that the readings leave open';
  if ('grade' in assured) return `pumps at the low end of grade ${assured.grade}`;
  if ('margin' in assured) return `flows ${sayNumber(PERCENT * assured.margin)} % above those required`;
  return `friction ${sayNumber(assured.frictionMultiplier)} times as entered`;
}

function assuranceWords(best: DutyAnswer, { assured, assurance, currency }: Notes): string {
  if (assured === null || assurance === null) return '';
  const held = ` It is still feasible with ${assuredAgainst(assured)}`;
  const { without, extraCost, extraEnergy } = assurance;
  if (without === null || extraEnergy === null) return `${held}.`;
  const other = without.candidate === best.candidate ? '' : `${pumpWords(without)} at `;
  const costs =
    extraCost === null
      ? `${say(extraEnergy, 'energy', 'metric')} per year`
      : `${sayMoney(extraCost, currency)} per year`;
  const instead = `without that assurance ${other}${sayNumber(without.setting)} % is enough`;
  return `${held}; ${instead}, and it costs ${costs}.`;
}

/** Where no candidate serves under the assurance, whether one does without it. */
export function unassuredWords({ assured, assurance }: Pick<Notes, 'assured' | 'assurance'>): string {
  const without = assurance?.without ?? null;
  if (assured === null || without === null) return '';
  return ` This is with ${assuredAgainst(assured)}; without that assurance ${pumpWords(without)} at ${sayNumber(without.setting)} % is enough.`;
}

function heatWords({ heat }: DutyAnswer, { heat: terms, currency }: Notes): string {
  if (terms?.inRanking !== true || heat.annualEnergy === null) return '';
  const sum =
    heat.annualCost === null
      ? say(Math.abs(heat.annualEnergy), 'energy', 'metric')
      : sayMoney(Math.abs(heat.annualCost), currency);
  const what =
    terms.mode === 'cooling' ? `what the chiller costs for its heat` : `what its heat spares the heater`;
  return ` The ranking also counts ${what}: ${sum} per year.`;
}
