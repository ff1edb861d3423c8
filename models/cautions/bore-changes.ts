/** Gives the notes about steps of bore that are charged without a fitting entered for them. */
import { at } from '../../curves/at.ts';
import type { ExactDuty } from '../duty/duty-point.ts';
import { pointerTo } from '../loop/document-path.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import type { PlacedResistance } from '../network/network.ts';
import { type CautionOf, type Place, topic } from './topic.ts';

export const BORE_CHANGES_ASSUMED = topic({
  'bore-change-assumed': {
    severity: 'note',
    sentence:
      'A step of bore is charged as an abrupt one. Enter the reducer or enlargement there, or state `boreChanges`.',
    source: 'sudden contraction, Crane TP-410; sudden enlargement, Borda-Carnot',
  },
});

/** Figures of K in a sentence. */
const DIGITS = 3;

/** The steps that are charged, those that lose most first: value is the head lost at the duty [m], the detail states K. */
export function boreChangeCautions(
  { network }: Pick<CompiledLoop, 'network'>,
  { state, deadHead }: Pick<ExactDuty, 'state' | 'deadHead'>,
): readonly CautionOf<typeof BORE_CHANGES_ASSUMED>[] {
  const flows = state?.network?.flows;
  if (network === null || flows === undefined || deadHead) return [];
  return BORE_CHANGES_ASSUMED.worst('bore-change-assumed', [
    ...placesOf(network.suction, at(flows, 0)),
    ...network.branches.flatMap(({ elements }, b) => placesOf(elements, at(flows, b))),
  ]);
}

const placesOf = (elements: readonly PlacedResistance[], flow: number): readonly Place[] =>
  elements.flatMap(({ path, resistance, lossCoefficient }) => {
    if (lossCoefficient === undefined) return [];
    const pointer = pointerTo(path);
    const value = Math.abs(resistance.lossAt(flow).head);
    const subject = `${pointer}: K ${lossCoefficient.toPrecision(DIGITS)}`;
    return [{ subject, pointer, value, quantity: 'head', excess: value }];
  });
