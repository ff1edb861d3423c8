/** Density and viscosity of water by the published polynomials, typed in a second time. */

interface State {
  readonly temperature: number;
  readonly salinity: number;
}

/** Horner evaluation, lowest power first. */
const polynomial = (coefficients: readonly number[], x: number): number =>
  coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);

/** Density [kg/m3] at one atmosphere by UNESCO EOS-80 (Fofonoff and Millard 1983). */
export function density({ temperature, salinity }: State): number {
  const fresh = polynomial(
    [999.842594, 6.793952e-2, -9.09529e-3, 1.001685e-4, -1.120083e-6, 6.536332e-9],
    temperature,
  );
  const a = polynomial([8.24493e-1, -4.0899e-3, 7.6438e-5, -8.2467e-7, 5.3875e-9], temperature);
  const b = polynomial([-5.72466e-3, 1.0227e-4, -1.6546e-6], temperature);
  return fresh + a * salinity + b * salinity ** 1.5 + 4.8314e-4 * salinity ** 2;
}

/** Dynamic viscosity [Pa s] by Sharqawy, Lienhard and Zubair 2010, eq. 22 and 23. */
export function dynamicViscosity({ temperature, salinity }: State): number {
  const mass = salinity / 1000;
  const fresh = 4.2844e-5 + 1 / (0.157 * (temperature + 64.993) ** 2 - 91.296);
  const a = polynomial([1.541, 1.998e-2, -9.52e-5], temperature);
  const b = polynomial([7.974, -7.561e-2, 4.724e-4], temperature);
  return fresh * (1 + a * mass + b * mass ** 2);
}

/** Kinematic viscosity [m2/s]. */
export const kinematicViscosity = (state: State): number => dynamicViscosity(state) / density(state);
