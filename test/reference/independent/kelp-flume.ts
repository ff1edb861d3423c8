/** The invented flume loop and its pump, whose figures a separate solution gave. */
import type { PipeworkLoop } from '../../../models/loop/loop.ts';
import type { Pump } from '../../../models/pump/pump.ts';

const LITRE_PER_HOUR = 1 / 3.6e6;

export const canister250: Pump = {
  name: 'Canister 250',
  headPoints: [
    { flow: 0, head: 5.1, setting: 100 },
    { flow: 6000 * LITRE_PER_HOUR, head: 4.5, setting: 100 },
    { flow: 10500 * LITRE_PER_HOUR, head: 3.3, setting: 100 },
    { flow: 14000 * LITRE_PER_HOUR, head: 1.9, setting: 100 },
  ],
  powerPoints: [
    { setting: 100, power: 245, flow: 9000 * LITRE_PER_HOUR },
    { setting: 60, power: 55 },
  ],
  settings: { min: 30, max: 100, step: 1 },
  standbyPower: 3,
  flowLimits: { min: 1500 * LITRE_PER_HOUR, max: 14000 * LITRE_PER_HOUR },
};

const side = (name: string): PipeworkLoop['discharge'] => ({
  run: [],
  outlet: { name, requiredFlow: 2000 * LITRE_PER_HOUR, nozzleDiameter: 0.014 },
});

export const kelpFlume: PipeworkLoop = {
  name: 'Kelp flume',
  water: { temperature: 25, salinity: 35 },
  staticHead: 0,
  pumpElevation: -0.6,
  tank: { volume: 2.4, area: 4, width: 0.8, depth: 0.6 },
  intake: {
    lossCoefficient: 0.5,
    depth: 0.4,
    screen: { shape: 'cylinder', diameter: 0.06, length: 0.5, openFraction: 0.35, slot: 0.002, count: 1 },
  },
  suction: [
    { pipe: 'sch80 2', length: 1.2 },
    { fitting: 'elbow-90', count: 2 },
  ],
  discharge: {
    run: [{ pipe: 'sch80 1-1/2', length: 2.5 }],
    split: 'tee-90',
    branches: [
      {
        run: [
          { pipe: { insideDiameter: 0.0404, roughness: 1.5e-6 }, length: 3 },
          { valve: 'ball', opening: 100 },
        ],
        outlet: {
          name: 'far end',
          requiredFlow: 3000 * LITRE_PER_HOUR,
          maximumFlow: 6000 * LITRE_PER_HOUR,
          nozzleDiameter: 0.015,
          nozzleCount: 1,
        },
      },
      { run: [{ lossCoefficient: 2 }], branches: [side('left'), side('right')] },
    ],
  },
  frictionMultiplier: 1,
};
