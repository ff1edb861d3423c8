/** Readings brought together into rows, and which rows are computed. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tellingRows } from '../../../models/calibration/informative-rows.ts';
import {
  type Measured,
  type MeasuredRows,
  ROWS_MAX,
  rowCollector,
  type Station,
} from '../../../models/calibration/measured-rows.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { expectClose } from '../../expect-close.ts';
import { AT_ONCE } from './synthetic.ts';

const STATION: Station = {
  density: 1000,
  outlets: ['near', 'far'],
  knowsPipework: true,
  settings: { min: 30, max: 100 },
  gauges: undefined,
};

const collected = (readings: readonly Reading[], station = STATION): MeasuredRows => {
  const collector = rowCollector(station);
  for (const reading of readings) collector.add(reading);
  return collector.rows();
};

const told = ({ rows }: MeasuredRows): readonly string[] =>
  rows.map(({ measure, setting, outlet, shut, zeroFlow }) =>
    [measure, setting, outlet ?? '-', shut.join('+') || '-', zeroFlow ? 'shut' : 'open'].join(' '),
  );

describe('rows of readings', () => {
  it('take what a reading states, each measure of a setting once', () => {
    const reading = { setting: 80, flow: 2e-3, power: 120, head: 2, outletFlows: { far: 8e-4 } };
    const rows = collected([
      { time: 0, ...reading },
      { time: 1, ...reading },
      { time: 2, ...reading, setting: 60 },
    ]);
    expect(told(rows)).toEqual([
      'head 80 - - open',
      'flow 80 - - open',
      'power 80 - - open',
      'outletFlow 80 far - open',
      'head 60 - - open',
      'flow 60 - - open',
      'power 60 - - open',
      'outletFlow 60 far - open',
    ]);
    expect(rows.rows.map(({ count }) => count)).toEqual([2, 2, 2, 2, 1, 1, 1, 1]);
    expect(rows.used).toBe(3);
  });

  it('take the velocity heads at unlike gauges into the head, where a flow tells them', () => {
    const gauges = { suctionDiameter: 0.05, dischargeDiameter: 0.025 };
    const flow = (Math.PI / 4) * 0.05 ** 2;
    const pressures = { suctionPressure: 0, dischargePressure: 9.80665e3 };
    const { rows } = collected(
      [
        { time: 0, setting: 80, flow, ...pressures },
        { time: 1, setting: 70, ...pressures },
        { time: 2, setting: 60, flow: 0, ...pressures },
      ],
      { ...STATION, gauges },
    );
    const heads = rows.filter(({ measure }) => measure === 'head');
    // 1 m of water, and 1 m/s before the pump, 4 m/s behind it.
    expect(heads.map(({ setting }) => setting)).toEqual([80, 60]);
    expectClose(heads[0]?.mean ?? Number.NaN, 1 + 15 / (2 * 9.80665), { relative: 1e-9 });
    expectClose(heads[1]?.mean ?? Number.NaN, 1, { relative: 1e-9 });
  });

  it('take the difference of both pressures for a head, and neither alone', () => {
    const { rows } = collected([
      { time: 0, setting: 80, suctionPressure: 2_000, dischargePressure: 21_613.3 },
      { time: 1, setting: 80, dischargePressure: 9_000 },
    ]);
    expect(rows).toHaveLength(1);
    expectClose(rows[0]?.mean ?? Number.NaN, 2, { relative: 1e-12 });
  });

  it.each([
    {
      what: 'an outlet read at 0 for shut',
      reading: { flow: 2e-3, outletFlows: { near: 0, far: 2e-3 } },
      rows: ['flow 80 - near open', 'outletFlow 80 far near open'],
    },
    {
      what: 'no flow at all for a valve shut at the pump',
      reading: { flow: 0, head: 3, power: 60 },
      rows: ['head 80 - - shut'],
    },
    {
      what: 'all outlets at 0 for the same',
      reading: { outletFlows: { near: 0, far: 0 }, head: 3 },
      rows: ['head 80 - - shut'],
    },
    { what: 'nothing from a setting below the lowest', reading: { setting: 20, flow: 1e-3 }, rows: [] },
    { what: 'nothing from a stopped pump', reading: { setting: 0, power: 3 }, rows: [] },
    { what: 'nothing from a power of 0', reading: { power: 0 }, rows: [] },
  ])('take $what', ({ reading, rows }) => {
    expect(told(collected([{ time: 0, setting: 80, ...reading }]))).toEqual(rows);
  });

  it('leave readings with a shut outlet aside where the pipework is not known', () => {
    const reading = { time: 0, setting: 80, flow: 2e-3, outletFlows: { near: 0 } };
    expect(collected([reading], { ...STATION, knowsPipework: false })).toMatchObject({ rows: [], used: 0 });
  });

  it('carry the mean and the squares of any values, in any order', () => {
    const values = fc.array(fc.double({ min: 1e-4, max: 1e-2, noNaN: true }), {
      minLength: 2,
      maxLength: 30,
    });
    fc.assert(
      fc.property(values, (flows) => {
        const [row] = collected(flows.map((flow, time) => ({ time, setting: 50, flow }))).rows;
        const mean = flows.reduce((sum, flow) => sum + flow, 0) / flows.length;
        const squares = flows.reduce((sum, flow) => sum + (flow / mean - 1) ** 2, 0);
        expectClose(row?.mean ?? Number.NaN, mean, { relative: 1e-9 });
        expectClose(row?.spread ?? Number.NaN, squares, { relative: 1e-6, absolute: 1e-9 });
      }),
      { seed: 1 },
    );
  });

  it('are refused past their limit', () => {
    const collector = rowCollector({ ...STATION, settings: { min: 0, max: 1e6 } });
    const outcomes = Array.from({ length: ROWS_MAX + 1 }, (_, place) =>
      collector.add({ time: place, setting: place + 1, flow: 1e-3 }),
    );
    expect(outcomes.slice(0, -1).every((outcome) => outcome === null)).toBe(true);
    expect(outcomes.at(-1)).toEqual({ code: 'too-many-rows', limit: ROWS_MAX });
  });
});

describe('the rows that are computed', () => {
  const row = (change: Partial<Measured>): Measured => ({
    ...{ measure: 'flow', outlet: null, shut: [], zeroFlow: false },
    ...{ setting: 80, mean: 1e-3, count: 1, spread: 0, course: AT_ONCE },
    ...change,
  });
  const many = Array.from({ length: 40 }, (_, place) => row({ setting: 30 + place, count: 1 + place }));

  it('are all of them for a loop of a few branches', () => {
    expect(tellingRows(many, 5)).toEqual(many);
  });

  it('are those read most often for a loop of very many', () => {
    const kept = tellingRows(many, 2_000);
    expect(kept.map(({ count }) => count)).toEqual([40, 39, 38, 37]);
  });

  it('keep heads at no flow always, shut outlets before all others, then heads', () => {
    const still = row({ measure: 'head', zeroFlow: true });
    const shut = row({ setting: 31.5, shut: ['far'] });
    const head = row({ setting: 32.5, measure: 'head' });
    const kept = tellingRows([...many, still, shut, head], 2_000);
    expect(kept.slice(0, 3)).toEqual([still, shut, head]);
    expect(kept).toHaveLength(5);
  });
});
