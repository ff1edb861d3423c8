/** Cautions about routine checks. */
import { type CautionRow, COMMON_PRACTICE } from './caution-row.ts';

export const UPKEEP_CAUTIONS = {
  'isolate-before-service': {
    severity: 'danger',
    sentence:
      'Cut the power of the pump, and shut both its sides, before it is opened or hands go near its intake: it may start by itself, and an intake holds what covers it.',
    source: `${COMMON_PRACTICE}; local code prevails`,
  },
  'upkeep-common-practice': {
    severity: 'note',
    sentence:
      'Intervals, minutes and parts of the starter set are common practice: what the makers of pump, screen and residual-current device state, and local code, come first.',
    source: COMMON_PRACTICE,
  },
  'service-assumed': {
    severity: 'note',
    sentence:
      'The pump states no `service`: its wet end is put down for every six months and 45 minutes, without parts.',
    source: COMMON_PRACTICE,
  },
  'fittings-unknown': {
    severity: 'note',
    sentence:
      'The pipework of the loop is not known: its bulkheads and unions are not in the set, and need their checks all the same.',
    source: 'loop as entered',
  },
} as const satisfies Record<string, CautionRow>;
