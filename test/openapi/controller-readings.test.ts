/** What the controller script measures and posts, and that nothing of it disturbs the setting. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import type { ServerResponse } from 'node:http';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type ControllerBench, controllerBench, keepingService, setpoint } from './controller-bench.ts';

let bench: ControllerBench;
beforeEach(() => {
  bench = controllerBench();
});
afterEach(() => bench.dispose());

const GOOD = "printf 'power 85.7\\nflow 7533\\n'";

/** Two rounds, so that the setting is steady in the second. */
async function twoRounds(variables: Readonly<Record<string, string>>) {
  await bench.run(variables);
  return await bench.run(variables);
}

describe('the reading of a round', () => {
  it('is posted with the setting that the pump has run at, and the time', async () => {
    const { address, posted } = await keepingService(bench);
    const before = Date.now();
    const ended = await twoRounds({ SERVICE: address, READ: bench.command('read', GOOD) });
    expect(ended).toMatchObject({ code: 0, applied: ['70', '70'], errors: '' });
    expect(posted.map(({ url }) => url)).toEqual(['/v1/loops/kelp-flume/readings']);
    expect(posted[0]?.headers['content-type']).toBe('application/json');
    const { readings } = JSON.parse(posted[0]?.body ?? '');
    const [{ time, ...reading }] = readings;
    expect(reading).toEqual({ setting: 70, power: 85.7, flow: 7533 });
    expect(time).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/);
    expect(Math.abs(Date.parse(time) - before)).toBeLessThan(20_000);
  });

  it('is not taken where the setting has just changed, nor in the first round', async () => {
    const { address, posted } = await keepingService(bench);
    const READ = bench.command('read', GOOD);
    await bench.run({ SERVICE: address, READ });
    await bench.run({ SERVICE: (await keepingService(bench, { document: setpoint(71) })).address, READ });
    expect(posted).toEqual([]);
  });

  it('is not taken without a command for it', async () => {
    const { address, posted } = await keepingService(bench);
    await twoRounds({ SERVICE: address });
    expect(posted).toEqual([]);
  });

  it('may have every quantity, and numbers that JSON writes otherwise', async () => {
    const { address, posted } = await keepingService(bench, { document: setpoint(70.5) });
    const lines = 'power 085.70\\n\\nflow .5\\nhead 2.\\nsuctionPressure -12.5\\ndischargePressure 0\\n';
    await twoRounds({ SERVICE: address, READ: bench.command('read', `printf '${lines}'`) });
    const [{ time: _time, ...reading }] = JSON.parse(posted[0]?.body ?? '').readings;
    expect(reading).toEqual({
      setting: 70.5,
      power: 85.7,
      flow: 0.5,
      head: 2,
      suctionPressure: -12.5,
      dischargePressure: 0,
    });
  });

  it('carries the key by a header', async () => {
    const { address, posted } = await keepingService(bench);
    const KEY_FILE = join(bench.folder, 'key');
    writeFileSync(KEY_FILE, 'secret', { mode: 0o600 });
    await twoRounds({ SERVICE: address, READ: bench.command('read', GOOD), KEY_FILE });
    expect(posted[0]?.headers.authorization).toBe('Bearer secret');
  });

  it('is taken in an infeasible phase too, which still ends with 4', async () => {
    const document = setpoint(70, { feasible: false, reason: 'npsh' });
    const { address, posted } = await keepingService(bench, { document });
    const ended = await twoRounds({ SERVICE: address, READ: bench.command('read', GOOD) });
    expect([ended.code, posted.length]).toEqual([4, 1]);
  });

  it('is not taken on the way to a setting, nor in the round that arrives', async () => {
    const { address, posted } = await keepingService(bench);
    const READ = bench.command('read', GOOD);
    await bench.run({ SERVICE: (await keepingService(bench, { document: setpoint(50) })).address });
    const applied: (string | undefined)[] = [];
    for (const readings of [0, 0, 1]) {
      applied.push((await bench.run({ SERVICE: address, READ, MAX_JUMP: '10' })).applied.at(-1));
      expect(posted).toHaveLength(readings);
    }
    expect(applied).toEqual(['60', '70', '70']);
  });

  it('is not taken in the round after one in which APPLY failed, when nobody knows what the pump did', async () => {
    const { address, posted } = await keepingService(bench);
    const READ = bench.command('read', GOOD);
    await bench.run({ SERVICE: address });
    await bench.run({
      SERVICE: (await keepingService(bench, { document: setpoint(80) })).address,
      APPLY: 'false',
    });
    await bench.run({ SERVICE: address, READ });
    expect(posted).toEqual([]);
    await bench.run({ SERVICE: address, READ });
    expect(posted).toHaveLength(1);
  });
});

