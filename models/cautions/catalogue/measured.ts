/** Cautions about figures that rest on what was measured. */
import { type CautionRow, COMMON_PRACTICE } from './caution-row.ts';

export const MEASURED_CAUTIONS = {
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
      'The loop was calibrated by friction over the head of its own pump: for another pump friction may be off by as much as the head of that one is, about a tenth, which no assurance takes in. Read a head at a shut valve, calibrate again, then compare.',
    source: 'flows on a loop without static head scale with both alike',
  },
  'readings-drift': {
    severity: 'warning',
    sentence:
      'The readings change in their course, by more than their noise: the factors are those of the middle of that time, not of its end. Clean and mend first, then calibrate `from` that day on.',
    source: 'straight line through the readings of each setting',
  },
  'fault-as-reference': {
    severity: 'warning',
    sentence:
      'More friction or less head than entered is also what clogging and wear look like: once applied it is what condition measures by, and is no longer told as a fault. Apply it for a loop that was clean and sound when it was read.',
    source: COMMON_PRACTICE,
  },
  'ratio-as-friction': {
    severity: 'note',
    sentence:
      'The readings tell friction over head alone, which is taken as friction with the head of the pump as entered: flows of this pump are right either way, those of another pump and the shares of the outlets only if it is the pipework that changed.',
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
      'A head at no flow is read against a valve shut for some seconds and no longer: the pump heats the water that it holds, and the animals get none meanwhile.',
    source: COMMON_PRACTICE,
  },
  'readings-thinned': {
    severity: 'note',
    sentence:
      'Readings of so many settings of so large a loop are not all computed: those of shut outlets, then those beside a head, then the settings that were read most often were taken.',
    source: 'limit of the computation',
  },
  'few-readings': {
    severity: 'note',
    sentence:
      'So few readings leave the noise of the meters much as assumed: 3 % for a flow, 2 % for a head or a power.',
    source: COMMON_PRACTICE,
  },
} as const satisfies Record<string, CautionRow>;
