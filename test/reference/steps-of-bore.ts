/** Runs of pipes of unlike bore, and what their steps cost. */
import type { RunElement } from '../../models/loop/loop.ts';

const pipe = (millimetres: number, length: number): RunElement => ({
  pipe: { insideDiameter: millimetres / 1000 },
  length,
});

const SEPARATE =
  'calculated apart: K = 0.5 (1 - b^2) (Crane TP-410) or (1 - b^2)^2 (Borda-Carnot), friction by Colebrook and White';

interface SteppedRun {
  readonly water: { readonly temperature: number; readonly salinity: number };
  readonly run: readonly RunElement[];
  /** L/h */
  readonly flow: number;
  /** By the place of the later pipe: K [-] on the smaller bore, and head [m]. */
  readonly steps: readonly {
    readonly later: number;
    readonly lossCoefficient: number;
    readonly head: number;
  }[];
  /** Head [m] of the whole run, without intake and outlet, and where steps cost nothing. */
  readonly head: number;
  readonly ignored: number;
  readonly tolerance: number;
  readonly source: string;
}

/** Pipes of 0.0015 mm roughness; tolerances relative. */
export const STEPPED_RUNS: readonly SteppedRun[] = [
  {
    water: { temperature: 20, salinity: 0 },
    run: [pipe(40, 1), pipe(20, 1), pipe(32, 1)],
    flow: 3000,
    steps: [
      { later: 1, lossCoefficient: 0.375, head: 0.13453 },
      { later: 2, lossCoefficient: 0.371338, head: 0.133216 },
    ],
    ...{ head: 0.695956, ignored: 0.42821, tolerance: 1e-4, source: SEPARATE },
  },
  {
    water: { temperature: 25, salinity: 35 },
    run: [pipe(32, 2), { fitting: 'elbow-90' }, pipe(25, 1.5), pipe(38, 1)],
    flow: 4500,
    steps: [
      { later: 2, lossCoefficient: 0.194824, head: 0.0644128 },
      { later: 3, lossCoefficient: 0.321687, head: 0.106356 },
    ],
    ...{ head: 0.837712, ignored: 0.666943, tolerance: 1e-4, source: SEPARATE },
  },
];

/** A step of 3 to 2 in, K [-] on the smaller bore. */
export const PUBLISHED_STEP = {
  ...{ before: 3 * 0.0254, after: 2 * 0.0254, lossCoefficient: 0.2777777778, tolerance: 1e-9 },
  source: 'Crane Technical Paper 410, sudden contraction 3 to 2 in',
} as const;
