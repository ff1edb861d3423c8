import { describe, expect, it } from 'vitest';
import { conditionOf } from '../../../models/condition/condition.ts';
import { predictedAt } from '../../../models/condition/predicted.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { expectClose } from '../../expect-close.ts';
import { normals } from '../calibration/synthetic.ts';
import { LITRE_PER_HOUR } from '../example-loops.ts';
import { DAY, NO_COSTS, readingsOf, START, stationWith, YEAR } from './synthetic.ts';

const SETTING = 80;
/** Standard deviation of a reading, as a share. */
const NOISE = 0.03;
const station = stationWith();
const condition = (readings: readonly Reading[]) =>
  conditionOf({ station, setting: SETTING, readings, price: 0.21, cleanings: [], costs: NO_COSTS });

const expected = predictedAt(station, SETTING);
if (expected === null) throw new Error('nothing flows');

/** Readings of a total flow that falls by a share of the prediction each year, in a straight line. */
const falling = (perYear: number, { days = 200, noise = 0 } = {}): readonly Reading[] =>
  Array.from({ length: days }, (_, i) => ({
    time: START + i * DAY,
    setting: SETTING,
    flow: expected.flow * (1 - (perYear * i * DAY) / YEAR + noise * Math.sin(12.9898 * i * i)),
  }));

/** The number in 0..1 above which something no longer holds. */
function halved(isBelow: (share: number) => boolean): number {
  let [low, high] = [0, 1];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (isBelow(middle)) low = middle;
    else high = middle;
  }
  return high;
}

