/** Finds how near the water in a valve is to boiling. */

/**
 * The cavitation index [-] of a valve, sigma = (p1 - p_vap)/(p1 - p2): the smaller, the nearer to cavitation.
 *
 * @param pressures before, p1 at the valve's inlet, absolute [Pa]; vapour, p_vap of the water [Pa]; drop, p1 - p2 [Pa],
 *   above 0.
 * Source: the form of ISA-RP75.23.
 */
export const cavitationIndex = ({
  before,
  vapour,
  drop,
}: {
  readonly before: number;
  readonly vapour: number;
  readonly drop: number;
}): number => (before - vapour) / drop;
