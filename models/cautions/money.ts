/** Gives the cautions about costs, failures and what they rest on. */
import { INSTALLATION } from './installation.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const MONEY = topic({
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
});

/** Counts of failures below which their rate is hardly known. */
const FEW_FAILURES = 5;

/** What a bill of materials leaves out. */
export const billCautions = (): readonly CautionOf<typeof MONEY>[] => [MONEY.give('materials-as-entered')];

/** Judges the failures [-] that a number of spares rests on. */
export const sparesCautions = ({
  failures,
}: {
  readonly failures: number;
}): readonly CautionOf<typeof MONEY>[] => [
  MONEY.give('failures-independent'),
  ...MONEY.when(failures < FEW_FAILURES, 'few-failures', [], { value: failures, limit: FEW_FAILURES }),
];

/** What a comparison of options rests on; `countsRisk` where some option counts what a failure may cost. */
export const comparisonCautions = ({
  countsRisk,
}: {
  readonly countsRisk: boolean;
}): readonly CautionOf<typeof MONEY | typeof INSTALLATION>[] => [
  INSTALLATION.give('estimate'),
  INSTALLATION.give('electricity-near-water'),
  MONEY.give('costs-as-entered'),
  ...MONEY.when(countsRisk, 'failures-independent'),
];

/** Whether a pump lacks the price that a ranking by life-cycle cost needs. */
export const priceCautions = ({
  isUnpriced,
}: {
  readonly isUnpriced: boolean;
}): readonly CautionOf<typeof MONEY>[] => MONEY.when(isUnpriced, 'purchase-not-counted');
