/** What readings of common faults are answered with, from the reading to the sentence. */
import { beforeAll, describe, expect, it } from 'vitest';
import { expectClose } from '../../../expect-close.ts';
import type { MeasuredLoop } from '../../records/reading/measured-loop.ts';
import { created, example, sent } from '../../requests.ts';
import { conditionOf, daily, flume, instant, send } from './daily-readings.ts';

const CLOG = { cause: 'clogged-intake' } as const;
const METERS = { flow: 0.02, power: 0.01 };
const ALL = { ...METERS, pressures: 0.01 };
/** From the 45th day on a third of a percent of the flow a day. */
const growing = (day: number): number => Math.max(0, day - 45) * 0.0033;

describe('an intake that clogs', () => {
  let app: MeasuredLoop;
  beforeAll(async () => {
    app = await flume();
    await send(app, daily({ noise: ALL, days: 80, fault: CLOG, magnitude: growing }));
  });

  it('is named with its probability, its size, and what to do', async () => {
    const found = await conditionOf(app, '?price=0.21&cleaningCost=15');
    expect(found.verdict).toBe('clogged-intake');
    const [cause] = found.causes;
    expect(cause?.probability).toBeGreaterThan(0.9);
    expectClose(cause?.magnitude ?? 0, growing(76), { relative: 0.15 });
    expect(found.summary).toMatch(
      /^Loop "Kelp flume" has changed since its baseline \(2025-10-28 to 2025-11-24\)\. Flow is [\d.]+ % lower \(/,
    );
    expect(found.summary).toContain('Clean the screen and the suction.');
    expect(found.statistic?.value).toBeGreaterThan(16);
    expect(found.course).toBe('gradual');
    // It began 34 days before the last reading, and onsets are tried a week apart.
    expect(Date.parse(found.onset?.earliest ?? '')).toBeLessThanOrEqual(Date.parse(instant(34 - 7)));
    expect(Date.parse(found.onset?.latest ?? '')).toBeGreaterThanOrEqual(Date.parse(instant(34 + 7)));
    expect(found.entries.verdict).toBe('agree');
    expect(found.cautions.map(({ code }) => code)).toContain('isolate-before-service');
  });

  it('costs no more than what the highest setting draws, in conditional words', async () => {
    const found = await conditionOf(app, '?price=0.21&cleaningCost=15');
    const { waiting, summary } = found;
    // 245 W at most of this pump, 130 W in the baseline.
    expect(waiting?.nextYearCost).toBeGreaterThan(0);
    expect(waiting?.nextYearCost).toBeLessThan(8.76 * 0.21 * (250 - 125));
    expect(waiting?.cheapestInterval).toMatchObject({ costFrom: 'request', limitedByShortfall: true });
    expect(summary).toMatch(
      /If this goes on, outlet "far end" falls below required .* and the next year costs EUR [\d.]+ more\. Clean every \d+ days\.$/,
    );
  });

  it('was told from its noise while the flow had fallen by a few percent', async () => {
    const early = await conditionOf(app, `?to=${instant(20)}`);
    expect(early.verdict).toBe('clogged-intake');
    const before = await conditionOf(app, `?to=${instant(36)}`);
    expect(before.verdict).toBe('as-expected');
    expect(before.summary).toMatch(
      /^Loop "Kelp flume" has not changed since its baseline\. The readings show a clog/,
    );
  });

  it('brings the cleaning of the screen forward, and is judged by what that won back', async () => {
    const clogged = await flume();
    await send(clogged, daily({ noise: METERS, days: 80, fault: CLOG, magnitude: growing }));
    const task = { ...example('maintenance-task.json'), loop: clogged.loopId, firstDue: '2026-03-01' };
    const id = await created(clogged, '/v1/maintenance-tasks', task);
    const found = await conditionOf(clogged);
    expect(found.summary).toContain('Clean the screen first.');
    expect(found.cleaningTask).toMatchObject({ id, nextDue: '2026-01-15' });
    const listed = await (await clogged.call(`/v1/maintenance-tasks/${id}`)).json();
    expect(listed).toMatchObject({ nextDue: '2026-01-15' });
  });
});

describe('a cleaning that was entered as done', () => {
  it('restarts a complete baseline, the one before judging meanwhile, and states what it won back', async () => {
    const app = await flume();
    const cleanedAt = 66;
    const magnitude = (day: number) => (day < cleanedAt ? Math.max(0, day - 40) * 0.004 : 0);
    await send(app, daily({ noise: METERS, days: 80, fault: CLOG, magnitude }));
    const task = { ...example('maintenance-task.json'), loop: app.loopId };
    const id = await created(app, '/v1/maintenance-tasks', task);
    const at = new Date(Date.parse(instant(80 - cleanedAt)) + 3_600_000).toISOString();
    const done = await app.call(`/v1/maintenance-tasks/${id}/completions`, sent('POST', { at }));
    expect(done.status).toBe(201);
    const found = await conditionOf(app, '?include=cleanedAt');
    expect(found.verdict).toBe('as-expected');
    expect(found.baseline).toMatchObject({ startedBy: 'cleaning', complete: false, from: at });
    const effect = found.baseline?.cleaningEffect?.find(({ measure }) => measure === 'flow');
    expectClose(effect?.change ?? 1, 0, { absolute: 0.02 });
    expect(effect?.wonBack).toBeGreaterThan(0.02);
    expect(found.cleanedAt).toEqual([at]);
    expect(found.summary).toContain('than in the baseline before it.');
  });
});

describe('a flow meter that drifts low', () => {
  it('is called so, since power and pressures say otherwise', async () => {
    const app = await flume();
    const drift = (day: number) => 1 - Math.max(0, day - 40) * 0.004;
    await send(app, daily({ noise: ALL, days: 80, drift }));
    const found = await conditionOf(app);
    expect(found.verdict).toBe('meter-drift');
    expect(found.causes[0]).toMatchObject({ measure: 'flow' });
    expect(found.summary).toContain('Check the meter of the flow.');
    expect(found.waiting).toBeUndefined();
    expect(found.shortfallForecast).toBeUndefined();
  });
});

describe('entries that were never right', () => {
  it('are no change: friction entered 25 % low is answered with calibrate', async () => {
    const app = await flume({ frictionMultiplier: 0.75 });
    await send(app, daily({ noise: { ...METERS, head: 0.01 }, days: 60 }));
    const found = await conditionOf(app);
    expect(found.verdict).toBe('as-expected');
    expect(found.causes).toEqual([]);
  });

  it('are told by how far the first readings are off', async () => {
    const app = await flume();
    const actual = () => ({ power: 1.2 });
    await send(app, daily({ noise: { power: 0.01 }, days: 60, actual }));
    const found = await conditionOf(app);
    expect(found.verdict).toBe('as-expected');
    expect(found.entries.verdict).toBe('differ');
    expect(found.summary).toMatch(
      /The pump has drawn \d+ % more than entered since the first reading\. The entries, or a fault older than the readings, explain it: clean the screen, then calibrate\.$/,
    );
  });
});

describe('power alone', () => {
  it('says how large a clog must be for it to show', async () => {
    const app = await flume();
    await send(app, daily({ noise: { power: 0.01 }, days: 60 }));
    const found = await conditionOf(app);
    expect(found.verdict).toBe('as-expected');
    const clog = found.detectable.find(({ cause }) => cause === 'clogged-intake');
    // Power moves by 0.39 of the flow in its logarithm, from 7000 to 9000 L/h of the entered points. Two means of a month of 1 %
    // and a meter that wanders by 0.5 %: sqrt(1.08 (1/30 + 1/28) 0.01^2 + 0.005^2) = 0.57 %, 4.84 times that is 2.8 % of the power.
    expectClose(0.39 * Math.log1p(clog?.flowChange ?? 0), -0.028, { relative: 0.25 });
    expect(found.summary).toMatch(
      /Only power is read: it shows a clog once the flow is [\d.]+ % lower, but not where\. A weekly flow reading would show [\d.]+ %\./,
    );
  });

  it('with the flow 40 % down is a change', async () => {
    const app = await flume();
    await send(
      app,
      daily({ noise: { power: 0.01 }, days: 60, fault: CLOG, magnitude: (day) => (day < 42 ? 0 : 0.4) }),
    );
    const found = await conditionOf(app);
    expect(found.verdict).toBe('changed');
    expect(found.causes.length).toBeGreaterThan(1);
    expect(found.nextReading?.expected).toHaveLength(2);
    expect(found.summary).toContain('Too close to call: a clogged intake');
    expect(found.course).toBe('sudden');
  });
});

describe('a stopped pump', () => {
  it('is a danger at its first reading', async () => {
    const app = await flume();
    await send(app, daily({ noise: METERS, days: 60 }));
    await send(app, [{ time: instant(-0.1), setting: 80, power: 3 }]);
    const found = await conditionOf(app);
    expect(found.verdict).toBe('pump-stopped');
    expect(found.causes).toMatchObject([{ cause: 'pump-stopped', probability: 1, pumpsRunning: 0 }]);
    expect(found.cautions).toContainEqual(
      expect.objectContaining({ code: 'pump-stopped', severity: 'danger' }),
    );
    expect(found.summary).toMatch(
      /^Danger: The pump on loop "Kelp flume" is set to 80 % and moves no water\./,
    );
  });
});

describe('the first month', () => {
  it('is a baseline that forms, with what is below required', async () => {
    const app = await flume();
    await send(app, daily({ noise: METERS, days: 10, fault: CLOG, magnitude: () => 0.3 }));
    const found = await conditionOf(app);
    expect(found.verdict).toBe('baseline-forming');
    expect(found.baseline).toMatchObject({ startedBy: 'first-reading', dayCount: 10, complete: false });
    expect(found.belowRequired).toMatchObject([{ outlet: 'far end' }]);
    expect(found.summary).toMatch(
      /^The baseline of loop "Kelp flume" is forming: 10 of at least 8 days have readings since 2026-01-06\. It ends on 2026-02-03\. Outlet "far end" is below required: \d+ L\/h, required 3000 L\/h\./,
    );
  });

  it('is not blind to a change that needs no statistics', async () => {
    const app = await flume();
    await send(app, daily({ noise: METERS, days: 10, fault: CLOG, magnitude: (day) => (day < 5 ? 0 : 0.4) }));
    const found = await conditionOf(app);
    expect(found).toMatchObject({ verdict: 'changed', provisional: true });
  });
});

describe('a reading in another unit', () => {
  it('is set aside and named', async () => {
    const app = await flume();
    const readings = daily({ noise: METERS, days: 60 }).map((reading, day) =>
      day === 50 ? { ...reading, flow: Number(reading.flow) / 3.785 } : reading,
    );
    await send(app, readings);
    const found = await conditionOf(app);
    expect(found.verdict).toBe('as-expected');
    expect(found.setAside).toMatchObject([{ measure: 'flow', slip: 'gallons-and-litres' }]);
    expect(found.counts.setAside).toBe(1);
    expect(found.summary).toContain('1 value was set aside for a probable mix-up of gallons and litres.');
  });
});
