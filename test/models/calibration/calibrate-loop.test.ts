/** What seeded readings of loops whose truth is known say about them. */
import { describe, expect, it } from 'vitest';
import type { LoopCalibration } from '../../../models/calibration/calibrate-loop.ts';
import type { Loop } from '../../../models/loop/loop.ts';
import type { ParameterName } from '../../../models/pump/factors.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { expectClose } from '../../expect-close.ts';
import { calibrated, EXACT } from './known-loops.ts';
import {
  curveLoop,
  type Noise,
  normals,
  pipedLoop,
  readings,
  type Truth,
  trueDuty,
  wornPump,
} from './synthetic.ts';

const NOISE: Noise = { flow: 0.03, head: 0.015, power: 0.01 };
const SILENT: Noise = { flow: 0, head: 0, power: 0 };
const SETTINGS = [50, 65, 80, 100];

type Kinds = readonly (keyof Noise)[];

/** Clogging, wear and a tired motor of a seed. */
const truthOf = (normal: () => number): Truth => ({
  friction: 1.3 * Math.exp(0.2 * normal()),
  head: 0.93 + 0.03 * normal(),
  power: 1.05 + 0.03 * normal(),
});

const trueValue = ({ friction, head, power }: Truth, name: ParameterName): number =>
  ({ friction, head, power, frictionOverHead: friction / head })[name];

interface Run {
  readonly truth: Truth;
  readonly calibration: LoopCalibration;
}

interface Meters {
  readonly kinds: Kinds;
  readonly noise?: Noise;
  /** Readings at each setting. */
  readonly times?: number;
}

const runOf = (seed: number, loop: Loop, { kinds, noise = NOISE, times = 3 }: Meters): Run => {
  const normal = normals(seed);
  const truth = truthOf(normal);
  const measured = readings({ loop, truth, settings: SETTINGS, times }, { noise, normal, kinds });
  return { truth, calibration: calibrated({ loop, meters: EXACT }, measured) };
};

/** By parameter, the share of seeded runs whose interval holds the true value. */
function coverage(runs: number, loop: Loop, meters: Meters): Readonly<Record<string, number>> {
  const inside: Record<string, number> = {};
  for (let seed = 1; seed <= runs; seed += 1) {
    const { truth, calibration } = runOf(seed, loop, meters);
    for (const { name, interval } of calibration.parameters) {
      const value = trueValue(truth, name);
      const holds = interval.low <= value && value <= interval.high;
      inside[name] = (inside[name] ?? 0) + (holds ? 1 : 0);
    }
  }
  return Object.fromEntries(Object.entries(inside).map(([name, count]) => [name, count / runs]));
}

const MINUTE = 60_000;
/** What intervals of 95 % must keep where few runs or bad meters are simulated; the table of rates has the many. */
const LEAST = 0.83;

describe('parameters told by seeded readings with noise', () => {
  it('lie inside their 95 % interval in at least 90 % of 100 runs: head beside flow', {
    timeout: 3 * MINUTE,
  }, () => {
    const shares = coverage(100, curveLoop(), { kinds: ['flow', 'head', 'power'] });
    expect(Object.keys(shares).toSorted()).toEqual(['friction', 'head', 'power']);
    for (const share of Object.values(shares)) expect(share).toBeGreaterThanOrEqual(0.9);
  });

  it('lie inside it as often where flows tell the ratio alone', { timeout: 3 * MINUTE }, () => {
    const shares = coverage(60, curveLoop(), { kinds: ['flow', 'power'] });
    expect(Object.keys(shares).toSorted()).toEqual(['frictionOverHead', 'power']);
    for (const share of Object.values(shares)) expect(share).toBeGreaterThanOrEqual(0.9);
  });

  it('lie inside it as often with one reading a setting of meters twice as bad as assumed', {
    timeout: 3 * MINUTE,
  }, () => {
    const meters = {
      kinds: ['flow', 'head', 'power'],
      noise: { flow: 0.06, head: 0.04, power: 0.04 },
    } as const;
    const shares = coverage(80, curveLoop(), { ...meters, times: 1 });
    for (const share of Object.values(shares)) expect(share).toBeGreaterThanOrEqual(LEAST);
  });

  it('lie inside it as often on known pipework', { timeout: 3 * MINUTE }, () => {
    const shares = coverage(24, pipedLoop(), { kinds: ['flow', 'head', 'power'] });
    expect(Object.keys(shares).toSorted()).toEqual(['friction', 'head', 'power']);
    for (const share of Object.values(shares)) expect(share).toBeGreaterThanOrEqual(LEAST);
  });
});

