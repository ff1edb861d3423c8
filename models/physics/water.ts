/** Finds the density and viscosity of fresh water and seawater at one atmosphere. */

/** What the water of a loop weighs and how it resists shear. */
export interface WaterProperties {
  /** [kg/m3] */
  readonly density: number;
  /** Dynamic viscosity [Pa s]. */
  readonly viscosity: number;
  /** [m2/s] */
  readonly kinematicViscosity: number;
}

const GRAMS_PER_KILOGRAM = 1000;

/**
 * Density and viscosity of the water of a loop.
 *
 * Density by the one-atmosphere equation of state EOS-80: rho = rho_w(t) + A(t) S + B(t) S^1.5 + C S^2.
 * Viscosity by Sharqawy et al.: mu = mu_w(t) (1 + A(t) s + B(t) s^2), s = S/1000.
 * @param state temperature t [degC] 0..45, salinity S [g/kg] 0..60. The figures are taken as they are: temperature is
 *   not converted to IPTS-68, nor salinity to the practical scale (0.002 kg/m3 and 0.12 kg/m3 at 25 degC, 35 g/kg).
 * EOS-80 was fitted to 0..42 g/kg and -2..40 degC; outside, inside the range above, it is continued.
 * Accuracy: both meet the published check values to their printed digits (test/models/physics/water.test.ts); the
 *   authors state 0.01 kg/m3 for density, 1.5 % for viscosity.
 * Sources: Fofonoff and Millard 1983, UNESCO Technical Papers in Marine Science 44; Sharqawy, Lienhard and Zubair
 *   2010, Desalination and Water Treatment 16, eq. 22-23.
 * Example: 25 degC, 35 g/kg weighs 1023.343 kg/m3.
 */
export function waterProperties({ temperature, salinity }: WaterState): WaterProperties {
  const density = densityOf(temperature, salinity);
  const viscosity = viscosityOf(temperature, salinity / GRAMS_PER_KILOGRAM);
  return { density, viscosity, kinematicViscosity: viscosity / density };
}

function densityOf(t: number, salinity: number): number {
  const fresh =
    999.842594 +
    t * (6.793952e-2 + t * (-9.09529e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
  const linear = 8.24493e-1 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
  const threeHalves = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
  return fresh + salinity * (linear + threeHalves * Math.sqrt(salinity) + 4.8314e-4 * salinity);
}

function viscosityOf(t: number, massFraction: number): number {
  const fresh = 4.2844e-5 + 1 / (0.157 * (t + 64.993) ** 2 - 91.296);
  const linear = 1.541 + t * (1.998e-2 - t * 9.52e-5);
  const square = 7.974 + t * (-7.561e-2 + t * 4.724e-4);
  return fresh * (1 + massFraction * (linear + massFraction * square));
}

/** The water of a loop as entered. */
export interface WaterState {
  /** [degC] 0..45. */
  readonly temperature: number;
  /** [g/kg] 0..60. */
  readonly salinity: number;
}
