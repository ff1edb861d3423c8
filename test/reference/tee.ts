/** Published loss coefficients of 90 degree tees. */

const DIVERGING = 'Crane Technical Paper 410 (2009), diverging tee, evaluated with a general fluids library';

/** Equal diverging tee: K [-] on the velocity of the total flow; `share` = branch flow/total flow; tolerance absolute. */
export const DIVERGING_TEE = [
  { share: 0.2, branch: 1.0241, run: -0.048, tolerance: 1e-4, source: DIVERGING },
  { share: 0.25, branch: 1.0379, run: -0.0625, tolerance: 1e-4, source: DIVERGING },
  { share: 0.5, branch: 1.1556, run: 0, tolerance: 1e-4, source: DIVERGING },
  { share: 0.8, branch: 1.4209, run: 0.1152, tolerance: 1e-4, source: DIVERGING },
  { share: 1, branch: 1.69, run: 0.3, tolerance: 1e-4, source: DIVERGING },
] as const;
