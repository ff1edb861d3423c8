/** Finds the clean-steel turbulence factor by which equivalent diameters become loss coefficients. */

/** Roughness [m] of the clean commercial steel pipe that the factor is of. */
const CLEAN_STEEL_ROUGHNESS = 4.57e-5;

/**
 * The Darcy factor of fully rough flow in clean steel pipe, fT = 0.25/log10(e/(3.7 D))^2, e = 4.57e-5 m.
 *
 * A convention of the handbook's K = n fT, used for pipe of every material.
 * @param diameter bore [m], meant for 0.01..0.6; the factor falls as the bore grows.
 * Source: Crane Technical Paper 410; its rounded table (0.026 at 1/2 in to 0.016 at 4 in) is met to the digit printed.
 */
export function turbulenceFactor(diameter: number): number {
  return 0.25 / Math.log10(CLEAN_STEEL_ROUGHNESS / (3.7 * diameter)) ** 2;
}
