/** What causes move, against the table of signs and a separate solution. */
import { describe, expect, it } from 'vitest';
import { type CauseName, signaturesOf } from '../../../models/condition/signatures.ts';
import { type Gauge, gaugeOf } from '../../../models/readings/measure.ts';
import { expectClose } from '../../expect-close.ts';
import { FLUME, LIFTED, metered, PAIR, type Site } from '../../rates/stations.ts';
import { loopOf, outlet, pipe } from '../example-loops.ts';

const GAUGES: readonly Gauge[] = (
  ['flow', 'power', 'suctionPressure', 'dischargePressure', 'head'] as const
).map((measure) => gaugeOf(measure));

const of = (site: Site, cause: CauseName, gauges = GAUGES) =>
  signaturesOf(metered(site), { gauges, read: gauges.length }).filter((one) => one.cause === cause);

const near = (site: Site, cause: CauseName, magnitude: number, gauges = GAUGES) => {
  const [points = []] = of(site, cause, gauges).map((one) => one.points);
  const found = points.reduce((a, b) =>
    Math.abs(b.magnitude - magnitude) < Math.abs(a.magnitude - magnitude) ? b : a,
  );
  return { ...found, flow: found.shifts[0] ?? Number.NaN };
};

describe('the signs of a cause', () => {
  // Flow, power, suction pressure, discharge pressure, head of a loop whose pump draws more at more flow.
  it.each([
    ['clogged-intake', '- - - - +'],
    ['clogged-discharge', '- - + + +'],
    ['worn-pump', '- - + - -'],
    ['speed-low', '- - + - -'],
    ['less-resistance', '+ + - - -'],
  ] as const)('%s: %s', (cause, signs) => {
    const { shifts } = near(FLUME, cause, 0.15);
    expect(shifts.map((shift) => (shift > 0 ? '+' : '-')).join(' ')).toBe(signs);
  });

  it('of a pump that draws more is its power alone', () => {
    const { magnitude, shifts } = near(FLUME, 'draws-more', 0.12);
    expectClose(shifts[1] ?? Number.NaN, Math.log1p(magnitude), { relative: 2e-3 });
    expect(shifts.filter((shift) => Math.abs(shift) > 1e-9)).toHaveLength(1);
  });

  it('of a clogged branch: its outlet less, the others more', () => {
    const outlets = ['far end', 'left', 'right'].map((name) => gaugeOf('outletFlow', name));
    const far = of(FLUME, 'clogged-branch', outlets).find(
      ({ fault }) => fault?.outletNames?.join() === 'far end',
    );
    const [first = 0, left = 0, right = 0] =
      far?.points.find(({ magnitude }) => magnitude > 0.2)?.shifts ?? [];
    expect(first).toBeLessThan(-0.2);
    expect(left).toBeGreaterThan(0.01);
    expectClose(left, right, { relative: 1e-6 });
  });
});

describe('a magnitude', () => {
  it.each([
    ['flume', FLUME],
    ['static head', LIFTED],
  ] as const)('of a clog is the share of the flow that it takes: %s', (_, site) => {
    for (const cause of ['clogged-intake', 'clogged-discharge'] as const) {
      const { magnitude, flow } = near(site, cause, 0.2);
      expectClose(flow, Math.log1p(-magnitude), { relative: 5e-3 });
    }
  });

  it('of a slow pump is the share of its speed: without static head about that of the flow', () => {
    const { magnitude, flow } = near(FLUME, 'speed-low', 0.1);
    expectClose(flow, Math.log1p(-magnitude), { relative: 0.03 });
    // Power goes with about the cube.
    expect(near(FLUME, 'speed-low', 0.1).shifts[1]).toBeLessThan(2.2 * flow);
  });

  it('of a clogged intake lowers the suction pressure by what the clog loses', () => {
    const { magnitude, shifts } = near(FLUME, 'clogged-intake', 0.1);
    const loop = metered(FLUME);
    const entered = loop.shownAt(80);
    if (entered === null) throw new Error('no water moves');
    // At (1 - magnitude) Q0 the loop needs h(Q), about h0 (1 - magnitude)^1.9, and the pump gives the rest to the clog; the suction line
    // itself loses less: pump head and suction line are those of the same flow behind a clogged discharge.
    const behind = near(FLUME, 'clogged-discharge', 0.1).shifts;
    expectClose(magnitude, near(FLUME, 'clogged-discharge', 0.1).magnitude, { relative: 1e-12 });
    const clog = (behind[2] ?? 0) - (shifts[2] ?? 0);
    const pumpHead = 1 + (Math.exp(shifts[4] ?? 0) - 1);
    const needed = (1 - magnitude) ** 1.95;
    expectClose(clog, pumpHead - needed, { relative: 0.05 });
  });
});

describe('meters and pumps', () => {
  it('drift both ways, alone', () => {
    const drifts = of(FLUME, 'meter-drift');
    expect(drifts).toHaveLength(GAUGES.length);
    const [flow] = drifts;
    expect(flow?.points.map(({ factor = 1 }) => Math.sign(factor - 1)).toSorted()).toEqual([
      ...Array.from({ length: 32 }, () => -1),
      ...Array.from({ length: 32 }, () => 1),
    ]);
    for (const { shifts } of flow?.points ?? [])
      expect(shifts.slice(1).every((shift) => shift === 0)).toBe(true);
  });

  it('have priors that add up to one about', () => {
    const all = signaturesOf(metered(FLUME), { gauges: GAUGES, read: 2 });
    const whole = all.reduce((sum, { prior }) => sum + prior, 0);
    expectClose(whole, 0.22 + 0.22 + 0.2 + 0.15 + 0.1 + 0.05 + 0.04 + 2 * (0.05 + 0.01), { relative: 1e-9 });
  });

  it('of two pumps one can stop, of one none', () => {
    expect(of(FLUME, 'pump-stopped')).toEqual([]);
    const [stopped] = of(PAIR, 'pump-stopped');
    expect(stopped).toMatchObject({ pumpsRunning: 1 });
    // The pump that is left draws more than half of what both did, as it gives more than half of the flow.
    const power = Math.exp(stopped?.points[0]?.shifts[1] ?? 0);
    expect(power).toBeGreaterThan(0.5);
    expect(power).toBeLessThan(0.7);
  });
});

describe('an outlet that gives nothing as entered', () => {
  it('has no clog of its branch, and the others keep theirs', () => {
    const high = outlet('high', { nozzleDiameter: 0.02, staticHead: 50, exit: 'free' }, [pipe(0.03, 2)]);
    const low = outlet('low', { nozzleDiameter: 0.02 }, [pipe(0.03, 2)]);
    const loop = loopOf({ run: [pipe(0.0375, 4)], branches: [high, low] }, { name: 'Tower' });
    const found = of({ ...FLUME, loop }, 'clogged-branch');
    expect(found.map(({ fault }) => fault?.outletNames)).toEqual([['low']]);
    expect(of({ ...FLUME, loop }, 'clogged-intake')).toHaveLength(1);
  });
});
