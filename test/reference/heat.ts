/** Published specific heats of seawater and the energy balance of a pump. */
import type { Published } from './published.ts';

const UNESCO = 'UNESCO Technical Papers in Marine Science 44 (Fofonoff and Millard 1983)';
const POLYNOMIAL = `${UNESCO}, its polynomial worked apart from this code, coefficients from memory`;

/** J/(kg K) at one atmosphere by temperature [degC] and salinity [g/kg]; tolerance absolute. */
export const SPECIFIC_HEATS: readonly (Published & {
  readonly temperature: number;
  readonly salinity: number;
})[] = [
  {
    temperature: 40,
    salinity: 40,
    expected: 3980.051,
    tolerance: 1e-3,
    source: `${UNESCO}, check value at p = 0`,
  },
  { temperature: 20, salinity: 35, expected: 3993.85, tolerance: 0.01, source: POLYNOMIAL },
  { temperature: 25, salinity: 35, expected: 3997.68, tolerance: 0.01, source: POLYNOMIAL },
  { temperature: 26, salinity: 35, expected: 3998.36, tolerance: 0.01, source: POLYNOMIAL },
  { temperature: 30, salinity: 35, expected: 4000.68, tolerance: 0.01, source: POLYNOMIAL },
];

/** 15 kW electric through a motor of 90 % into 50 L/s lifted from 100 to 300 kPa, c = 4.18 kJ/(kg K), 1 kg a litre. */
export const PUMP_HEATING = {
  ...{ power: 15_000, motorEfficiency: 0.9, flow: 0.05, pressureRise: 200_000 },
  ...{ density: 1000, specificHeat: 4180, expected: 0.017, tolerance: 0.02 },
  why: 'printed to two digits; 0.01675 by hand',
  source: 'Cengel and Cimbala, Fluid Mechanics, example 5-12',
} as const;
