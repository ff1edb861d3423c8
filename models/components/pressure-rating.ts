/** Finds the pressure that a standard pipe is made for. */
import { BAR } from '../physics/unit-factors.ts';
import { type PipeSize, seriesOf } from './pipe-sizes.ts';

/** Ratings [Pa] of the series that are named by theirs. */
const NAMED_RATINGS: ReadonlyMap<string, number> = new Map([
  ['pn10', 10 * BAR],
  ['pn16', 16 * BAR],
]);

/** Hydrostatic design stress of the compound [Pa], 2000 psi. */
const DESIGN_STRESS = 13.79e6;

/**
 * The pressure [Pa] above that of the air that a pipe bears for long in cold water: of PN sizes their PN, of Schedule 40
 * and 80 2 S t/(OD - t), S = 13.79 MPa, t the minimum wall and OD the outside diameter [m].
 *
 * Source: ASTM D1785 for sizes and stress, the form as in ASTM D2241; EN ISO 1452-2 for PN at 20 degC.
 * Threads, bends and warm water lower it.
 */
export function pressureRating(size: PipeSize): number {
  const { name, outsideDiameter, minimumWall } = size;
  return (
    NAMED_RATINGS.get(seriesOf(name)) ?? (2 * DESIGN_STRESS * minimumWall) / (outsideDiameter - minimumWall)
  );
}
