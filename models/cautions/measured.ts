/** Gives the cautions about figures that rest on what was measured. */
import { type AppliedCalibration, isAbout } from '../calibration/applied.ts';
import type { LoopCalibration } from '../calibration/calibrate-loop.ts';
import type { SettledParameter } from '../calibration/helpful-readings.ts';
import type { PumpFit } from '../pump/pump-model.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const MEASURED = topic({
  'meter-bias': {
    severity: 'note',
    text: 'Intervals take in the scatter of the readings and the accuracy of the meters, 2 % where none is stated: a meter that is farther off moves the factors by more than they show.',
    source: COMMON_PRACTICE,
  },
  'readings-do-not-fit': {
    severity: 'warning',
    text: 'Some readings do not fit the factors and count for nothing: see `misfits`. Check their units, the speed map of the pump, and the branch of the outlet.',
    source: "Tukey's biweight; Huber (1981), Robust Statistics",
  },
  'factor-suspect': {
    severity: 'warning',
    text: 'Wear never raises the head, and no fault of a pump changes its power so far. Check the units of the meters, the speed map and the points of the pump before you apply this.',
    source: COMMON_PRACTICE,
  },
  'readings-scatter': {
    severity: 'warning',
    text: 'The readings scatter by over 8 % about the factors, which are not applied then. Correct or delete what is wrong, and calibrate again.',
    source: COMMON_PRACTICE,
  },
  'gauge-bores-differ': {
    severity: 'warning',
    text: 'The pipes before and behind the pump have unlike bores. Gauges in them miss the change of velocity head. State `gauges` of the loop, or the head itself.',
    source: 'ISO 9906, total head of a pump',
  },
  'calibration-outdated': {
    severity: 'warning',
    text: 'The points of the pump have changed since the loop was calibrated with it. Its factors of head and power are no longer used, and its friction factor may be wrong. Calibrate again, or undo the calibration.',
    source: 'factors multiply the curves that they were found with',
  },
  'calibration-of-another-pump': {
    severity: 'warning',
    text: 'The loop was calibrated by friction over the head of its own pump. For another pump the friction can be wrong by about a tenth, which no assurance includes. Read a head at a closed valve, calibrate again, then compare.',
    source: 'flows on a loop without static head scale with both alike',
  },
  'readings-drift': {
    severity: 'warning',
    text: 'The readings change over time by more than their noise. The factors are those of the middle of that time, not of its end. Clean and repair first, then calibrate with `from` that day.',
    source: 'straight line through the readings of each setting',
  },
  'fault-as-baseline': {
    severity: 'warning',
    text: 'Clogging and wear look like these factors. Apply them only if the loop was clean.',
    source: COMMON_PRACTICE,
  },
  'ratio-as-friction': {
    severity: 'note',
    text: 'The readings determine only friction over head, which is taken as friction with the head as entered. Flows of this pump are right either way. Those of another pump, and the shares of outlets, are right only if the pipework changed.',
    source: 'flows on a loop without static head scale with both alike',
  },
  'speed-map-suspect': {
    severity: 'warning',
    text: 'Gauge readings show other speeds than the pump has entered. Enter the `speedMap` of the answer for the pump, and calibrate again.',
    source: 'affinity laws: the head of one system goes with the square of the speed',
  },
  'closed-valve-briefly': {
    severity: 'warning',
    text: 'A head at flow 0 is read against a valve closed for a few seconds, no longer. The pump heats the water in it, and the animals receive none meanwhile.',
    source: COMMON_PRACTICE,
  },
  'readings-thinned': {
    severity: 'note',
    text: 'Not all readings of so many settings of so large a loop are used. Those of closed outlets come first, then those with a head, then the settings that were read most often.',
    source: 'limit of the computation',
  },
  'few-readings': {
    severity: 'note',
    text: 'So few readings leave the scatter much as assumed: 1 % for a power, 2 % for a flow or a head.',
    source: COMMON_PRACTICE,
  },
});

type MeasuredCaution = CautionOf<typeof MEASURED>;

const FEW_READINGS = 10;
/** More friction, or less head, than entries are commonly off by: as clogging and wear show. */
const LIKE_FAULT = { friction: 1.1, head: 0.95 } as const;

/** More head than pumps exceed their curves by, more or less power than wear and fouling explain. */
const SUSPECT = { head: 1.1, power: { low: 0.75, high: 1.3 } } as const;

const isSuspect = ({ name, value }: SettledParameter): boolean =>
  (name === 'head' && value > SUSPECT.head) ||
  (name === 'power' && (value < SUSPECT.power.low || value > SUSPECT.power.high));

/** With the whole of its interval. */
const isLikeFault = ({ name, interval }: SettledParameter): boolean =>
  name === 'head' ? interval.high < LIKE_FAULT.head : name !== 'power' && interval.low > LIKE_FAULT.friction;

/** A calibration, and how many readings it rests on [-]. */
export type CalibratedFacts = LoopCalibration & { readonly used: number };

/** Judges the factors that readings gave, and the readings. */
export function calibrationCautions({
  parameters,
  speeds,
  used,
  isThinned,
  nextReadings,
  drift,
  misfits,
  lacksGauges,
  refusal,
}: CalibratedFacts): readonly MeasuredCaution[] {
  const isRatio = parameters.some(({ name }) => name === 'frictionOverHead');
  return [
    ...MEASURED.when(speeds?.differs === true, 'speed-map-suspect'),
    ...MEASURED.when(
      nextReadings.some(({ zeroFlow }) => zeroFlow),
      'closed-valve-briefly',
    ),
    ...MEASURED.when(misfits.length > 0, 'readings-do-not-fit'),
    ...MEASURED.when(parameters.some(isSuspect), 'factor-suspect'),
    ...MEASURED.when(drift !== null, 'readings-drift'),
    ...MEASURED.when(parameters.some(isLikeFault), 'fault-as-baseline'),
    ...MEASURED.when(isRatio, 'ratio-as-friction'),
    ...MEASURED.when(refusal?.code === 'readings-scatter', 'readings-scatter'),
    ...MEASURED.when(lacksGauges, 'gauge-bores-differ'),
    ...MEASURED.when(isThinned, 'readings-thinned'),
    ...MEASURED.when(used < FEW_READINGS, 'few-readings'),
    MEASURED.give('meter-bias'),
  ];
}

/**
 * Judges a calibration that is used for pumps, which may be others than the one it was made with.
 *
 * `pumps` as they are entered; those without an id are never those of a calibration.
 */
export function borrowedCalibration(
  calibration: AppliedCalibration | null | undefined,
  pumps: readonly { readonly id: string | null; readonly fit: PumpFit }[],
): readonly MeasuredCaution[] {
  if (calibration === null || calibration === undefined) return [];
  const isAged = pumps.some((pump) => pump.id === calibration.pump.id && !isAbout(calibration, pump));
  const isRatio = calibration.parameters.some(({ name }) => name === 'frictionOverHead');
  const isOthers = isRatio && pumps.some(({ id }) => id !== calibration.pump.id);
  return [
    ...MEASURED.when(isAged, 'calibration-outdated'),
    ...MEASURED.when(isOthers, 'calibration-of-another-pump'),
  ];
}
