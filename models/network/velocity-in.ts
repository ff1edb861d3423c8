/** Finds how fast water runs in a bore. */

/** The mean velocity [m/s] of a flow [m3/s], either way, through a bore [m] above 0. */
export const velocityIn = (bore: number, flow: number): number =>
  Math.abs(flow) / ((Math.PI / 4) * bore ** 2);