const TRUTH: Truth = { friction: 1.4, head: 0.93, power: 1.06 };

const silently = (loop: Loop, kinds: Kinds, settings = SETTINGS): readonly Reading[] =>
  readings({ loop, truth: TRUTH, settings, times: 1 }, { noise: SILENT, normal: () => 0, kinds });

const valuesOf = ({ parameters }: LoopCalibration) =>
  Object.fromEntries(parameters.map(({ name, value }) => [name, value]));

const reasonsOf = ({ notIdentifiable }: LoopCalibration) =>
  notIdentifiable.map(({ name, reason }) => `${name} ${reason}`);

describe('what readings without noise tell', () => {
  it.each([
    { what: 'a system curve', loop: curveLoop() },
    { what: 'known pipework', loop: pipedLoop() },
  ])('is the truth where a head stands beside the flow: $what', ({ loop }) => {
    const told = valuesOf(calibrated({ loop }, silently(loop, ['flow', 'head', 'power'])));
    for (const name of ['friction', 'head', 'power'] as const) {
      expectClose(told[name] ?? Number.NaN, TRUTH[name], { relative: 1e-5 });
    }
  });

  it('is the ratio alone from flows without static head, whatever the settings', () => {
    const loop = curveLoop();
    const told = calibrated({ loop }, silently(loop, ['flow'], [30, 40, 50, 60, 70, 80, 90, 100]));
    expectClose(valuesOf(told).frictionOverHead ?? Number.NaN, 1.4 / 0.93, { relative: 1e-6 });
    expect(reasonsOf(told)).toEqual(['friction ratio-alone', 'head ratio-alone', 'power no-power-readings']);
  });

  it('is both from flows at two settings of a loop with static head', () => {
    const loop = curveLoop(1);
    const told = valuesOf(calibrated({ loop }, silently(loop, ['flow'])));
    expectClose(told.friction ?? Number.NaN, TRUTH.friction, { relative: 1e-4 });
    expectClose(told.head ?? Number.NaN, TRUTH.head, { relative: 1e-4 });
  });

  it('is the ratio from flows at one setting of it', () => {
    const loop = curveLoop(1);
    const told = calibrated({ loop }, silently(loop, ['flow'], [80]));
    expect(Object.keys(valuesOf(told))).toEqual(['frictionOverHead']);
  });

  it('is both from flows beside a head at no flow', () => {
    const loop = curveLoop();
    const shutoff = 0.93 * (wornPump({ head: 1, power: 1 }).headPoints[0]?.head ?? Number.NaN);
    const told = calibrated({ loop }, [
      ...silently(loop, ['flow']),
      { time: 9, setting: 100, flow: 0, head: shutoff },
    ]);
    expectClose(valuesOf(told).friction ?? Number.NaN, TRUTH.friction, { relative: 1e-5 });
    expectClose(valuesOf(told).head ?? Number.NaN, TRUTH.head, { relative: 1e-5 });
  });

  it('is both from a head that is the difference of two pressures', () => {
    const loop = curveLoop();
    const density = 1023.343;
    const gauged = silently(loop, ['flow', 'head']).map(({ head = 0, ...reading }) => ({
      ...reading,
      suctionPressure: 2_000,
      dischargePressure: 2_000 + density * 9.80665 * head,
    }));
    const told = valuesOf(calibrated({ loop }, gauged));
    // The density of water of 25 degC and 35 g/kg by EOS-80 is 1023.343 kg/m3.
    expectClose(told.head ?? Number.NaN, TRUTH.head, { relative: 1e-5 });
  });

  it('is the power alone from powers alone', () => {
    const loop = curveLoop();
    const told = calibrated({ loop }, silently(loop, ['power']));
    expectClose(valuesOf(told).power ?? Number.NaN, TRUTH.power, { relative: 0.02 });
    expect(reasonsOf(told)).toEqual(['friction no-flow-readings', 'head no-flow-readings']);
    expect(told.smallestMargin?.uncertainty).toBeNull();
  });

  it('is nothing from no reading, and which to take', () => {
    const told = calibrated({ loop: curveLoop() }, []);
    expect(told.parameters).toEqual([]);
    expect(told.used).toBe(0);
    expect(told.nextReadings[0]?.measure).toMatch(/flow/i);
  });

  it('is nothing where only factors beyond all wear would fit', () => {
    const loop = curveLoop();
    // Gallons entered as litres, and worse.
    const slipped = silently(loop, ['flow']).map((one) => ({ ...one, flow: (one.flow ?? 0) / 60 }));
    const told = calibrated({ loop }, slipped);
    expect(told.parameters).toEqual([]);
    expect(reasonsOf(told)).toContain('friction implausible');
  });

  it('is the ratio alone where heads are beyond all pumps, as pressures in the wrong unit are', () => {
    const loop = curveLoop();
    const slipped = silently(loop, ['flow', 'head']).map((one) => ({ ...one, head: 3.28 * (one.head ?? 0) }));
    const told = calibrated({ loop }, slipped);
    expect(told.parameters.map(({ name }) => name)).toEqual(['frictionOverHead']);
    expect(reasonsOf(told)).toContain('head implausible');
  });

  it('leaves readings of a stopped pump, and of settings that it has not, aside', () => {
    const loop = curveLoop();
    const told = calibrated({ loop }, [
      ...silently(loop, ['flow', 'power']),
      { time: 1, setting: 0, power: 3 },
      { time: 2, setting: 10, flow: 1e-3 },
    ]);
    expect(told.used).toBe(SETTINGS.length);
  });
});

