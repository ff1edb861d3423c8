/** Records that storage tests write. */
import type { Loop } from '../../../models/loop/loop.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import type { PumpFit } from '../../../models/pump/pump-model.ts';

export const T0 = Date.UTC(2026, 0, 1);

export const examplePump = (name = 'Canister 120'): Pump => ({
  name,
  headPoints: [
    { flow: 0, head: 4.1, setting: 100 },
    { flow: 0.1 + 0.2, head: 3.3, setting: 100 },
    { flow: 1 / 3600, head: 1e-7, setting: 100 },
  ],
  powerPoints: [{ setting: 100, power: 120 }],
  settings: { min: 30, max: 100, step: 1 },
  standbyPower: 2,
});

/** Numbers that are hard to keep: thirds, the smallest and the largest double, sums that are not round. */
export const exampleFit = {
  speedMap: { settings: [0, 100], speeds: [0, 100] },
  headCurve: {
    shape: 'sum-of-powers',
    powers: [0, 1, 3],
    coefficients: [4.1, -1 / 3, 5e-324],
    flowScale: 0.1 + 0.2,
    range: { min: 0, max: 0.1 + 0.2 },
    r2: null,
    standardError: 1.7976931348623157e308,
    degreesOfFreedom: 1,
    residuals: [1e-17, -2 / 3],
    leaveOneOut: 1e21,
    drooping: false,
  },
  powerLaw: {
    law: 'fixed-loss',
    fixedPower: 0.1 + 0.2,
    exponent: 3,
    exponentAssumed: true,
    alternatives: [{ fixedPower: 0, coefficient: 118, exponent: 3, flowTerms: [] }],
    speedRange: { min: 1, max: 1 },
    coefficient: 118,
    flowTerms: [],
    flowScale: null,
    flowCentre: null,
    flowRange: null,
    standbyPower: 2,
    r2: null,
    standardError: null,
    degreesOfFreedom: 0,
  },
} as const satisfies PumpFit;

export const exampleLoop = ({ name = 'Kelp flume', pump }: { name?: string; pump?: string } = {}): Loop => ({
  name,
  water: { temperature: 25, salinity: 35 },
  pumpElevation: -0.6,
  frictionMultiplier: 1,
  systemCurve: { points: [{ flow: 0.002, head: 2.1 }] },
  outlets: [{ name: 'far end', share: 1, requiredFlow: 0.001 }],
  ...(pump === undefined ? {} : { installed: { pump, count: 1, setting: 80 } }),
});
