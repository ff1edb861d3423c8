/** Gives the cautions about what readings say of the condition of a loop. */
import { MEASURED } from './measured.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';
import { UPKEEP } from './upkeep.ts';

export const CONDITION = topic({
  'condition-steady': {
    severity: 'note',
    sentence:
      'The difference was there from the first reading on and does not grow: entries or meters may be at fault rather than the loop. Check them, and calibrate.',
    source: 'trend of the residuals',
  },
  'condition-static-head': {
    severity: 'note',
    sentence:
      'The loop lifts water: the cost of waiting is not given, since with static head a higher speed does not restore the flow by the power law.',
    source: 'affinity laws',
  },
  'condition-place-open': {
    severity: 'note',
    sentence:
      'Without pressures just before and behind the pump, read beside a flow, a clog on either side and a worn pump look alike.',
    source: COMMON_PRACTICE,
  },
  'condition-openings': {
    severity: 'warning',
    sentence:
      'Some phases of the schedule close or throttle outlets: readings of such hours are judged as if every valve had the opening that the loop states.',
    source: 'schedule as entered',
  },
  'condition-few-readings': {
    severity: 'note',
    sentence: 'The verdict rests on fewer than thirty readings, or on less than a month of them.',
    source: COMMON_PRACTICE,
  },
  'condition-former-outlets': {
    severity: 'note',
    sentence:
      'Readings name outlets that the loop does not have now, as after a change of name: their flows are not judged.',
    source: 'loop as entered',
  },
  'condition-sampled': {
    severity: 'note',
    sentence:
      'There are more readings than are judged one by one: the first of every stretch of time stands for the others.',
    source: 'limits of the service',
  },
  'condition-straight-line': {
    severity: 'note',
    sentence:
      'The date goes on as the readings did, in a straight line: growth on a screen can be faster in warm months, and readings close in time are less sure than the interval says.',
    source: 'Sen (1968), Theil-Sen trend; common practice',
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
  /** The difference was there from the first reading on and does not grow. */
  readonly isSteady: boolean;
  /** Where the resistance has grown is not known. */
  readonly isPlaceOpen: boolean;
  readonly hasStaticHead: boolean;
  readonly lacksGauges: boolean;
  /** Some phases of the schedule shut or throttle outlets. */
  readonly throttles: boolean;
  /** Names of outlets that readings have and the loop does not. */
  readonly formerOutlets: readonly string[];
  /** Not all readings were judged one by one. */
  readonly isSampled: boolean;
  /** A date was found by continuing the trend. */
  readonly hasDate: boolean;
  /** Something is to be done at pump or pipes. */
  readonly asksForService: boolean;
}

/** Judges a condition; cautions about the loop itself are not among them. */
export function conditionCautions(
  facts: ConditionFacts,
): readonly CautionOf<typeof CONDITION | typeof MEASURED | typeof UPKEEP>[] {
  const { used, days, formerOutlets } = facts;
  return [
    ...CONDITION.when(used < FEW.readings || days < FEW.days, 'condition-few-readings'),
    ...CONDITION.when(facts.isSteady, 'condition-steady'),
    ...CONDITION.when(facts.isPlaceOpen, 'condition-place-open'),
    ...CONDITION.when(facts.hasStaticHead, 'condition-static-head'),
    ...MEASURED.when(facts.lacksGauges, 'gauges-unlike'),
    ...CONDITION.when(facts.throttles, 'condition-openings'),
    ...CONDITION.about('condition-former-outlets', formerOutlets),
    ...CONDITION.when(facts.isSampled, 'condition-sampled'),
    ...CONDITION.when(facts.hasDate, 'condition-straight-line'),
    ...UPKEEP.when(facts.asksForService, 'isolate-before-service'),
  ];
}
