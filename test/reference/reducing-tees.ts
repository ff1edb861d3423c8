/** Published loss coefficients of tees of 90 degrees whose side is narrower than the leg. */
import type { Published } from './published.ts';

const LIBRARY =
  'Crane Technical Paper 410 (2009) with the errata of 2012, diverging tee of 90 degrees, evaluated with a general fluids library';

interface ReducingTee extends Omit<Published, 'expected'> {
  /** Side bore over leg bore; side flow over combined flow. */
  readonly boreRatio: number;
  readonly share: number;
  /** K [-] on the velocity of the combined flow. */
  readonly side: number;
  readonly run: number;
}

const row = (boreRatio: number, share: number, side: number, run: number): ReducingTee => ({
  ...{ boreRatio, share, side, run, tolerance: 1e-9, source: LIBRARY },
});

/** One or two of each part of the law; tolerance relative to 1. */
export const REDUCING_TEES: readonly ReducingTee[] = [
  row(0.5, 0.25, 2, 0.025),
  row(0.5, 0.5, 5, 0.1),
  row(0.6, 0.3, 1.6944444444444446, 0.036),
  row(0.65, 0.4, 1.8963271594131854, -0.064),
  row(0.75, 0.3, 1.0853333333333333, -0.072),
  row(0.75, 0.7, 1.4645925925925924, 0.0588),
  row(0.81, 0.5, 1.1742292984406408, 0),
  row(0.85, 0.5, 1.2294521737048167, 0),
  row(0.9, 0.2, 1.030509373571102, -0.048),
  row(0.9, 0.6, 1.2903868312757203, 0.0216),
];

const SEPARATE = 'worked by hand from the law, with friction by Colebrook and White';

/**
 * Seawater of 25 degC, 35 g/kg; pipes of 0.0015 mm roughness, bores [m] and lengths [m]; 8000 L/h into a leg of 50 mm, 1 m that parts
 * into a straight run of 50 mm, 1 m with a nozzle of 22 mm and a side of 25 mm, 1 m with an open end. Flows in L/h, heads in m.
 */
export const WORKED_REDUCING_TEE = {
  total: 8000,
  side: 3380.98,
  run: 4619.02,
  head: 0.62177,
  sideHead: 0.251941,
  runHead: 0.00466583,
  tolerance: 1e-4,
  source: SEPARATE,
} as const;
