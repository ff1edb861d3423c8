/** Gives the cautions about what readings say of the condition of a loop. */
import { MEASURED } from './measured.ts';
import { TIME } from './time.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';
import { UPKEEP } from './upkeep.ts';

export const CONDITION = topic({
  'condition-steady': {
    severity: 'note',
    text: 'Readings have differed from the entries since the baseline began: that is no change. The entries, the meters, or a fault older than the readings explain it. Clean first, then calibrate.',
    source: 'baseline against the model',
  },
  'condition-place-open': {
    severity: 'note',
    text: 'Without pressures before and behind the pump a clog on either side and a worn pump look nearly alike.',
    source: COMMON_PRACTICE,
  },
  'condition-openings': {
    severity: 'warning',
    text: 'Some phases of the schedule close or throttle outlets. Readings of such hours are judged as if every valve had the opening that the loop states.',
    source: 'schedule as entered',
  },
  'condition-few-readings': {
    severity: 'note',
    text: 'The verdict rests on fewer than thirty readings, or on less than a month of them.',
    source: COMMON_PRACTICE,
  },
  'condition-former-outlets': {
    severity: 'note',
    text: 'Readings name outlets that the loop does not have now, as after a change of name. Their flows are not judged.',
    source: 'loop as entered',
  },
  'condition-sampled': {
    severity: 'note',
    text: 'There are more readings than are judged one by one: the first of every stretch of time was taken.',
    source: 'limits of the service',
  },
  'condition-straight-line': {
    severity: 'note',
    text: 'The forecast holds only if the change goes on as it has: growth on a screen can be faster in warm months.',
    source: 'profile likelihood of onset and course; common practice',
  },
});

/** Fewer readings, or days from the first to the last, leave a verdict unsure. */
const FEW = { readings: 30, days: 30 } as const;

/** What of a condition, its readings and its loop decides the cautions. */
export interface ConditionFacts {
  /** Readings that were judged [-]. */
  readonly used: number;
  /** From the first reading to the last [days]. */
  readonly days: number;
  /** The baseline differs from the entries. */
  readonly isSteady: boolean;
  /** Where the resistance has grown is not known. */
  readonly isPlaceOpen: boolean;
  /** The latest reading is of a stopped pump. */
  readonly isStopped: boolean;
  readonly lacksGauges: boolean;
  /** Some phases of the schedule close or throttle outlets. */
  readonly throttles: boolean;
  /** Names of outlets that readings have and the loop does not. */
  readonly formerOutlets: readonly string[];
  /** Not all readings were judged one by one. */
  readonly isSampled: boolean;
  /** A shortfall is forecast. */
  readonly hasDate: boolean;
  /** Something is to be done at pump or pipes. */
  readonly asksForService: boolean;
}

/** Judges a condition; cautions about the loop itself are not among them. */
export function conditionCautions(
  facts: ConditionFacts,
): readonly CautionOf<typeof CONDITION | typeof MEASURED | typeof TIME | typeof UPKEEP>[] {
  const { used, days, formerOutlets } = facts;
  return [
    ...TIME.when(facts.isStopped, 'pump-stopped'),
    ...CONDITION.when(used < FEW.readings || days < FEW.days, 'condition-few-readings'),
    ...CONDITION.when(facts.isSteady, 'condition-steady'),
    ...CONDITION.when(facts.isPlaceOpen, 'condition-place-open'),
    ...MEASURED.when(facts.lacksGauges, 'gauge-bores-differ'),
    ...CONDITION.when(facts.throttles, 'condition-openings'),
    ...CONDITION.about('condition-former-outlets', formerOutlets),
    ...CONDITION.when(facts.isSampled, 'condition-sampled'),
    ...CONDITION.when(facts.hasDate, 'condition-straight-line'),
    ...UPKEEP.when(facts.asksForService, 'isolate-before-service'),
  ];
}
