/** The controller script against a service that lives, one that is dead, one that hangs, and some that lie. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type RunningServer, startServer } from '../../api/server.ts';
import { facility } from '../api/features/schedule/facility.ts';
import { type ControllerBench, controllerBench } from './controller-bench.ts';

let bench: ControllerBench;
beforeEach(() => {
  bench = controllerBench();
});
afterEach(() => bench.dispose());

const run: ControllerBench['run'] = (variables) => bench.run(variables);
const listening: ControllerBench['listening'] = (answer) => bench.listening(answer);
const saying: ControllerBench['saying'] = (setting, fallback) => bench.saying(setting, fallback);

describe('the controller script', () => {
  it('applies the setpoint of the live service, and remembers its fallback', async () => {
    const lab = await facility();
    const server: RunningServer = await startServer({
      fetch: (request) => lab.api.app.fetch(request),
      host: '127.0.0.1',
      port: 0,
    });
    bench.endsToo({ close: () => server.stop() });
    const first = await run({ SERVICE: server.url, LOOP: lab.loop });
    expect(first).toMatchObject({ code: 0, applied: ['70'] });
    const dead = await run({ SERVICE: 'http://127.0.0.1:1', LOOP: lab.loop });
    expect(dead).toMatchObject({ code: 1, applied: ['70', '70'] });
    const unknown = await run({ SERVICE: server.url, LOOP: 'none' });
    expect(unknown.code).toBe(1);
  });

  it('falls back where the service is dead', async () => {
    const { code, applied, errors } = await run({ SERVICE: 'http://127.0.0.1:1' });
    expect([code, applied]).toEqual([1, ['55']]);
    expect(errors).toContain('falling back to 55');
  });

  it('falls back where the service hangs, before the next minute', async () => {
    const started = Date.now();
    const { code, applied } = await run({ SERVICE: await listening(() => {}) });
    expect([code, applied]).toEqual([1, ['55']]);
    expect(Date.now() - started).toBeLessThan(15_000);
  });

  it('falls back where the answer stops half way', async () => {
    const half = await listening((_request, response) => {
      response.writeHead(200, { 'Content-Length': '2' });
      response.write('7');
    });
    expect(await run({ SERVICE: half })).toMatchObject({ code: 1, applied: ['55'] });
  });

  it.each([
    '',
    '-5',
    '101',
    '1e2',
    'NaN',
    '70 80',
    '70\n80',
    '7.0.1',
    '.',
    '<html>70</html>',
    '$(reboot)',
    "70'; reboot; '",
    '٧٠',
    '0x46',
    '70'.repeat(40),
  ])('falls back where the service lies: %j', async (lie) => {
    expect(await run({ SERVICE: await saying(lie) })).toMatchObject({ code: 1, applied: ['55'] });
  });

  it('falls back where a status says that there is no setpoint, whatever the body', async () => {
    const failing = await listening((_request, response) => {
      response.writeHead(500);
      response.end('70');
    });
    expect(await run({ SERVICE: failing })).toMatchObject({ code: 1, applied: ['55'] });
  });

  it('refuses a jump above its limit, from what it has applied before', async () => {
    expect(await run({ SERVICE: await saying('40'), MAX_JUMP: '15' })).toMatchObject({
      code: 0,
      applied: ['40'],
    });
    expect(await run({ SERVICE: await saying('55'), MAX_JUMP: '15' })).toMatchObject({ code: 0 });
    const { code, applied, errors } = await run({ SERVICE: await saying('71'), MAX_JUMP: '15' });
    expect([code, applied]).toEqual([1, ['40', '55', '60']]);
    expect(errors).toContain('a jump from 55 to 71 is above 15');
  });

  it('never applies what is outside its own limits, nor remembers such a fallback', async () => {
    const limits = { MIN: '30', MAX: '80' };
    expect(await run({ SERVICE: await saying('90'), ...limits })).toMatchObject({ code: 1, applied: ['55'] });
    expect(await run({ SERVICE: await saying('50', '5'), ...limits })).toMatchObject({ code: 0 });
    expect(await run({ SERVICE: 'http://127.0.0.1:1', ...limits })).toMatchObject({
      code: 1,
      applied: ['55', '50', '55'],
    });
  });

  it('sends its key by a header', async () => {
    const seen: (string | undefined)[] = [];
    const service = await listening((request, response) => {
      seen.push(request.headers.authorization);
      response.end('50');
    });
    expect(await run({ SERVICE: service, KEY: 'secret' })).toMatchObject({ code: 0, applied: ['50'] });
    expect(seen).toEqual(['Bearer secret', 'Bearer secret']);
  });

  it('says that the command failed, and does not remember what was not applied', async () => {
    const service = await saying('50');
    expect((await run({ SERVICE: service, APPLY: 'false' })).code).toBe(3);
    expect(existsSync(join(bench.folder, 'state', 'setting'))).toBe(false);
  });

  it.each([
    { LOOP: '' },
    { APPLY: '' },
    { STATE: '' },
    { FALLBACK: '' },
    { FALLBACK: '120' },
    { MAX_JUMP: 'x' },
    { TIMEOUT: '0' },
  ])('applies nothing without what it needs: %j', async (wrong) => {
    expect(await run({ SERVICE: await saying('50'), ...wrong })).toMatchObject({ code: 2, applied: [] });
  });
});
