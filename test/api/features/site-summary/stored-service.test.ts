/** A pump's own service and the check that is stored for it are the same work. */
import { beforeEach, describe, expect, it } from 'vitest';
import { expectClose } from '../../../expect-close.ts';
import { created, example, type Json, sent } from '../../requests.ts';
import { summaryOf } from './read-summary.ts';
import { type Station, station } from './world.ts';

let app: Station;
beforeEach(async () => {
  app = await station();
});

const check = (facts: Json): Json => ({
  name: 'Service the wet end',
  kind: 'wet-end-service',
  every: 'P6M',
  minutes: 60,
  parts: 10,
  firstDue: '2026-03-01',
  ...facts,
});

const tasksOf = async () => (await summaryOf(app)).upkeep.tasks;

describe('the attention of a site', () => {
  it('counts the service of a pump once, also where it is stored as a check', async () => {
    const before = (await summaryOf(app)).upkeep;
    await app.call(`/v1/loops/${app.loops.flume}/starter-tasks`, sent('POST', {}));
    const { tasks, service, annualHours: hours } = (await summaryOf(app)).upkeep;
    expect(service).toEqual(before.service);
    // By hand: the screen 10 min a week, the residual-current device 2 min a month.
    expectClose(tasks.annualHours, ((365 / 7) * 10 + 12 * 2) / 60, { relative: 1e-5 });
    expect(tasks.annualParts).toBe(0);
    expectClose(hours, service.annualHours + tasks.annualHours, { relative: 1e-5 });
  });

  it('counts the check where the installed pump states no service, or there is none', async () => {
    const { service: _stated, ...silent } = example('pump-canister-250.json');
    const pump = await created(app, '/v1/pumps', silent);
    const flume = example('loop-kelp-flume.json');
    const installed = { pump, count: 1, setting: 80 };
    const loop = await created(app, '/v1/loops', { ...flume, installed });
    await created(app, '/v1/maintenance-tasks', check({ loop }));
    expect(await tasksOf()).toMatchObject({ annualHours: 2, annualParts: 20 });
    const bare = await created(app, '/v1/loops', flume);
    await created(app, '/v1/maintenance-tasks', check({ loop: bare }));
    expect(await tasksOf()).toMatchObject({ annualHours: 4, annualParts: 40 });
    await created(app, '/v1/maintenance-tasks', check({ pump }));
    expect(await tasksOf()).toMatchObject({ annualHours: 6, annualParts: 60, annualCost: 6 * 30 + 60 });
  });
});
