import { describe, expect, it } from 'vitest';
import { type Condition, conditionOf } from '../../../models/condition/condition.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { type Course, readingsOf, stationWith } from './synthetic.ts';

const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8];

const judged = (
  readings: readonly Reading[],
  facts: { price?: number; cleaningCost?: number } = {},
): Condition =>
  conditionOf({
    station: stationWith(),
    setting: 80,
    readings,
    price: facts.price ?? 0.21,
    cleanings: [],
    costs: { cleaning: facts.cleaningCost ?? null, service: facts.cleaningCost ?? null },
  });

const verdictOf = (course: Course) => judged(readingsOf(course)).verdict;

const ALL = ['flow', 'power', 'pressures'] as const;
const growing = (fault: (passed: number) => object): Course => ({
  days: 300,
  settings: [70, 80],
  meters: ALL,
  fault,
});

/** Faults that grow over most of a year, as they come with every meter, and what must be said. */
const FAULTS = [
  ['nothing', growing(() => ({})), 'as-expected'],
  ['an intake that clogs', growing((t) => ({ intake: 25 * t })), 'clogged-intake'],
  ['outlets that clog', growing((t) => ({ outlets: 0.9 * t })), 'clogged-discharge'],
  ['a pump that wears', growing((t) => ({ head: 1 - 0.2 * t })), 'worn-pump'],
  ['a pump that fouls', growing((t) => ({ power: 1 + 0.2 * t })), 'draws-more-than-its-curve'],
  [
    'a pump that fouls and wears',
    growing((t) => ({ power: 1 + 0.25 * t, head: 1 - 0.1 * t })),
    'draws-more-than-its-curve',
  ],
] as const;

describe('the verdict on a synthetic loop', () => {
  it.each(FAULTS)('with %s is right for every seed', (_, course, verdict) => {
    for (const seed of SEEDS) expect(verdictOf({ ...course, seed })).toBe(verdict);
  });

  it.each(FAULTS)('with %s is right with one wild reading in ten', (_, course, verdict) => {
    for (const seed of SEEDS) expect(verdictOf({ ...course, seed, wild: 0.1 })).toBe(verdict);
  });

  it.each([
    ['flow and power alone cannot tell where it clogs', ['flow', 'power'], { intake: 25 }, 'clogged'],
    ['flow alone cannot tell why', ['flow'], { intake: 25 }, 'flow-loss'],
    ['outlets stand for the flow', ['outlets', 'power'], { intake: 25 }, 'clogged'],
    [
      'a head on the curve of the pump tells that the loop resists',
      ['flow', 'head'],
      { intake: 25 },
      'clogged',
    ],
    ['a head beside the flow tells wear', ['flow', 'head'], { head: 0.8 }, 'worn-pump'],
    ['a fault of the first day on is told as well', ALL, { intake: 25 }, 'clogged-intake'],
  ] as const)('%s', (_, meters, fault, verdict) => {
    expect(verdictOf({ days: 40, meters, fault: () => fault })).toBe(verdict);
  });
});

describe('a clog that pressures place', () => {
  const power = (factor: number) =>
    judged(
      readingsOf({ days: 40, meters: ALL, fault: () => ({ intake: 25 }) }).map((one) => ({
        ...one,
        ...(one.power === undefined ? {} : { power: factor * one.power }),
      })),
    ).assessed.find(({ measure }) => measure === 'power')?.residual ?? Number.NaN;
  const verdictAt = (residual: number) => {
    const factor = (1 + residual) / (1 + power(1));
    return judged(
      readingsOf({ days: 40, meters: ALL, fault: () => ({ intake: 25 }) }).map((one) => ({
        ...one,
        ...(one.power === undefined ? {} : { power: factor * one.power }),
      })),
    ).verdict;
  };

  it('is placed whatever the power within its noise, and not beside a power that rises', () => {
    expect([-0.01, -0.0001, 0.0001, 0.01].map(verdictAt)).toEqual(Array(4).fill('clogged-intake'));
    expect(verdictAt(0.05)).not.toBe('clogged-intake');
  });
});

describe('a pump worn a little', () => {
  it('is told by its gauges before the flow shows much', () => {
    for (const seed of SEEDS) {
      expect(verdictOf({ days: 30, meters: ALL, seed, fault: () => ({ head: 0.88 }) })).toBe('worn-pump');
    }
  });
});

describe('a faultless loop', () => {
  it.each([3, 5, 30])('read %i times is hardly ever blamed, whatever is measured', (days) => {
    const seeds = Array.from({ length: 100 }, (_, i) => i + 1);
    const blamed = (meters: Course['meters']) =>
      seeds.filter((seed) => verdictOf({ days, seed, noise: 0.05, meters: meters ?? [] }) !== 'as-expected')
        .length;
    expect(blamed(['flow'])).toBeLessThanOrEqual(5);
    expect(blamed(ALL)).toBeLessThanOrEqual(5);
  });
});

describe('an outlet', () => {
  it('that alone gives far less than its data is named, whatever the total', () => {
    const readings = readingsOf({ days: 40, meters: ['flow', 'outlets'] }).map((one) => ({
      ...one,
      outletFlows: Object.fromEntries(
        Object.entries(one.outletFlows ?? {}).map(([name, flow], place) => [
          name,
          place === 0 ? 0.66 * flow : flow,
        ]),
      ),
    }));
    expect(judged(readings)).toMatchObject({ verdict: 'clogged-branch', places: ['far end'] });
  });
});

