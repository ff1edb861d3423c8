/** The controller script against the service itself. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type RunningServer, startServer } from '../../api/server.ts';
import { type Facility, facility } from '../api/features/schedule/facility.ts';
import { type ControllerBench, controllerBench } from './controller-bench.ts';

let bench: ControllerBench;
let lab: Facility;
let server: RunningServer;
let now: () => number;
beforeEach(async () => {
  bench = controllerBench();
  now = () => Date.now();
  lab = await facility({ change: { clock: () => new Date(now()) } });
  server = await startServer({ fetch: (request) => lab.api.app.fetch(request), host: '127.0.0.1', port: 0 });
  bench.endsToo({ close: () => server.stop() });
});
afterEach(() => bench.dispose());

describe('the script and the service', () => {
  it('agree on a setpoint, on its fallback, and on a reading', async () => {
    const READ = bench.command('read', "printf 'power 85.7\\nflow 7533\\n'");
    const path = `/v1/loops/${lab.loop}`;
    const loop = { ...(await (await lab.send('GET', path)).json()), key: 'kelp-flume' };
    expect((await lab.send('PUT', path, loop, { 'if-match': '*' })).status).toBe(200);
    const variables = { SERVICE: server.url, LOOP: 'kelp-flume', READ };
    expect(await bench.run(variables)).toMatchObject({ code: 0, applied: ['70'] });
    const started = Date.now();
    expect(await bench.run(variables)).toMatchObject({ code: 0, applied: ['70', '70'], errors: '' });
    const { items } = await (await lab.send('GET', `/v1/loops/${lab.loop}/readings`)).json();
    expect(items).toHaveLength(1);
    expect(items[0]).toMatchObject({ setting: 70, power: 85.7, flow: 7533 });
    expect(Math.abs(Date.parse(items[0].time) - started)).toBeLessThan(30_000);
    const dead = await bench.run({ ...variables, SERVICE: 'http://127.0.0.1:1' });
    expect(dead).toMatchObject({ code: 1, applied: ['70', '70', '70'] });
  });

  it('say that a loop is not there', async () => {
    const { code, applied, errors } = await bench.run({ SERVICE: server.url, LOOP: 'none' });
    expect([code, applied]).toEqual([1, ['55']]);
    const { detail } = await (await lab.send('GET', '/v1/loops/none/setpoint')).json();
    expect(errors).toContain(`the service answered 404: ${detail}; falling back to 55`);
  });

  it('stop the pump in the hours in which its schedule lets it stop', async () => {
    const volume = { volume: 20_000, mayStop: true };
    const schedule = { phases: [{ name: 'all day', from: '00:00', dailyVolume: volume }] };
    expect((await lab.send('PUT', `/v1/loops/${lab.loop}/schedule`, schedule)).status).toBe(201);
    const { items } = await (await lab.send('GET', `/v1/loops/${lab.loop}/setpoints`)).json();
    const stop = items.find(({ setting }: { setting: number }) => setting === 0);
    now = () => Date.parse(stop.from);
    const ended = await bench.run({ SERVICE: server.url, LOOP: lab.loop, MIN: '30' });
    expect(ended).toMatchObject({ code: 0, applied: ['0'] });
  });

  it('dial what the service gives where no setting is feasible, and say so', async () => {
    const path = `/v1/loops/${lab.loop}`;
    const schedule = { phases: [{ name: 'all day', from: '00:00', factor: 10 }] };
    expect((await lab.send('PUT', `${path}/schedule`, schedule)).status).toBe(201);
    const { setting, feasible } = await (await lab.send('GET', `${path}/setpoint`)).json();
    expect(feasible).toBe(false);
    const ended = await bench.run({ SERVICE: server.url, LOOP: lab.loop });
    expect(ended).toMatchObject({ code: 4, applied: [String(setting)] });
    expect(ended.errors).toContain(
      'infeasible: not-enough-head. Danger: No setting is feasible in phase "all day".',
    );
  });
});
