/** What the worked cases share: the invented pumps E and W, pipes by bore in millimetres, flows in litres per hour. */
import type { ExtendedElement, ExtendedLoop, ExtendedPump } from '../../random/extended-loop.ts';
import { density } from '../independent/water.ts';

/** m3/s in a litre per hour. */
export const LH = 1 / 3.6e6;

/** The tolerance of every worked figure. */
export const STATED = { relative: 1e-4 };

/** Fresh water of 20 degC. */
export const FRESH = { temperature: 20, salinity: 0 };
/** Seawater of 25 degC. */
export const SEA = { temperature: 25, salinity: 35 };

/** Density [kg/m3] and viscosity [m2/s] of fresh water of 20 degC as the figures were computed with. */
export const FRESH_DENSITY = 998.2063;
export const FRESH_VISCOSITY = 1.001762e-3 / FRESH_DENSITY;
export const SEA_DENSITY = density(SEA);

export const pipe = (millimetres: number, length: number): ExtendedElement => ({
  pipe: { insideDiameter: millimetres / 1000 },
  length,
});

/** A pump whose head is shutoff x (1 - (Q/zero)^2), flows in L/h. */
function parabola(shutoff: number, zero: number, flows: readonly number[]): ExtendedPump {
  return {
    name: 'Inline 60',
    headPoints: flows.map((flow) => ({
      flow: flow * LH,
      head: shutoff * (1 - (flow / zero) ** 2),
      setting: 100,
    })),
    powerPoints: [{ setting: 100, power: 300 }],
    settings: { min: 30, max: 100, step: 1 },
    standbyPower: 0,
  };
}

export const pumpE = parabola(6, 10_000, [0, 2000, 4000, 6000, 8000, 9000]);
export const pumpW = parabola(7, 14_000, [0, 2800, 5600, 8400, 11_200, 12_600]);

/** A loop without static head that draws through a sharp intake. */
export const loopOf = (
  parts: Pick<ExtendedLoop, 'suction' | 'discharge'> & Partial<ExtendedLoop>,
): ExtendedLoop => ({
  name: 'Kelp flume',
  water: FRESH,
  staticHead: 0,
  pumpElevation: 0,
  frictionMultiplier: 1,
  intake: { lossCoefficient: 0.5 },
  ...parts,
});
