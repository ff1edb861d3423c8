/** What readings can say. */
import { describe, expect, it } from 'vitest';
import { usableReadings } from '../../../models/condition/usable-readings.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { expectClose } from '../../expect-close.ts';
import { FLUME, metered } from '../../rates/stations.ts';

const DAY = 86_400_000;
const loop = metered(FLUME);
const shown = loop.shownAt(80);
if (shown === null) throw new Error('no water moves');
const { flow, power, head, suctionPressure: suction, outletFlows } = shown;

const sorted = (readings: readonly Partial<Reading>[]) =>
  usableReadings(
    loop,
    readings.map((reading, i) => ({ time: i * DAY, setting: 80, ...reading })),
    (time) => Math.floor(time / DAY),
  );

describe('readings of a stopped pump', () => {
  it.each([
    { what: 'a power of 1.5 standbys', reading: { power: 4.5 } },
    { what: 'a power of 5 % of the predicted', reading: { power: 0.05 * power } },
    { what: 'a flow under 2 %', reading: { flow: 0.019 * flow, power } },
    { what: 'no flow at any outlet', reading: { outletFlows: { 'far end': 0, left: 0, right: 0 } } },
  ])('show $what', ({ reading }) => {
    const found = sorted([{ flow, power }, reading]);
    expect(found.isStopped).toBe(true);
    expect(found.counts).toEqual({ used: 1, stopped: 1, closedValve: 0, rareSetting: 0 });
  });

  it('are those of the latest alone', () => {
    expect(sorted([{ power: 3 }, { power }]).isStopped).toBe(false);
  });

  it('are no such fault where the pump is set to 0', () => {
    const found = sorted([{ power }, { setting: 0, power: 3 }]);
    expect(found.isStopped).toBe(false);
    expect(found.counts.stopped).toBe(1);
  });

  it('do not show a pump that works against a closed valve', () => {
    const found = sorted([{ flow: 0, head: 3.2 }]);
    expect(found.isStopped).toBe(false);
    expect(found.counts.closedValve).toBe(1);
    expect(found.gauges.map(({ gauge }) => gauge)).toEqual([
      { measure: 'head', outlet: null, valveClosed: true },
    ]);
  });
});

describe('readings that count', () => {
  it('stand as ln(measured/predicted), pressures as shares of the predicted head', () => {
    const scale = loop.pressurePerHead * head;
    const found = sorted([{ flow: 0.9 * flow, suctionPressure: (suction ?? 0) - 0.04 * scale }]);
    const residual = (measure: string) =>
      found.gauges.find(({ gauge }) => gauge.measure === measure)?.values[0]?.residual ?? Number.NaN;
    expectClose(residual('flow'), Math.log(0.9), { relative: 1e-12 });
    expectClose(residual('suctionPressure'), -0.04, { relative: 1e-9 });
  });

  it('are held against their own setting, and none against a setting that the pump has not', () => {
    const at60 = loop.shownAt(60)?.flow ?? Number.NaN;
    const found = sorted([
      { setting: 60, flow: at60 },
      { setting: 20, flow: at60 },
    ]);
    expectClose(found.gauges[0]?.values[0]?.residual ?? Number.NaN, 0, { absolute: 1e-12 });
    expect(found.counts).toMatchObject({ used: 1, rareSetting: 1 });
  });

  it('are not those with an outlet closed', () => {
    const found = sorted([{ flow, outletFlows: { left: 0, right: outletFlows[2] ?? 0 } }]);
    expect(found.counts).toMatchObject({ used: 0, closedValve: 1 });
    expect(found.gauges).toEqual([]);
  });

  it('are counted a total once: stated, or as the sum of all outlets for a stopped pump alone', () => {
    const all = Object.fromEntries(loop.outlets.map(({ name }, i) => [name, outletFlows[i] ?? 0]));
    expect(sorted([{ outletFlows: all }]).gauges.map(({ gauge }) => gauge.outlet)).toEqual([
      'far end',
      'left',
      'right',
    ]);
  });
});

describe('single readings in another unit', () => {
  const days = Array.from({ length: 20 }, (_, i) => ({ flow: flow * (1 + 0.01 * Math.sin(7 * i)) }));

  it('are set aside and named', () => {
    const found = sorted(days.with(12, { flow: flow / 3.785412 }));
    expect(found.setAside).toMatchObject([
      { time: 12, slip: 'gallons-and-litres', gauge: { measure: 'flow' } },
    ]);
    expect(found.gauges[0]?.values).toHaveLength(19);
  });

  it('are a step, and stay, where the unit is another one for good', () => {
    const found = sorted(days.map((one, i) => (i < 8 ? one : { flow: one.flow / 3.785412 })));
    expect(found.gauges[0]?.values).toHaveLength(20);
  });
});