describe('a meter that was read long ago', () => {
  it('says nothing of now', () => {
    const early = readingsOf({ days: 100, meters: ['flow'], fault: (t) => ({ intake: 25 * t }) });
    const late = readingsOf({ days: 300, meters: ['power'] });
    const found = judged([...early, ...late].toSorted((a, b) => a.time - b.time));
    expect([found.verdict, found.shortfall, found.waiting]).toEqual(['as-expected', null, null]);
  });
});

describe('a doubtful meter', () => {
  const scaled = (change: (reading: Reading) => Reading) => judged(readingsOf({ days: 40 }).map(change));
  const flow = (factor: number) =>
    scaled((one) => ({ ...one, ...(one.flow === undefined ? {} : { flow: factor * one.flow }) }));
  const power = (factor: number) =>
    scaled((one) => ({ ...one, ...(one.power === undefined ? {} : { power: factor * one.power }) }));

  it.each([
    [3.785, 'gallons-and-litres'],
    [1 / 3.785, 'gallons-and-litres'],
    [60, 'hours-and-minutes'],
    [1 / 60, 'hours-and-minutes'],
    [2, null],
  ] as const)('reads %f times the flow', (factor, likely) => {
    const found = flow(factor);
    expect([found.verdict, found.slip?.meter, found.slip?.likely]).toEqual(['meter-fault', 'flow', likely]);
    expect([found.shortfall, found.waiting]).toEqual([null, null]);
  });

  it.each([
    [1.6, 'apparent-power'],
    [2, 'apparent-power'],
    [1 / 1000, 'watts-and-kilowatts'],
    [4, null],
  ] as const)('reads %f times the power', (factor, likely) => {
    const found = power(factor);
    expect([found.verdict, found.slip?.meter, found.slip?.likely]).toEqual(['meter-fault', 'power', likely]);
  });

  const beside = (change: (reading: Reading) => Reading) =>
    judged(readingsOf({ days: 40, meters: ['flow', 'power', 'head'] }).map(change));
  const head = (factor: number) =>
    beside((one) => ({ ...one, ...(one.head === undefined ? {} : { head: factor * one.head }) }));

  it.each([
    [10.03, 'kilopascals-and-metres'],
    [3.2808, 'feet-and-metres'],
    [1 / 3.2808, 'feet-and-metres'],
    [1.5, null],
    [0.8, null],
  ] as const)('reads %f times the head beside a flow as expected', (factor, likely) => {
    const found = head(factor);
    expect([found.verdict, found.slip?.meter, found.slip?.likely]).toEqual(['meter-fault', 'head', likely]);
  });

  it('reads a flow low that the head contradicts, from the first reading on', () => {
    const low = beside((one) => ({ ...one, ...(one.flow === undefined ? {} : { flow: 0.8 * one.flow }) }));
    expect([low.verdict, low.slip?.meter]).toEqual(['meter-fault', 'flow']);
  });

  it('is not blamed for a pump that comes to draw half as much again', () => {
    const course = growing((t) => ({ power: 1 + 0.6 * t }));
    expect(verdictOf(course)).toBe('draws-more-than-its-curve');
  });

  it('is not blamed for a clog while a flat power curve hardly shows it', () => {
    const readings = readingsOf({
      ...growing((t) => ({ intake: 640 * t })),
      settings: [80],
      meters: ['flow'],
    });
    const flat = readings.map((one, i) => ({ ...one, power: 126.6 * (1 - (0.2 * i) / readings.length) }));
    expect(judged(flat).verdict).toBe('clogged');
  });

  it('is doubted from the day on that its unit changed', () => {
    const readings = readingsOf({ days: 60 });
    const changed = readings.map((one, i) => (i < 47 ? one : { ...one, flow: (one.flow ?? 0) / 3.785 }));
    const found = judged(changed);
    expect([found.verdict, found.slip?.likely]).toEqual(['meter-fault', 'gallons-and-litres']);
  });

  it('is not blamed for a loop that clogs to a quarter of its flow', () => {
    expect(verdictOf({ ...growing((t) => ({ intake: 700 * t })), meters: ALL })).toBe('clogged-intake');
    expect(verdictOf({ ...growing((t) => ({ intake: 700 * t })), meters: ['flow'] })).toBe('flow-loss');
  });
});

describe('too few readings', () => {
  it('are no verdict', () => {
    const readings = readingsOf({ days: 2 });
    expect(judged(readings)).toMatchObject({ verdict: 'not-enough-readings', assessed: [], shortfall: null });
    expect(judged([]).verdict).toBe('not-enough-readings');
  });

  it('of a pump that was stopped, shut or set as it cannot be are left out', () => {
    const readings = readingsOf({ days: 10 });
    const [one] = readings;
    if (one === undefined) throw new Error('no reading');
    const more = [
      { time: one.time, setting: 0, power: 3 },
      { time: one.time, setting: 80, flow: 0, head: 3.1 },
      { time: one.time, setting: 12, flow: one.flow },
    ];
    const { used, leftOut } = judged([...more, ...readings]);
    expect(used).toBe(10);
    expect(leftOut).toEqual({ stopped: 1, shutValve: 1, otherSetting: 1 });
  });
});
