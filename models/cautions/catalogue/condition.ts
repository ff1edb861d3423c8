/** Cautions about what readings mean. */
import { type CautionRow, COMMON_PRACTICE } from './caution-row.ts';

export const CONDITION_CAUTIONS = {
  'condition-steady': {
    severity: 'note',
    sentence:
      'The difference was there from the first reading on and does not grow: entries or meters may be at fault rather than the loop. Check them, and calibrate.',
    source: 'trend of the residuals',
  },
  'condition-static-head': {
    severity: 'note',
    sentence:
      'The loop lifts water: what waiting costs is not told, since with static head speed does not win flow back by the power law.',
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
      'Some phases of the schedule shut or throttle outlets: readings of such hours are judged as if every valve stood as the loop states.',
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
} as const satisfies Record<string, CautionRow>;
