/** Duties with what is before the pump: flows L/h, heads m, pressure kPa above that of the air. */
import type { PipeworkLoop } from '../../models/loop/loop.ts';
import type { Pump } from '../../models/pump/pump.ts';
import { LH, loopOf, pipe, pumpE, pumpW, SEA } from './independent-complementarity/cases.ts';

interface SuctionCase {
  readonly name: string;
  readonly loop: PipeworkLoop;
  readonly pump: Pump;
  readonly duties: readonly {
    readonly setting: number;
    readonly flow: number;
    readonly suctionLoss: number;
    readonly available: number;
    readonly required: number;
    readonly ratio: number;
    readonly suctionPressure: number;
  }[];
  readonly tolerance: number;
  readonly source: string;
}

const points = (...pairs: readonly (readonly [flow: number, head: number])[]) =>
  pairs.map(([flow, head]) => ({ flow: flow * LH, head }));

const SEPARATE = 'figures of a separate calculation, repeated by test/reference/independent-complementarity';

export const SUCTION_CASES: readonly SuctionCase[] = [
  {
    name: 'a pump 1.5 m above fresh water of 20 degC',
    loop: loopOf({
      pumpElevation: 1.5,
      suction: [pipe(50, 3)],
      discharge: { run: [pipe(40, 2)], outlet: { name: 'end' } },
    }),
    pump: { ...pumpE, npshPoints: points([2000, 0.8], [5000, 1.5]) },
    duties: [
      {
        ...{ setting: 60, flow: 5685.62, suctionLoss: 0.0601475, available: 8.55173, required: 3.44814 },
        ...{ ratio: 2.4801, suctionPressure: -15.5953 },
      },
      {
        ...{ setting: 100, flow: 9506.81, suctionLoss: 0.155216, available: 8.45667, required: 5.42277 },
        ...{ ratio: 1.55947, suctionPressure: -17.1058 },
      },
    ],
    tolerance: 1e-4,
    source: SEPARATE,
  },
  {
    name: 'a pump 2 m above the sea',
    loop: loopOf({
      water: SEA,
      pumpElevation: 2,
      suction: [pipe(45, 5), { fitting: 'elbow-90', count: 2 }],
      discharge: { run: [pipe(40, 6)], outlet: { name: 'end' } },
    }),
    pump: { ...pumpW, npshPoints: points([4000, 1.2], [8000, 2.2]) },
    duties: [
      {
        ...{ setting: 75, flow: 8766.96, suctionLoss: 0.458131, available: 7.3226, required: 3.006062 },
        ...{ ratio: 2.435945, suctionPressure: -25.8684 },
      },
    ],
    tolerance: 1e-4,
    source: SEPARATE,
  },
];
