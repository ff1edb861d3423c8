/** Gives the cautions about outlets in air that no water reaches. */
import type { ExactDuty } from '../duty/duty-point.ts';
import { pointerTo } from '../loop/document-path.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { type DryOutlet, dryOutlets } from '../network/dry-outlets.ts';
import { type CautionOf, COMMON_PRACTICE, type Place, topic } from './topic.ts';

export const DRY_OUTLETS = topic({
  'outlet-dry': {
    severity: 'warning',
    sentence:
      'An outlet in air receives no water: the head at the start of its run does not reach it. Raise the setting or close the run.',
    source: 'network solution',
  },
  'air-drawn': {
    severity: 'danger',
    sentence:
      'The line to a dry outlet takes in air at its highest point and loses its prime. Raise the setting or close the run.',
    source: COMMON_PRACTICE,
  },
});

/**
 * The outlets in air that stay dry at a duty, those that lack the most head first: value is the head at the start of
 * the run [m], limit the level of the outlet, or the highest point of the line that the head does not reach [m].
 */
export function dryOutletCautions(
  { network }: Pick<CompiledLoop, 'network'>,
  { state, deadHead }: Pick<ExactDuty, 'state' | 'deadHead'>,
): readonly CautionOf<typeof DRY_OUTLETS>[] {
  const solution = state?.network ?? null;
  if (network === null || solution === null || deadHead) return [];
  const dry = dryOutlets(network, solution);
  const placeOf = ({ outlet: { name, path }, head: value }: DryOutlet, limit: number): Place => ({
    ...{ subject: name, pointer: pointerTo(path), value, limit, quantity: 'head', excess: limit - value },
  });
  return [
    ...DRY_OUTLETS.worst(
      'air-drawn',
      dry.flatMap((one) => (one.airAt === null ? [] : [placeOf(one, one.airAt)])),
    ),
    ...DRY_OUTLETS.worst(
      'outlet-dry',
      dry.flatMap((one) => (one.airAt === null ? [placeOf(one, one.level)] : [])),
    ),
  ];
}
