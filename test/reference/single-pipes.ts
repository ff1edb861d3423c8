/** Worked examples of one straight pipe. */
import type { Published } from './published.ts';

type PipeRow = Published & {
  readonly flow: number;
  readonly diameter: number;
  readonly length: number;
  readonly roughness: number;
  readonly kinematicViscosity: number;
};

const FOOT = 0.3048;
const DENSITY_OF_2_9 = 999;

const CENGEL = {
  flow: 6e-3,
  diameter: 0.05,
  length: 60,
  roughness: 2e-6,
  kinematicViscosity: 1.138e-3 / DENSITY_OF_2_9,
};

/** Head lost [m]. */
export const HEAD_LOSSES: readonly PipeRow[] = [
  {
    ...CENGEL,
    ...{ expected: 9.85, tolerance: 0.005 },
    source: 'Cengel and Cimbala, Fluid Mechanics, example 8-3: stainless pipe, f 0.0172',
  },
  {
    ...CENGEL,
    ...{ expected: 96_200 / (DENSITY_OF_2_9 * 9.81), tolerance: 0.001 },
    source:
      'the same example with Colebrook-White solved in full, 96.20 kPa, computed apart from this project',
  },
  {
    ...{ flow: 0.05, diameter: 0.15, length: 300, roughness: 1.5e-4, kinematicViscosity: 1.14e-6 },
    ...{ expected: 16.81, tolerance: 0.015 },
    source:
      'Massey and Ward-Smith, Mechanics of Fluids, example 7.1 (prints Fanning f 0.00515, Darcy 0.0206)',
    why: 'the book reads its factor off a chart; Colebrook-White in full gives 16.67 m',
  },
  {
    ...{ flow: 0.05, diameter: 0.15, length: 300, roughness: 1.5e-4, kinematicViscosity: 1.14e-6 },
    ...{ expected: 16.67, tolerance: 0.001 },
    source: 'the same example with Colebrook-White solved in full, computed apart from this project',
  },
  {
    ...{ flow: (Math.PI / 4) * FOOT ** 2 * 10 * FOOT, diameter: FOOT, length: 1000 * FOOT },
    ...{ roughness: 0.002 * FOOT, kinematicViscosity: 1e-9, expected: 36.3 * FOOT, tolerance: 0.005 },
    source:
      'Vennard, Elementary Fluid Mechanics, example 9.7: fully rough, f 0.0234 (viscosity set low to be fully rough)',
  },
];
