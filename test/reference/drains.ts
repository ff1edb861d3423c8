/** Published drain times of tanks through sharp-edged openings. */
import type { Published } from './published.ts';

const FOOT = 0.3048;
const INCH = 0.0254;
const disc = (diameter: number): number => (Math.PI / 4) * diameter ** 2;

interface Drain extends Published {
  readonly surface: number;
  readonly openingDiameter: number;
  readonly from: number;
  readonly to: number;
  readonly dischargeCoefficient: number;
}

/** Time [s]; lengths [m], surface [m2]; tolerance relative. */
export const DRAIN_TIMES: readonly Drain[] = [
  {
    ...{
      surface: disc(6 * FOOT),
      openingDiameter: 2 * INCH,
      from: 9 * FOOT,
      to: 0,
      dischargeCoefficient: 0.6,
    },
    ...{ expected: 1615, tolerance: 1e-3 },
    source: 'Paradise, Fluid Mechanics worked examples, example 7.1: a 6 ft cylinder to empty',
  },
  {
    ...{ surface: disc(0.9), openingDiameter: 0.013, from: 1.2, to: 0.6, dischargeCoefficient: 1 },
    ...{ expected: 694.4, tolerance: 3e-3 },
    source: 'Cengel and Cimbala, Fluid Mechanics, example 5-2: half of 1.2 m in 11.6 min',
  },
  {
    ...{ surface: 24 * 12 * FOOT ** 2, openingDiameter: 4 * INCH, from: 6 * FOOT, to: 0 },
    ...{ dischargeCoefficient: 0.6, expected: 3358, tolerance: 1e-3 },
    source: 'Lal, Hydraulics, example 5.19: a tank of 24 by 12 ft',
  },
];
