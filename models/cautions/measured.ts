/** Gives the cautions about figures that rest on what was measured. */
import { type AppliedCalibration, isAbout } from '../calibration/applied.ts';
import type { Calibration } from '../calibration/calibrate.ts';
import type { SettledParameter } from '../calibration/next-readings.ts';
import type { PumpFit } from '../pump/pump-model.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const MEASURED = topic({
  'meter-bias': {
    severity: 'note',
    sentence:
      'Errors and intervals follow from the scatter of the readings: a meter that reads high or low throughout moves the factors by as much, and no interval shows it.',
    source: COMMON_PRACTICE,
  },
  'readings-misfit': {
    severity: 'warning',
    sentence:
      'Some readings do not fit together with the others whatever the factors: see `misfits`. A setting that is off is a matter of the speed map, an outlet of its branch, a head of the gauge; the intervals are widened by it.',
    source: 'lack of fit against the scatter of repeats',
  },
  'factor-suspect': {
    severity: 'warning',
    sentence:
      'Wear never lifts more head, and no fault of a pump changes its power so far: look at the units of the meters (a gauge in psi, watts that are volt-amperes), at the speed map and at the points of the pump before this is applied.',
    source: COMMON_PRACTICE,
  },
  'readings-scatter': {
    severity: 'warning',
    sentence:
      'Readings of one setting scatter by over 12 % (flow) or 8 % (head, power): a wild one among them, or one in another unit, pulls the factors. Look through them, delete what is wrong, and calibrate again.',
    source: COMMON_PRACTICE,
  },
  'gauges-unlike': {
    severity: 'warning',
    sentence:
      'The pipes before and behind the pump are of unlike bores, so gauges in them miss part of the head, by the rise of the velocity heads: state `gauges` of the loop, or the head itself.',
    source: 'ISO 9906, total head of a pump',
  },
  'calibration-aged': {
    severity: 'warning',
    sentence:
      'The points of the pump have changed since the loop was calibrated with it: its factors of head and power are no longer used, and the friction that was found with the points before may be off. Calibrate again, or undo the calibration.',
    source: 'factors multiply the curves that they were found with',
  },
  'calibration-of-another-pump': {
    severity: 'warning',
    sentence:
      'The loop was calibrated by friction over the head of its own pump: for another pump friction may be off by as much as the head of that one is, about a tenth, which no assurance takes in. Read a head at a closed valve, calibrate again, then compare.',
    source: 'flows on a loop without static head scale with both alike',
  },
  'readings-drift': {
    severity: 'warning',
    sentence:
      'The readings change in their course, by more than their noise: the factors are those of the middle of that time, not of its end. Clean and repair first, then calibrate `from` that day on.',
    source: 'straight line through the readings of each setting',
  },
  'fault-as-reference': {
    severity: 'warning',
    sentence:
      'More friction or less head than entered is also what clogging and wear look like: once applied it is what condition measures by, and is no longer reported as a fault. Apply it for a loop that was clean and sound when it was read.',
    source: COMMON_PRACTICE,
  },
  'ratio-as-friction': {
    severity: 'note',
    sentence:
      'The readings determine friction over head alone, which is taken as friction with the head of the pump as entered: flows of this pump are right either way, those of another pump and the shares of the outlets only if it is the pipework that changed.',
    source: 'flows on a loop without static head scale with both alike',
  },
  'speed-map-suspect': {
    severity: 'warning',
    sentence:
      'Gauge readings show other speeds than the pump has entered: put the `speedMap` of the answer into the pump, and calibrate again.',
    source: 'affinity laws: the head of one system goes with the square of the speed',
  },
  'shut-valve-briefly': {
    severity: 'warning',
    sentence:
      'A head at no flow is read against a valve closed for some seconds and no longer: the pump heats the water that it holds, and the animals get none meanwhile.',
    source: COMMON_PRACTICE,
  },
  'readings-thinned': {
    severity: 'note',
    sentence:
      'Readings of so many settings of so large a loop are not all computed: those of closed outlets, then those with a head, then the settings that were read most often were taken.',
    source: 'limit of the computation',
  },
  'few-readings': {
    severity: 'note',
    sentence:
      'So few readings leave the noise of the meters much as assumed: 3 % for a flow, 2 % for a head or a power.',
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
  isScattered,
}: Calibration): readonly MeasuredCaution[] {
  const isRatio = parameters.some(({ name }) => name === 'frictionOverHead');
  return [
    ...MEASURED.when(speeds?.differs === true, 'speed-map-suspect'),
    ...MEASURED.when(
      nextReadings.some(({ zeroFlow }) => zeroFlow),
      'shut-valve-briefly',
    ),
    ...MEASURED.when(misfits.length > 0, 'readings-misfit'),
    ...MEASURED.when(parameters.some(isSuspect), 'factor-suspect'),
    ...MEASURED.when(drift !== null, 'readings-drift'),
    ...MEASURED.when(parameters.some(isLikeFault), 'fault-as-reference'),
    ...MEASURED.when(isRatio, 'ratio-as-friction'),
    ...MEASURED.when(isScattered, 'readings-scatter'),
    ...MEASURED.when(lacksGauges, 'gauges-unlike'),
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
    ...MEASURED.when(isAged, 'calibration-aged'),
    ...MEASURED.when(isOthers, 'calibration-of-another-pump'),
  ];
}
