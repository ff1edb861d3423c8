/** Finds the pressure that a gauge before the pump reads. */
import { lastBore } from '../network/bores.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { velocityIn } from '../network/velocity-in.ts';
import { GRAVITY } from '../physics/gravity.ts';
import type { DutyFigures } from './duty-point.ts';

/**
 * The pressure [Pa] above that of the air just before the pump, at its centreline:
 * p = rho g (-pumpElevation - suction losses - v^2/2g), v in the last suction pipe, 0 without one.
 *
 * @param duty flow [m3/s] of all pumps; suctionLoss [m].
 * @returns of a loop known by its system curve alone that at rest, since its suction is not known.
 */
export function suctionPressure(
  { entered: loop, water }: Pick<CompiledLoop, 'entered' | 'water'>,
  { flow, suctionLoss }: Pick<DutyFigures, 'flow' | 'suctionLoss'>,
): number {
  const bore = 'suction' in loop ? lastBore(loop.suction) : null;
  const velocity = bore === null ? 0 : velocityIn(bore, flow);
  const head = -loop.pumpElevation - suctionLoss - velocity ** 2 / (2 * GRAVITY);
  return water.density * GRAVITY * head;
}
