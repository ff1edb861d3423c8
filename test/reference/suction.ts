/** Published vapour pressures, atmospheres, NPSH and screen examples. */
import type { Published } from './published.ts';

const IAPWS = 'IAPWS-95, computed with a general chemical-properties library';

/** Vapour pressure of water [Pa] by temperature [degC]; tolerance relative. */
export const VAPOUR_PRESSURES: readonly (Published & { readonly temperature: number })[] = [
  { temperature: 10, expected: 1228.2, tolerance: 2e-4, source: IAPWS },
  { temperature: 15, expected: 1705.8, tolerance: 2e-4, source: IAPWS },
  { temperature: 20, expected: 2339.3, tolerance: 2e-4, source: IAPWS },
  { temperature: 25, expected: 3169.9, tolerance: 2e-4, source: IAPWS },
  { temperature: 26, expected: 3363.9, tolerance: 2e-4, source: IAPWS },
  { temperature: 30, expected: 4247.0, tolerance: 2e-4, source: IAPWS },
  {
    ...{ temperature: 26.85, expected: 3536.59, tolerance: 1e-4 },
    source: 'IAPWS-95 at 300 K; also IAPWS-IF97, table 35 (table number from memory)',
  },
  {
    ...{ temperature: 99.974, expected: 101_325, tolerance: 1e-4 },
    source: 'normal boiling point of water, 373.124 K in IAPWS-95 (from memory)',
  },
];

const STANDARD_ATMOSPHERE = 'US Standard Atmosphere 1976, table by geometric altitude';
const SAME_MODEL = 'US Standard Atmosphere 1976, computed with a general fluids library';

/** Pressure [Pa] by elevation [m]; tolerance relative. */
export const ATMOSPHERES: readonly (Published & { readonly elevation: number })[] = [
  { elevation: 0, expected: 101_320, tolerance: 1e-4, source: STANDARD_ATMOSPHERE },
  { elevation: 2000, expected: 79_501, tolerance: 1e-4, source: STANDARD_ATMOSPHERE },
  { elevation: 4000, expected: 61_660, tolerance: 1e-4, source: STANDARD_ATMOSPHERE },
  { elevation: 500, expected: 95_461, tolerance: 1e-4, source: SAME_MODEL },
  { elevation: 1000, expected: 89_876, tolerance: 1e-4, source: SAME_MODEL },
  { elevation: 1500, expected: 84_560, tolerance: 1e-4, source: SAME_MODEL },
  { elevation: 3000, expected: 70_121, tolerance: 1e-4, source: SAME_MODEL },
];

const FOOT = 0.3048;
const PSI = (0.45359237 * 9.80665) / 0.0254 ** 2;
const POUND_PER_CUBIC_FOOT = 0.45359237 / FOOT ** 3;
const VELOCITY_HEADS_OF_MUNSON = 20;

/** Velocity head [m] of 0.5 ft3/s in a 4 in pipe. */
const MUNSON_VELOCITY_HEAD = (0.5 / ((Math.PI / 4) * (4 / 12) ** 2)) ** 2 * (FOOT / (2 * 32.174));

/** NPSH available [m] for stated pressures; tolerance relative. */
export const NPSH_EXAMPLES = [
  {
    ...{ surfacePressure: (5 + 14.696) * PSI, vapourPressure: 0.256 * PSI },
    ...{ density: 62.364 * POUND_PER_CUBIC_FOOT, pumpElevation: 25 * FOOT, suctionLoss: 6 * FOOT },
    ...{ expected: 13.89 * FOOT, tolerance: 1e-3 },
    source: 'Crane Technical Paper 410, example 7-32',
  },
  {
    ...{ surfacePressure: 14.7 * PSI, vapourPressure: 0.5069 * PSI, density: 62.22 * POUND_PER_CUBIC_FOOT },
    ...{ pumpElevation: 7.65 * FOOT, suctionLoss: VELOCITY_HEADS_OF_MUNSON * MUNSON_VELOCITY_HEAD },
    ...{ expected: 15 * FOOT, tolerance: 1e-3 },
    source:
      'Munson et al., Fundamentals of Fluid Mechanics, example 12.3: 7.65 ft is the greatest lift for 15 ft',
  },
  {
    ...{ surfacePressure: 101_325, vapourPressure: 26_200, density: 865, pumpElevation: 1.8, suctionLoss: 0 },
    ...{ expected: 7.06, tolerance: 2e-3 },
    source:
      'Abulencia and Theodore, Fluid Flow for the Practicing Chemical Engineer, example 22.10 (benzene)',
  },
  {
    ...{ surfacePressure: 0.94 * 101_325, vapourPressure: 18_000, density: 970 },
    ...{ pumpElevation: 3 - 0.385, suctionLoss: 0.5, expected: 5, tolerance: 2e-3 },
    source: 'Schaschke, Fluid Mechanics: Worked Examples for Engineers, example 9.6: level 0.385 m for 5 m',
  },
] as const;
