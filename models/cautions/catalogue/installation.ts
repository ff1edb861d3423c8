/** Cautions about how a loop is built and wired, whatever it pumps. */
import { type CautionRow, COMMON_PRACTICE } from './caution-row.ts';

export const INSTALLATION_CAUTIONS = {
  'electricity-near-water': {
    severity: 'warning',
    sentence:
      'Mains electricity beside water: protect the circuit by a residual-current device, follow local code, leave wiring to a licensed electrician.',
    source: `${COMMON_PRACTICE}; local electrical code prevails`,
  },
  estimate: {
    severity: 'note',
    sentence:
      "Estimated from entered points and pipework; the maker's limits, local code and licensed practice come first.",
    source: COMMON_PRACTICE,
  },
  bulkheads: {
    severity: 'note',
    sentence:
      'Drilled walls and bulkheads fail without warning: inspect seals regularly and keep a way to shut off each side.',
    source: COMMON_PRACTICE,
  },
  'drain-back': {
    severity: 'warning',
    sentence:
      'When the power fails, water above the basin drains back: check the siphon break, the basin and that the overflow can carry the whole flow.',
    source: COMMON_PRACTICE,
  },
  'basin-floods': {
    severity: 'danger',
    sentence:
      'When the power fails more water drains back than the basin has room for, and it floods: raise the siphon break, or give the basin more freeboard.',
    source: 'tank area x depth of the siphon break and volume of the pipes against basin area x freeboard',
  },
  'overflow-exceeded': {
    severity: 'danger',
    sentence: 'The pump delivers more than the overflow carries: the tank floods.',
    source: 'capacity of the overflow as entered',
  },
  'isolation-missing': {
    severity: 'note',
    sentence: 'No isolation valve is entered on a side of the pump: to service it the loop must be drained.',
    source: COMMON_PRACTICE,
  },
  'union-missing': {
    severity: 'note',
    sentence: 'No union is entered on a side of the pump: to take it out, pipe must be cut.',
    source: COMMON_PRACTICE,
  },
  'bulkhead-union-missing': {
    severity: 'note',
    sentence: 'A bulkhead has no union: to change its seal, pipe must be cut.',
    source: COMMON_PRACTICE,
  },
} as const satisfies Record<string, CautionRow>;