describe('outlets that are shut at some readings', () => {
  const loop = pipedLoop();

  it('tell friction and head apart by flows alone', () => {
    const branches = 'discharge' in loop ? (loop.discharge.branches ?? []) : [];
    const closed: Loop = {
      ...pipedLoop(),
      ...('discharge' in loop
        ? {
            discharge: {
              ...loop.discharge,
              branches: branches.map((branch, place) =>
                place === 1 ? { ...branch, run: [...branch.run, { valve: 'ball', opening: 0 }] } : branch,
              ),
            },
          }
        : {}),
    };
    const withShut = SETTINGS.map((setting) => ({
      ...{ time: 0, setting, flow: trueDuty(closed, TRUTH, setting).flow },
      outletFlows: { near: 0 },
    }));
    // Many repeats, for shutting one outlet of two moves the flows little.
    const often = Array.from({ length: 40 }, () => [...silently(loop, ['flow']), ...withShut]).flat();
    const told = valuesOf(calibrated({ loop, meters: EXACT }, often));
    expectClose(told.friction ?? Number.NaN, TRUTH.friction, { relative: 1e-3 });
    expectClose(told.head ?? Number.NaN, TRUTH.head, { relative: 1e-3 });
  });

  it('say nothing where the pipework is not known', () => {
    const curve = curveLoop();
    const told = calibrated({ loop: curve }, [
      { time: 0, setting: 80, flow: 1e-3, outletFlows: { near: 0, far: 1e-3 } },
    ]);
    expect(told.used).toBe(0);
  });
});

describe('the noise of the meters', () => {
  it('widens the intervals as it grows', () => {
    const loop = curveLoop();
    const widthAt = (flow: number): number => {
      const normal = normals(7);
      const measured = readings(
        { loop, truth: TRUTH, settings: SETTINGS, times: 12 },
        { noise: { ...NOISE, flow }, normal, kinds: ['flow', 'power'] },
      );
      return calibrated({ loop }, measured).parameters[0]?.standardError ?? Number.NaN;
    };
    const widths = [0.01, 0.03, 0.09].map(widthAt);
    expect(widths).toEqual(widths.toSorted((a, b) => a - b));
  });

  it('counts the same, reading by reading or with its repeats in another order', () => {
    const loop = curveLoop();
    const normal = normals(3);
    const kinds: Kinds = ['flow', 'head', 'power'];
    const measured = readings(
      { loop, truth: TRUTH, settings: SETTINGS, times: 5 },
      { noise: NOISE, normal, kinds },
    );
    const there = calibrated({ loop }, measured).parameters;
    const back = calibrated({ loop }, measured.toReversed()).parameters;
    for (const [index, { standardError }] of there.entries()) {
      expectClose(back[index]?.standardError ?? Number.NaN, standardError, { relative: 1e-6 });
    }
  });
});
