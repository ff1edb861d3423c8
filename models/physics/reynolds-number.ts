/** Reynolds number of flow in a round pipe. */

/** Re = 4 |Q| / (pi D nu) [-] of a flow [m3/s] in a bore [m] above 0 with kinematic viscosity [m2/s] above 0. */
export function reynoldsNumber(pipe: {
  readonly flow: number;
  readonly diameter: number;
  readonly kinematicViscosity: number;
}): number {
  return (4 * Math.abs(pipe.flow)) / (Math.PI * pipe.diameter * pipe.kinematicViscosity);
}
