/** Calibrations over HTTP: asked, put to use, undone, and what then rests on them. */
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { created, example, jsonOf, sent } from '../../requests.ts';
import { answered, refused } from '../../stocked-app.ts';
import {
  at,
  type CalibratedLoop,
  type CalibrationAnswer,
  calibrate,
  calibratedLoop,
} from './calibrated-loop.ts';

const TRUTH = { friction: 1.4, head: 0.93, power: 1.06 };
const SETTINGS = [50, 65, 80, 100];

type Kind = 'flow' | 'head' | 'power';

async function measured(app: CalibratedLoop, kinds: readonly Kind[]): Promise<void> {
  const duties = await Promise.all(SETTINGS.map((setting) => app.truly(setting)));
  await app.taken(
    SETTINGS.map((setting, place) => ({
      setting,
      ...Object.fromEntries(kinds.map((kind) => [kind, duties[place]?.[kind]])),
    })),
  );
}

async function loopRead(kinds: readonly Kind[] = ['flow', 'head', 'power']): Promise<CalibratedLoop> {
  const app = await calibratedLoop(TRUTH);
  await measured(app, kinds);
  return app;
}

const valuesOf = ({ parameters }: CalibrationAnswer) =>
  Object.fromEntries(parameters.map(({ name, value }) => [name, value]));

const versionOf = async ({ call, loop }: CalibratedLoop): Promise<string> =>
  (await call(loop)).headers.get('etag') ?? '';

const based = z.looseObject({
  dataBasis: z.enum(['entered', 'calibrated']),
  basis: z.looseObject({ loop: z.looseObject({ version: z.number() }) }),
});
const duty = based.extend({ flow: z.number(), power: z.number(), setting: z.number() });

describe('a calibration that is asked for', () => {
  it('tells the factors that the readings were made with', async () => {
    const told = await calibrate(await loopRead());
    for (const name of ['friction', 'head', 'power'] as const) {
      expectClose(valuesOf(told)[name] ?? Number.NaN, TRUTH[name], { relative: 2e-4 });
    }
    expect(told.notIdentifiable).toEqual([]);
    expect(told).toMatchObject({ applied: false, dataBasis: 'entered', counts: { used: 4, distinct: 12 } });
    expect(told.smallestMargin?.outlet).toBe('far end');
    expect(told.summary).toContain('Friction is 1.4 times the entered value');
    expect(told.cautions.map(({ code }) => code)).toContain('meter-bias');
  });

  it('answers flows of a loop without static head with the ratio alone, and the readings that would help', async () => {
    const told = await calibrate(await loopRead(['flow']));
    expect(Object.keys(valuesOf(told))).toEqual(['frictionOverHead']);
    expect(told.notIdentifiable.map(({ name, reason }) => [name, reason])).toEqual([
      ['friction', 'ratio-alone'],
      ['head', 'ratio-alone'],
      ['power', 'no-power-readings'],
    ]);
    expect(told.notIdentifiable[0]?.helpfulReadings).toContain('the head across the pump');
    expect(told.cautions.map(({ code }) => code)).toContain('ratio-as-friction');
    expect(told.nextReading?.remainingUncertainty?.standardError).toBeGreaterThan(0);
    const all = await calibrate(await loopRead(['flow']), { include: ['nextReadings'] });
    expect(all.nextReadings?.[0]).toEqual(told.nextReading);
  });

  it('names a reading to take next that leaves what was said, within 10 %', async () => {
    const app = await loopRead(['flow', 'power']);
    const next = (await calibrate(app)).nextReading;
    if (next === undefined) throw new Error('no reading is named');
    const { measure, setting, valveClosed = false, closedOutlets = [], predicted } = next;
    const reading = {
      ...{ time: at(100), setting, [measure]: predicted },
      ...(valveClosed ? { flow: 0 } : {}),
      ...(closedOutlets.length === 0
        ? {}
        : { outletFlows: Object.fromEntries(closedOutlets.map((name) => [name, 0])) }),
    };
    const posted = await app.call(`${app.loop}/readings`, sent('POST', { readings: [reading] }));
    expect(posted.status, JSON.stringify(await jsonOf(posted))).toBe(201);
    const after = await calibrate(app);
    expect(Object.keys(valuesOf(after))).toEqual(next.expectedParameters.map(({ name }) => name));
    for (const [place, { standardError }] of next.expectedParameters.entries()) {
      expectClose(after.parameters[place]?.standardError ?? Number.NaN, standardError, { relative: 0.1 });
    }
    expectClose(
      after.smallestMargin?.uncertainty?.standardError ?? Number.NaN,
      next.remainingUncertainty?.standardError ?? Number.NaN,
      { relative: 0.1 },
    );
  });

  it('takes the readings of its time alone', async () => {
    const app = await loopRead();
    const told = await calibrate(app, { from: at(1), to: at(3) });
    expect(told.counts.used).toBe(2);
    const none = await calibrate(app, { from: at(50) });
    expect(none).toMatchObject({ parameters: [], counts: { used: 0 } });
  });

  it('answers the same in other units', async () => {
    const app = await loopRead();
    const metric = await calibrate(app);
    const response = await app.call(`${app.calibration}?units=us`, sent('POST', {}));
    const us = await jsonOf(response);
    expect(us.parameters).toEqual(metric.parameters);
  });
});

