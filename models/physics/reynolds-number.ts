/** Finds the Reynolds number of flow in a round pipe. */

/**
 * The Reynolds number of flow in a round pipe, Re = 4 |Q|/(pi D nu) [-].
 *
 * @param pipe flow Q [m3/s], either way; diameter D [m] above 0; kinematicViscosity nu [m2/s] above 0.
 */
export function reynoldsNumber(pipe: {
  readonly flow: number;
  readonly diameter: number;
  readonly kinematicViscosity: number;
}): number {
  return (4 * Math.abs(pipe.flow)) / (Math.PI * pipe.diameter * pipe.kinematicViscosity);
}
