/** The loop that the OpenAPI document shows. */

export const LOOP_EXAMPLE = {
  name: 'Kelp flume',
  water: { temperature: 25, salinity: 35 },
  staticHead: 0,
  pumpElevation: -0.6,
  tank: { volume: 2400, area: 4, width: 0.8, depth: 0.6 },
  intake: {
    lossCoefficient: 0.5,
    depth: 0.4,
    screen: { shape: 'cylinder', diameter: 60, length: 0.5, openFraction: 0.35, slot: 2, count: 1 },
  },
  suction: [
    { pipe: 'sch80 2', length: 1.2 },
    { fitting: 'elbow-90', count: 2 },
  ],
  discharge: {
    run: [{ pipe: 'sch80 1-1/2', length: 2.5 }],
    branches: [
      {
        run: [
          { pipe: { insideDiameter: 40.4, roughness: 0.0015 }, length: 3 },
          { valve: 'ball', opening: 100 },
        ],
        outlet: {
          name: 'far end',
          requiredFlow: 3000,
          maximumFlow: 6000,
          nozzleDiameter: 15,
          nozzleCount: 1,
        },
      },
      {
        run: [{ lossCoefficient: 2.0 }],
        branches: [
          { run: [], outlet: { name: 'left', requiredFlow: 2000, nozzleDiameter: 14 } },
          { run: [], outlet: { name: 'right', requiredFlow: 2000, nozzleDiameter: 14 } },
        ],
      },
    ],
    split: 'tee-90',
  },
  frictionMultiplier: 1,
};
