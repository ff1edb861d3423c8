/** Says why readings do not determine a factor, and which would. */
import { type NotIdentifiable, SEPARATE } from '../../../models/calibration/determined.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';

const APART = [
  'the head across the pump',
  'the head with a valve at the pump closed for a few seconds',
  'the flow with a known outlet closed',
];
const FLOWS = ['the total flow', 'the flow of an outlet'];
const MORE = ['more readings of the same, at other settings besides'];

export const helpfulReadings = ({ reason }: NotIdentifiable): readonly string[] => {
  switch (reason) {
    case 'no-power-readings':
      return ['the electrical power'];
    case 'no-flow-readings':
      return FLOWS;
    case 'ratio-alone':
    case 'not-distinct':
    case 'ill-conditioned':
      return APART;
    case 'too-uncertain':
      return [...APART, ...MORE];
    case 'implausible':
      return MORE;
  }
};

export function reasonWords(one: NotIdentifiable): string {
  switch (one.reason) {
    case 'no-power-readings':
      return 'No reading states a power.';
    case 'no-flow-readings':
      return 'No reading states a flow, without which heads determine no ratio of friction and head.';
    case 'ratio-alone':
      return 'Flows on a loop without static head determine friction over head alone, whatever the settings.';
    case 'not-distinct':
      return 'The readings do not separate friction from head at all.';
    case 'ill-conditioned':
      return `The readings hardly separate friction from head: the condition number of the scaled Jacobian is ${sayNumber(one.conditionNumber)}, not under ${SEPARATE.conditionNumber}.`;
    case 'too-uncertain':
      return `Its standard error is ${sayNumber(one.standardError, 3)}: it must be under ${SEPARATE.standardError}, and its 95 % interval within ${100 * SEPARATE.halfWidth} % of the factor.`;
    case 'implausible':
      return 'Only a factor beyond all wear and clogging would fit: check the units of the readings, and the pipework and pump as entered.';
  }
}