describe('the date of a shortfall', () => {
  const far = station.loop.system.outlets.findIndex(({ name }) => name === 'far end');
  // The share of the total at which the far end just gets its flow, by halving.
  const need = halved(
    (share) =>
      (station.loop.system.stateAt(share * expected.flow).outletFlows[far] ?? 0) < 3000 * LITRE_PER_HOUR,
  );

  it('is when a straight fall meets the required flow of the limiting outlet', () => {
    const { shortfall } = condition(falling(0.1));
    expect(shortfall?.outlet).toBe('far end');
    expectClose(shortfall?.at ?? 0, START + ((1 - need) / 0.1) * YEAR, { absolute: 10_000 });
    expectClose(shortfall?.interval.earliest ?? 0, shortfall?.at ?? 0, { absolute: 10_000 });
  });

  it('lies within its interval, which noise widens', () => {
    const { shortfall } = condition(falling(0.1, { noise: 0.02 }));
    if (shortfall === null || shortfall.interval.latest === null) throw new Error('no interval');
    const { earliest, latest } = shortfall.interval;
    expect(earliest).toBeLessThan(shortfall.at);
    expect(shortfall.at).toBeLessThan(latest);
    const truth = START + ((1 - need) / 0.1) * YEAR;
    expect(earliest).toBeLessThan(truth);
    expect(truth).toBeLessThan(latest);
  });

  /** Seeded readings of a flow that falls by a share a year, under normal noise that one day may pass on to the next. */
  const noisy = (seed: number, { perYear = 0, days = 60, passedOn = 0 }): readonly Reading[] => {
    const normal = normals(seed);
    let off = 0;
    return Array.from({ length: days }, (_, i) => {
      off = passedOn * off + NOISE * Math.sqrt(1 - passedOn ** 2) * normal();
      const flow = expected.flow * (1 - (perYear * i * DAY) / YEAR + off);
      return { time: START + i * DAY, setting: SETTING, flow };
    });
  };
  const SEEDS = Array.from({ length: 150 }, (_, i) => i + 1);

  it('is none of noise alone, nor of noise that lasts for days', () => {
    const alarms = (passedOn: number) =>
      SEEDS.filter((seed) => condition(noisy(seed, { passedOn })).shortfall !== null).length;
    expect(alarms(0)).toBeLessThanOrEqual(1);
    expect(alarms(0.7)).toBeLessThanOrEqual(3);
  });

  it.each([120, 160, 170, 200, 328])('is within its interval in nine of ten runs of %i days', (days) => {
    const truth = START + ((1 - need) / 0.3) * YEAR;
    const told = SEEDS.flatMap((seed) => condition(noisy(seed, { perYear: 0.3, days })).shortfall ?? []);
    expect(told.length).toBe(SEEDS.length);
    const inside = told.filter(
      ({ interval: { earliest, latest } }) =>
        earliest <= truth && truth <= (latest ?? Number.POSITIVE_INFINITY),
    );
    expect(inside.length).toBeGreaterThanOrEqual(0.9 * SEEDS.length);
  });

  it('is none after a cleaning that nobody entered', () => {
    const readings = noisy(1, { days: 300 }).map((one, i) => ({
      ...one,
      flow: (one.flow ?? 0) * (i < 260 ? 1 - (0.15 * i) / 260 : 1),
    }));
    expect(condition(readings).shortfall).toBeNull();
  });

  it('has been since the first reading where all are alike and short', () => {
    const steady = Array.from({ length: 12 }, (_, i) => ({
      time: START + 3 * i * DAY,
      setting: SETTING,
      flow: 0.8 * expected.flow,
    }));
    expect(condition(steady).shortfall).toMatchObject({ outlet: 'far end', at: START });
  });

  it('has passed where the flow is below already', () => {
    const { shortfall } = condition(falling(0.4));
    expect(shortfall?.at).toBeLessThan(START + 200 * DAY);
    const steady = falling(0).map((one) => ({ ...one, flow: 0.8 * expected.flow }));
    expect(condition(steady).shortfall?.outlet).toBe('far end');
  });

  it('has passed where the flow fell at once, however slow the trend through all of it', () => {
    for (const seed of [1, 2, 3, 4, 5]) {
      const readings = Array.from({ length: 365 }, (_, i) => ({
        time: START + i * DAY,
        setting: SETTING,
        flow: expected.flow * (i < 335 ? 1 : 0.6) * (1 + 0.01 * Math.sin(12.9898 * (i + seed) ** 2)),
      }));
      const { shortfall } = condition(readings);
      expect(shortfall).not.toBeNull();
      expect(shortfall?.at ?? Number.NaN).toBeLessThanOrEqual(START + 364 * DAY);
    }
  });

  it('is none while the flow rises or stands, or falls too slowly to tell of', () => {
    for (const perYear of [-0.1, 0, 0.001]) expect(condition(falling(perYear)).shortfall).toBeNull();
  });

  it('says nothing of outlets that were not measured by the fall of one that was', () => {
    const left = expected.outletFlows[1] ?? Number.NaN;
    const readings = falling(0).map(({ time, setting }, i) => ({
      ...{ time, setting },
      outletFlows: { left: left * (1 - (0.05 * i * DAY) / YEAR) },
    }));
    const told = condition(readings);
    expect(told.assessed[0]?.trend?.interval.high).toBeLessThan(0);
    expect(told.shortfall?.outlet).not.toBe('far end');
  });

  it('goes by the flow of the outlet itself where that was measured', () => {
    const readings = falling(0).map((one, i) => ({
      ...one,
      outletFlows: { left: (expected.outletFlows[1] ?? 0) * (1 - (0.5 * i * DAY) / YEAR) },
    }));
    expect(condition(readings).shortfall?.outlet).toBe('left');
  });
});

describe('the trend of the residuals', () => {
  const clogging = { days: 365, settings: [70, 80], fault: (passed: number) => ({ intake: 12 * passed }) };
  const slopeOf = (readings: readonly Reading[]): number => {
    const flow = condition(readings).assessed.find(({ measure }) => measure === 'flow');
    return flow?.trend?.slope ?? Number.NaN;
  };

  it('is moved by less than 5 % by one wild reading in ten', () => {
    const clean = slopeOf(readingsOf({ ...clogging, noise: 0.01 }));
    expect(clean).toBeLessThan(-0.05);
    for (let seed = 1; seed <= 8; seed += 1) {
      const steady = readingsOf({ ...clogging, noise: 0.01, seed });
      // Some of the same readings, wild.
      const wild = steady.map((one, i) =>
        (i * 7919 + seed) % 10 === 0 && one.flow !== undefined
          ? { ...one, flow: (2 + (i % 4)) * one.flow }
          : one,
      );
      expect(Math.abs(slopeOf(wild) / slopeOf(steady) - 1)).toBeLessThan(0.05);
    }
  });

  it('is the same by minutes as by days', () => {
    const days = falling(0.1);
    const often = days.flatMap((one) => [0, 1, 2].map((i) => ({ ...one, time: one.time + i * 60_000 })));
    expectClose(slopeOf(often), slopeOf(days), { relative: 1e-3 });
  });
});
