/** Readings brought together into rows, and which rows are computed. */
import { describe, expect, it } from 'vitest';
import { chosenRows } from '../../../models/calibration/chosen-rows.ts';
import { ROWS_MAX, type Row, rowCollector, type Station } from '../../../models/calibration/row-collector.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { expectClose } from '../../expect-close.ts';

const STATION: Station = {
  density: 1000,
  outlets: ['near', 'far'],
  knowsPipework: true,
  settings: { min: 30, max: 100 },
  gauges: undefined,
};

interface Rows {
  readonly rows: readonly Row[];
  readonly used: number;
}

const collected = (readings: readonly Reading[], station = STATION): Rows => {
  const collector = rowCollector(station);
  for (const reading of readings) collector.add(reading);
  return collector.rows();
};

const told = ({ rows }: Rows): readonly string[] =>
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
    expect(rows.rows.map(({ values }) => values.length)).toEqual([2, 2, 2, 2, 1, 1, 1, 1]);
    expect(rows.used).toBe(3);
  });

  it('take the velocity heads at unlike gauges into the head, where a flow shows them', () => {
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
    expectClose(heads[0]?.values[0] ?? Number.NaN, 1 + 15 / (2 * 9.80665), { relative: 1e-9 });
    expectClose(heads[1]?.values[0] ?? Number.NaN, 1, { relative: 1e-9 });
  });

  it('take the difference of both pressures for a head, and neither alone', () => {
    const { rows } = collected([
      { time: 0, setting: 80, suctionPressure: 2_000, dischargePressure: 21_613.3 },
      { time: 1, setting: 80, dischargePressure: 9_000 },
    ]);
    expect(rows).toHaveLength(1);
    expectClose(rows[0]?.values[0] ?? Number.NaN, 2, { relative: 1e-12 });
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

  it('name the meter that a head was read by, and keep instants', () => {
    const pressures = { suctionPressure: 2_000, dischargePressure: 21_613.3 };
    const { rows } = collected([
      { time: 5, setting: 80, head: 2.1 },
      { time: 6, setting: 80, ...pressures },
    ]);
    expect(rows.map(({ meter, times }) => [meter, ...times])).toEqual([
      ['head', 5],
      ['pressures', 6],
    ]);
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
  const row = (change: Partial<Row> = {}): Row => ({
    ...{ measure: 'flow', meter: 'flow', outlet: null, shut: [], zeroFlow: false },
    ...{ setting: 80, values: [1e-3], times: [0] },
    ...change,
  });
  const many = Array.from({ length: 40 }, (_, place) =>
    row({ setting: 30 + place, values: Array.from({ length: 1 + place }, () => 1e-3) }),
  );

  it('are all of them for a loop of a few branches', () => {
    expect(chosenRows(many, 5)).toEqual(many);
  });

  it('are those read most often for a loop of very many', () => {
    const kept = chosenRows(many, 2_000);
    expect(kept.map(({ values }) => values.length)).toEqual([40, 39, 38, 37]);
  });

  it('keep heads at no flow always, shut outlets before all others, then heads', () => {
    const still = row({ measure: 'head', zeroFlow: true });
    const shut = row({ setting: 31.5, shut: ['far'] });
    const head = row({ setting: 32.5, measure: 'head' });
    const kept = chosenRows([...many, still, shut, head], 2_000);
    expect(kept.slice(0, 3)).toEqual([still, shut, head]);
    expect(kept).toHaveLength(5);
  });
});