describe('true speeds by gauge', () => {
  it('come as a speed map where the controller runs faster at low settings than entered', async () => {
    const app = await calibratedLoop({ friction: 1, head: 1, power: 1 });
    const speedMap = [
      { setting: 30, speed: 41 },
      { setting: 100, speed: 100 },
    ];
    const true250 = { ...example('pump-canister-250.json'), speedMap };
    const pump = await created(app, '/v1/pumps', true250);
    const heads = await Promise.all(
      [30, 50, 75, 100].map(async (setting) => {
        const response = await app.call(`${app.loop}/duty-point?pump=${pump}&setting=${setting}`);
        return { setting, head: (await answered(z.looseObject({ head: z.number() }), response)).head };
      }),
    );
    await app.taken(heads);
    const told = await calibrate(app);
    expect(told.measuredSpeedMap?.differs).toBe(true);
    expect(told.cautions.map(({ code }) => code)).toContain('speed-map-suspect');
    for (const { setting, speed } of told.measuredSpeedMap?.points ?? []) {
      expectClose(speed, 41 + ((setting - 30) * 59) / 70, { relative: 0.015 });
    }
    expect(told.measuredSpeedMap?.points.map(({ setting }) => setting)).toEqual([30, 50, 75, 100]);
  });

  it('are none where heads are read at one setting', async () => {
    const app = await calibratedLoop(TRUTH);
    const { head } = await app.truly(100);
    await app.taken([{ setting: 100, head }]);
    expect((await calibrate(app)).measuredSpeedMap).toBeUndefined();
  });
});

