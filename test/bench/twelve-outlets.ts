/** A loop of twelve outlets at three heights, on three arms of four. */
import type { Branch, PipeworkLoop } from '../../models/loop/loop.ts';

const LITRE_PER_HOUR = 1 / 3.6e6;

interface Outlet {
  readonly name: string;
  readonly requiredFlow: number;
  readonly nozzleDiameter: number;
  readonly length: number;
  readonly staticHead?: number;
}

function outlet({ name, requiredFlow, nozzleDiameter, length, staticHead }: Outlet): Branch {
  return {
    run: [
      { pipe: 'sch80 3/4', length },
      { fitting: 'elbow-90', count: 2 },
      { valve: 'ball', opening: 100 },
    ],
    outlet: {
      name,
      requiredFlow: requiredFlow * LITRE_PER_HOUR,
      maximumFlow: 3 * requiredFlow * LITRE_PER_HOUR,
      nozzleDiameter,
      ...(staticHead === undefined ? {} : { staticHead }),
    },
  };
}

/** Four outlets: two at the first split, two at a second one further out. */
function arm(name: string, { length, staticHead = 0 }: { length: number; staticHead?: number }): Branch {
  const at = (place: number, facts: Omit<Outlet, 'name' | 'staticHead'>): Branch =>
    outlet({ name: `${name} ${place}`, staticHead, ...facts });
  return {
    run: [
      { pipe: 'sch80 1-1/4', length },
      { fitting: 'elbow-90', count: 1 },
    ],
    split: 'tee-90',
    branches: [
      {
        run: [{ pipe: { insideDiameter: 0.027, roughness: 1.5e-6 }, length: 1.5 }],
        branches: [
          at(3, { requiredFlow: 550, nozzleDiameter: 0.011, length: 0.8 }),
          at(4, { requiredFlow: 500, nozzleDiameter: 0.011, length: 1.6 }),
        ],
      },
      {
        run: [{ lossCoefficient: 1.5 }],
        branches: [
          at(1, { requiredFlow: 600, nozzleDiameter: 0.012, length: 0.6 }),
          at(2, { requiredFlow: 650, nozzleDiameter: 0.012, length: 1.1 }),
        ],
      },
    ],
  };
}

/** Needs about 9 m3/h at some 3 m of head; 21 branches, two of its splits tees with a loss of their own. */
export const twelveOutlets: PipeworkLoop = {
  name: 'Twelve outlets',
  water: { temperature: 25, salinity: 35 },
  pumpElevation: -0.5,
  frictionMultiplier: 1,
  staticHead: 0.2,
  tank: { volume: 3 },
  intake: {
    lossCoefficient: 0.5,
    depth: 0.5,
    screen: { shape: 'cylinder', diameter: 0.09, length: 0.5, openFraction: 0.4, slot: 0.002, count: 1 },
  },
  suction: [
    { pipe: 'sch80 2', length: 1.5 },
    { fitting: 'elbow-90', count: 2 },
  ],
  discharge: {
    run: [{ pipe: 'sch80 2', length: 2 }],
    branches: [
      arm('low', { length: 2 }),
      arm('middle', { length: 4, staticHead: 0.1 }),
      arm('high', { length: 5, staticHead: 0.25 }),
    ],
  },
};
