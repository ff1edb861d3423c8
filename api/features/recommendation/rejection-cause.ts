/** Why a candidate fails beyond its settings, in a sentence with figures. */
import type { RejectionCause } from '../../../models/selection/rejection-cause.ts';
import { toPointer } from '../../http/json-pointer.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { say, sayNumber } from '../../wording/numbers-in-words.ts';

/** With a blank before it; empty for null. */
export function causeWords(cause: RejectionCause | null, system: UnitSystem): string {
  switch (cause?.code) {
    case undefined:
      return '';
    case 'shut-valve':
      return ` The valve ${toPointer(cause.path)} of the loop is shut: no water passes to ${cause.outlet}.`;
    case 'lift-above-shutoff':
      return ` The lift is more than the pump gives at no flow: the loop needs ${say(cause.lift, 'head', system)} before any water moves, against a shutoff head of ${say(cause.shutoff, 'head', system)} at setting ${sayNumber(cause.setting)} %.`;
    case 'does-not-start':
      return ` From rest the pump does not start the flow: the loop needs ${say(cause.lift, 'head', system)} before any water moves, against a shutoff head of ${say(cause.shutoff, 'head', system)} at setting ${sayNumber(cause.setting)} %, although its drooping curve reaches ${say(cause.summit, 'head', system)} at a flow.`;
    case 'runs-by-itself':
      return ` The loop runs by itself: the water falls ${say(cause.fall, 'head', system)} to its outlets, and a pump only adds to that.`;
  }
}
