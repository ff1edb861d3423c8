/** Cautions about costs, failures and what they rest on. */
import { type CautionRow, COMMON_PRACTICE } from './caution-row.ts';

export const MONEY_CAUTIONS = {
  'failures-independent': {
    severity: 'note',
    sentence:
      'Failures are taken as independent and as likely in every year: a bad batch, a surge or one flood takes several devices at once.',
    source: `${COMMON_PRACTICE}; Poisson failures`,
  },
  'few-failures': {
    severity: 'note',
    sentence: 'The failure rate rests on fewer than five failures: its interval is wide, look at both ends.',
    source: 'Garwood (1936), exact limits of a Poisson count',
  },
  'materials-as-entered': {
    severity: 'note',
    sentence:
      'The bill lists what the loop states: supports, glue, seals, offcuts and what was left out of the loop are not on it.',
    source: COMMON_PRACTICE,
  },
  'costs-as-entered': {
    severity: 'note',
    sentence:
      'Costs rest on prices, lives and rates as entered; what prices do in later years nobody knows: look at the sensitivities.',
    source: COMMON_PRACTICE,
  },
  'purchase-not-counted': {
    severity: 'warning',
    sentence: 'The pump has no price: it has no life-cycle cost, and ranks after those that have one.',
    source: COMMON_PRACTICE,
  },
} as const satisfies Record<string, CautionRow>;
