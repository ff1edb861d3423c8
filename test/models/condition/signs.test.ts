/** Verdicts that rest on more than the level of one measure. */
import { describe, expect, it } from 'vitest';
import { type Condition, conditionOf } from '../../../models/condition/condition.ts';
import { predictedAt, type Station } from '../../../models/condition/predicted.ts';
import type { PipeworkLoop } from '../../../models/loop/loop.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { expectClose } from '../../expect-close.ts';
import { normals } from '../calibration/synthetic.ts';
import { LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe } from '../example-loops.ts';
import { DAY, readingsOf, START, stationWith, YEAR } from './synthetic.ts';

const conditionAt = (station: Station, setting: number, readings: readonly Reading[]): Condition =>
  conditionOf({
    ...{ station, setting, readings, cleanings: [], price: 0.2 },
    costs: { cleaning: 15, service: 90 },
  });

/** Daily readings of what a station gives. */
function readAt(station: Station, setting: number, days = 40): readonly Reading[] {
  const normal = normals(7);
  const truth = predictedAt(station, setting);
  if (truth === null) throw new Error('nothing flows');
  return Array.from({ length: days }, (_, i) => ({
    ...{ time: START + i * DAY, setting },
    flow: truth.flow * (1 + 0.01 * normal()),
    power: truth.power * (1 + 0.01 * normal()),
  }));
}

describe('several pumps', () => {
  const two: Station = { ...stationWith(), count: 2 };

  it('of which one stands still are told apart from a worn one', () => {
    const found = conditionAt(two, 60, readAt({ ...two, count: 1 }, 60));
    expect([found.verdict, found.running, found.waiting]).toEqual(['pump-stopped', 1, null]);
  });

  it('that all run are as expected', () => {
    const found = conditionAt(two, 60, readAt(two, 60));
    expect([found.verdict, found.running]).toEqual(['as-expected', null]);
  });
});

describe('a remedy', () => {
  const course = (fault: (t: number) => object) =>
    ({ days: 300, settings: [80], meters: ['flow', 'power', 'pressures'], fault }) as const;

  it('is a cleaning of what clogs, and costs what that costs', () => {
    const found = conditionAt(stationWith(), 80, readingsOf(course((t) => ({ intake: 25 * t }))));
    expect([found.verdict, found.remedy]).toEqual(['clogged-intake', 'cleaning']);
    expect(found.waiting?.cleaning?.cost).toBe(15);
  });

  it('is a service of what wears or fouls', () => {
    const worn = conditionAt(stationWith(), 80, readingsOf(course((t) => ({ head: 1 - 0.2 * t }))));
    expect([worn.verdict, worn.remedy]).toEqual(['worn-pump', 'service']);
    expect(worn.waiting?.cleaning?.cost).toBe(90);
    const fouled = conditionAt(stationWith(), 80, readingsOf(course((t) => ({ power: 1 + 0.2 * t }))));
    expect(fouled.remedy).toBe('service');
  });

  it('comes before an outlet falls short, where that is sooner than it would be cheapest', () => {
    const found = conditionAt(stationWith(), 80, readingsOf(course((t) => ({ intake: 25 * t }))));
    const { cleaning, growthPerYear = Number.NaN } = found.waiting ?? {};
    const cheapest = Math.sqrt((2 * 15) / growthPerYear);
    const years = found.shortfall?.years ?? Number.POSITIVE_INFINITY;
    expectClose(cleaning?.everyYears ?? Number.NaN, Math.min(cheapest, years), { relative: 1e-12 });
    const dear = conditionOf({
      ...{ station: stationWith(), setting: 80, cleanings: [], price: 0.2 },
      readings: readingsOf(course((t) => ({ intake: 25 * t }))),
      costs: { cleaning: 5_000, service: null },
    });
    expect(dear.waiting?.cleaning).toMatchObject({ everyYears: years, endsAtShortfall: true });
  });
});

describe('a pump that draws more and moves less', () => {
  it('is told with the clog that pressures show besides', () => {
    const readings = readingsOf({
      days: 60,
      meters: ['flow', 'power', 'pressures'],
      fault: () => ({ intake: 25, power: 1.25 }),
    });
    const found = conditionAt(stationWith(), 80, readings);
    expect([found.verdict, found.also]).toEqual(['draws-more-than-its-curve', 'clogged-intake']);
  });
});

describe('pressures elsewhere beside the flow expected', () => {
  it('are a matter of entries, not of a fault', () => {
    const readings = readingsOf({ days: 60, meters: ['flow', 'power', 'pressures'] }).map((one) => ({
      ...one,
      suctionPressure: (one.suctionPressure ?? 0) - 4_000,
      dischargePressure: (one.dischargePressure ?? 0) - 4_000,
    }));
    expect(conditionAt(stationWith(), 80, readings).verdict).toBe('no-known-fault');
  });
});

describe('outlets at unlike heights', () => {
  const lifted = (requiredFlow: number): PipeworkLoop =>
    loopOf({
      run: [pipe(0.0375, 2.5)],
      branches: [
        outlet('low', { requiredFlow: 1000 * LITRE_PER_HOUR, nozzleDiameter: 0.02 }, [pipe(0.03, 3)]),
        outlet('high', { requiredFlow, staticHead: 0.8, nozzleDiameter: 0.02 }, [pipe(0.03, 3)]),
      ],
    });
  const station = (need: number): Station => ({ ...stationWith(), loop: modelOf(lifted(need)) });

  it('fall short by the shares of the loop at the total that is left, not by that of the total', () => {
    const open = predictedAt(station(1 * LITRE_PER_HOUR), 80);
    if (open === null) throw new Error('nothing flows');
    const before = station((open.outletFlows[1] ?? Number.NaN) * 0.9);
    const readings = Array.from({ length: 200 }, (_, i) => ({
      ...{ time: START + i * DAY, setting: 80, flow: open.flow * (1 - (0.06 * i * DAY) / YEAR) },
    }));
    const { shortfall } = conditionAt(before, 80, readings);
    expect(shortfall?.outlet).toBe('high');
    // At the total of that day the outlet gets just what it needs, by the loop itself.
    const passed = ((shortfall?.at ?? Number.NaN) - START) / YEAR;
    const { outletFlows } = before.loop.system.stateAt(open.flow * (1 - 0.06 * passed));
    expectClose((outletFlows[1] ?? 0) / (0.9 * (open.outletFlows[1] ?? 0)), 1, { absolute: 1e-6 });
    // The total has then fallen by less than the tenth that the outlet has.
    expect(0.06 * passed).toBeLessThan(0.09);
  });
});