describe('a command that measures', () => {
  it.each([
    ['prints nothing', 'true'],
    ['fails', 'exit 1'],
    ['fails after it has printed', `${GOOD}; exit 3`],
    ['prints no number', "printf 'power high\\n'"],
    ['prints a number with more behind it', "printf 'power 85.7 W\\n'"],
    ['prints a name alone', "printf 'power\\n'"],
    ['prints an exponent', "printf 'power 1e9\\n'"],
    ['prints what is no quantity', "printf 'mood 7\\n'"],
    ['prints a quantity twice', "printf 'power 1\\npower 2\\n'"],
    ['prints JSON of its own', 'printf \'power 1, "setting": 5\\n\''],
    ['prints a command', "printf 'power $(reboot)\\n'"],
    ['prints without end', "yes 'power 1'"],
    ['reads what it is not given', 'cat'],
    ['dies', 'kill -9 $$'],
  ])('and %s posts nothing and changes nothing', async (_what, script) => {
    const { address, posted } = await keepingService(bench);
    const ended = await twoRounds({ SERVICE: address, READ: bench.command('read', script) });
    expect(ended).toMatchObject({ code: 0, applied: ['70', '70'] });
    expect(ended.errors).toContain('nothing that can be posted');
    expect(posted).toEqual([]);
  });

  it('and is not there posts nothing and changes nothing', async () => {
    const { address, posted } = await keepingService(bench);
    const ended = await twoRounds({ SERVICE: address, READ: join(bench.folder, 'nothing') });
    expect(ended).toMatchObject({ code: 0, applied: ['70', '70'] });
    expect(posted).toEqual([]);
  });

  it('does not run where the fallback is applied', async () => {
    const ran = join(bench.folder, 'ran');
    const READ = bench.command('read', `echo ran >'${ran}'; ${GOOD}`);
    const ended = await twoRounds({ SERVICE: 'http://127.0.0.1:1', READ });
    expect(ended).toMatchObject({ code: 1, applied: ['55', '55'] });
    expect(existsSync(ran)).toBe(false);
  });
});

describe('a service that takes readings', () => {
  it.each<[string, (response: ServerResponse) => void]>([
    ['refuses', (response) => void response.writeHead(422).end('{"detail": "no"}')],
    ['answers with a setpoint', (response) => void response.writeHead(200).end(JSON.stringify(setpoint(5)))],
    ['fails', (response) => void response.writeHead(500).end()],
    ['hangs', () => {}],
    ['hangs up', (response) => void response.destroy()],
    [
      'stops half way',
      (response) => {
        response.writeHead(201, { 'Content-Length': '9' });
        response.write('{');
      },
    ],
    ['sends the script elsewhere', (response) => void response.writeHead(307, { Location: '/x' }).end()],
    ['answers at length', (response) => void response.writeHead(201).end('x'.repeat(1_000_000))],
  ])('and %s changes nothing', async (_what, take) => {
    const { address } = await keepingService(bench, { take: (_request, response) => take(response) });
    const ended = await twoRounds({ SERVICE: address, READ: bench.command('read', GOOD) });
    expect(ended).toMatchObject({ code: 0, applied: ['70', '70'] });
    expect(readFileSync(join(bench.folder, 'state', 'setting'), 'utf8')).toBe('70\n');
    expect(readFileSync(join(bench.folder, 'state', 'fallback'), 'utf8')).toBe('60\n');
  });
});
