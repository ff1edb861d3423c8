/** Readings of invented loops whose faults are known, with seeded noise. */

import { type Predicted, predictedAt, type Station } from '../../../models/condition/predicted.ts';
import type { PipeworkLoop } from '../../../models/loop/loop.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { drawsFrom, mulberry32 } from '../../random/draw.ts';
import { kelpFlume } from '../../reference/independent/kelp-flume.ts';
import { LITRE_PER_HOUR, modelOf, pumpModelOf } from '../example-loops.ts';

export const DAY = 86_400_000;
export const YEAR = 365.25 * DAY;
/** Of remedies. */
export const NO_COSTS = { cleaning: null, service: null };
export const START = Date.UTC(2025, 0, 1);

/** A canister whose power rises with flow, as that of small centrifugal pumps does. */
const PUMP: Pump = {
  name: 'Canister 250',
  headPoints: [
    { flow: 0, head: 5.1 },
    { flow: 6000, head: 4.5 },
    { flow: 10500, head: 3.3 },
    { flow: 14000, head: 1.9 },
  ].map(({ flow, head }) => ({ flow: flow * LITRE_PER_HOUR, head, setting: 100 })),
  powerPoints: [
    { flow: 1000, power: 150 },
    { flow: 4000, power: 187 },
    { flow: 7000, power: 222 },
    { flow: 9000, power: 245 },
    { flow: 12000, power: 270 },
  ].map(({ flow, power }) => ({ flow: flow * LITRE_PER_HOUR, power, setting: 100 })),
  settings: { min: 30, max: 100, step: 1 },
  standbyPower: 3,
};

/** What is wrong with a loop, all none by default. */
export interface Fault {
  /** Added to the loss of the intake, and of every outlet. */
  readonly intake?: number;
  readonly outlets?: number;
  /** What a worn pump gives of its head, and a fouled one draws of its power. */
  readonly head?: number;
  readonly power?: number;
}

const loopWith = ({ intake = 0, outlets = 0 }: Fault): PipeworkLoop => {
  const { branches = [], ...root } = kelpFlume.discharge;
  const clogged = (all: typeof branches): typeof branches =>
    all.map((branch) => ({
      ...branch,
      ...(branch.outlet === undefined
        ? {}
        : {
            outlet: { ...branch.outlet, lossCoefficient: (branch.outlet.lossCoefficient ?? 1) + outlets },
          }),
      ...(branch.branches === undefined ? {} : { branches: clogged(branch.branches) }),
    }));
  return {
    ...kelpFlume,
    intake: { ...(kelpFlume.intake ?? { lossCoefficient: 0.5 }), lossCoefficient: 0.5 + intake },
    discharge: { ...root, branches: clogged(branches) },
  };
};

export function stationWith(fault: Fault = {}): Station {
  const { head: worn = 1 } = fault;
  const pump = { ...PUMP, headPoints: PUMP.headPoints.map((one) => ({ ...one, head: worn * one.head })) };
  return { loop: modelOf(loopWith(fault)), pump: pumpModelOf(pump), count: 1 };
}

export type Meters = readonly ('flow' | 'power' | 'head' | 'pressures' | 'outlets')[];

export interface Course {
  readonly days: number;
  readonly perDay?: number;
  readonly settings?: readonly number[];
  /** The fault at a share of the course that has passed, 0..1. */
  readonly fault?: (passed: number) => Fault;
  readonly meters?: Meters;
  /** Standard deviation of a reading, as a share of it. */
  readonly noise?: number;
  /** Share of readings that are anything. */
  readonly wild?: number;
  readonly seed?: number;
}

/** The truth is worked out so many times over a course. */
const STEPS = 40;

export function readingsOf({
  days,
  perDay = 1,
  settings = [80],
  fault = () => ({}),
  meters = ['flow', 'power'],
  noise = 0.015,
  wild = 0,
  seed = 1,
}: Course): readonly Reading[] {
  const random = mulberry32(seed);
  const { between, chance, pick } = drawsFrom(random);
  const truths = new Map<string, Predicted & { readonly drawn: number }>();
  const truthAt = (passed: number, setting: number) => {
    const step = Math.round(passed * STEPS);
    const key = `${step} ${setting}`;
    const known = truths.get(key);
    if (known !== undefined) return known;
    const now = fault(step / STEPS);
    const predicted = predictedAt(stationWith(now), setting);
    if (predicted === null) throw new Error('nothing flows');
    const made = { ...predicted, drawn: (now.power ?? 1) * predicted.power };
    truths.set(key, made);
    return made;
  };
  // The sum of twelve even draws is nearly normal.
  const normal = () => Array.from({ length: 12 }, random).reduce((sum, one) => sum + one, -6);
  const read = (value: number) => (chance(wild) ? value * between(1.5, 6) : value * (1 + noise * normal()));
  const outlets = stationWith().loop.system.outlets;
  return Array.from({ length: days * perDay }, (_, i) => {
    const passed = i / (days * perDay - 1);
    const setting = pick(settings);
    const truth = truthAt(passed, setting);
    const { suctionPressure, dischargePressure } = truth;
    if (suctionPressure === null || dischargePressure === null) throw new Error('no pressures');
    const scatter = noise * (dischargePressure - suctionPressure);
    return {
      time: START + Math.round((i * DAY) / perDay),
      setting,
      ...(meters.includes('flow') ? { flow: read(truth.flow) } : {}),
      ...(meters.includes('power') ? { power: read(truth.drawn) } : {}),
      ...(meters.includes('head') ? { head: read(truth.head) } : {}),
      ...(meters.includes('pressures')
        ? {
            suctionPressure: suctionPressure + scatter * normal(),
            dischargePressure: dischargePressure + scatter * normal(),
          }
        : {}),
      ...(meters.includes('outlets')
        ? {
            outletFlows: Object.fromEntries(
              outlets.map(({ name }, place) => [name, read(truth.outletFlows[place] ?? Number.NaN)]),
            ),
          }
        : {}),
    };
  });
}