describe('a calibration that is put to use', () => {
  it('moves the loop on, and every answer about it rests on it from then on', async () => {
    const app = await loopRead();
    const before = await answered(duty, await app.call(`${app.loop}/duty-point`));
    expect(before.dataBasis).toBe('entered');
    const told = await calibrate(app, { apply: true }, { 'If-Match': await versionOf(app) });
    expect(told).toMatchObject({ applied: true, dataBasis: 'calibrated' });
    expect(told.basis.loop.version).toBe(2);
    const truth = await app.truly(80);
    const after = await answered(duty, await app.call(`${app.loop}/duty-point`));
    expect(after).toMatchObject({ dataBasis: 'calibrated', basis: { loop: { version: 2 } } });
    expectClose(after.flow, truth.flow, { relative: 1e-3 });
    expectClose(after.power, truth.power, { relative: 1e-3 });
    const paths = ['system-curve', 'recommendation', 'setpoint', 'setpoints'];
    for (const path of paths) {
      const answer = await answered(based, await app.call(`${app.loop}/${path}`));
      expect([path, answer.dataBasis]).toEqual([path, 'calibrated']);
    }
    const entered = await jsonOf(await app.call(app.loop));
    expect(entered).toMatchObject({ frictionMultiplier: 1, version: 2 });
  });

  it('chooses the setting that the true loop needs', async () => {
    const app = await loopRead();
    const best = z.looseObject({ best: z.looseObject({ setting: z.number() }) });
    const settingNow = async (assurance?: string) => {
      const body = {
        loop: app.loopId,
        pumps: [app.pumpId],
        ...(assurance === undefined ? {} : { assurance }),
      };
      return (await answered(best, await app.call('/v1/recommendations', sent('POST', body)))).best.setting;
    };
    const before = await settingNow();
    await calibrate(app, { apply: true }, { 'If-Match': '*' });
    const after = await settingNow();
    const farEnd = async (setting: number) =>
      (await app.truly(setting)).outlets.find(({ name }) => name === 'far end')?.flow ?? Number.NaN;
    expect(await farEnd(before)).toBeLessThan(3000);
    expect(await farEnd(after)).toBeGreaterThanOrEqual(3000);
    expect(await farEnd(after - 1)).toBeLessThan(3000);
    expect(await settingNow('calibration')).toBeGreaterThanOrEqual(after);
  });

  it('tells the assurance as it was asked for, and what it costs', async () => {
    // Flows alone leave much open of a loop whose nozzles take most of the head.
    const app = await loopRead(['flow']);
    await calibrate(app, { apply: true }, { 'If-Match': '*' });
    const body = { loop: app.loopId, pumps: [app.pumpId], price: 0.2, assurance: 'calibration' };
    const answer = await jsonOf(await app.call('/v1/recommendations', sent('POST', body)));
    expect(answer).toMatchObject({ assumptions: { assurance: 'calibration' }, dataBasis: 'calibrated' });
    const costs = z.object({ assuranceEffect: z.looseObject({ annualExtraCost: z.number() }) }).parse(answer);
    expect(costs.assuranceEffect.annualExtraCost).toBeGreaterThan(0);
  });

  it('carries over to the schedule', async () => {
    const app = await loopRead();
    await calibrate(app, { apply: true }, { 'If-Match': '*' });
    const put = await app.call(`${app.loop}/schedule`, sent('PUT', example('schedule.json')));
    expect(await jsonOf(put)).toMatchObject({ dataBasis: 'calibrated' });
  });

  it('is kept when the loop is renamed, and lapses when its pipework changes', async () => {
    const app = await loopRead();
    await calibrate(app, { apply: true }, { 'If-Match': '*' });
    const basisNow = async () => (await answered(duty, await app.call(`${app.loop}/duty-point`))).dataBasis;
    const { units: _, ...entered } = await jsonOf(await app.call(app.loop));
    const put = (change: object) =>
      app.call(app.loop, sent('PUT', { ...entered, ...change }, { 'If-Match': '*' }));
    expect((await put({ name: 'Kelp flume, long' })).status).toBe(200);
    expect(await basisNow()).toBe('calibrated');
    expect((await put({ frictionMultiplier: 1.2 })).status).toBe(200);
    expect(await basisNow()).toBe('entered');
  });

  it('multiplies the pump no longer once its points have changed, and says that it has aged', async () => {
    const app = await loopRead();
    await calibrate(app, { apply: true }, { 'If-Match': '*' });
    const cautions = z.object({ cautions: z.array(z.object({ code: z.string() })) });
    const codesAt = async (path: string) => {
      const told = await answered(cautions.loose(), await app.call(`${app.loop}/${path}`));
      return told.cautions.map(({ code }) => code);
    };
    expect(await codesAt('duty-point')).not.toContain('calibration-outdated');
    const powerNow = async () => (await answered(duty, await app.call(`${app.loop}/duty-point`))).power;
    const before = await powerNow();
    const document = { ...example('pump-canister-250.json'), powerPoints: [{ setting: 100, power: 200 }] };
    await app.call(`/v1/pumps/${app.pumpId}`, sent('PUT', document, { 'If-Match': '*' }));
    expect(await powerNow()).toBeLessThan(before);
    expect(await codesAt('duty-point')).toContain('calibration-outdated');
    expect(await codesAt('recommendation')).toContain('calibration-outdated');
  });
});

describe('a calibration that is undone', () => {
  it('goes back to the one before, then to the loop as entered, and keeps all of them', async () => {
    const app = await loopRead();
    const factorsNow = async () => {
      const items = z.array(z.looseObject({ sequence: z.number(), inUse: z.boolean() }));
      const list = await answered(z.looseObject({ items }), await app.call(app.calibration));
      return list.items.map(({ sequence, inUse }) => `${sequence} ${inUse}`);
    };
    expect(await factorsNow()).toEqual([]);
    await calibrate(app, { apply: true }, { 'If-Match': '*' });
    await calibrate(app, { apply: true, from: at(1) }, { 'If-Match': '*' });
    expect(await factorsNow()).toEqual(['2 true', '1 false']);
    const listed = await jsonOf(await app.call(app.calibration));
    expect(listed).toMatchObject({
      items: [
        { from: at(1), readingCount: 3 },
        { from: at(0), readingCount: 4 },
      ],
    });
    const undo = async () =>
      app.call(app.calibration, { method: 'DELETE', headers: { 'If-Match': await versionOf(app) } });
    expect((await undo()).status).toBe(204);
    expect(await factorsNow()).toEqual(['2 false', '1 true']);
    expect((await undo()).status).toBe(204);
    expect(await factorsNow()).toEqual(['2 false', '1 false']);
    expect((await refused(await undo())).code).toBe('not-found');
    const entered = await answered(duty, await app.call(`${app.loop}/duty-point`));
    expect(entered.dataBasis).toBe('entered');
  });
});
