/** What the controller script remembers, and that it goes on where that is lost, wrong, or of another clock. */
import { mkdirSync, readdirSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type ControllerBench, controllerBench, keepingService, setpoint } from './controller-bench.ts';

const DEAD = 'http://127.0.0.1:1';
const LOST = 'remembers no setting: a first round, or it was lost. MAX_JUMP does not hold in this round';

let bench: ControllerBench;
beforeEach(() => {
  bench = controllerBench();
});
afterEach(() => bench.dispose());

const stateFile = (name: string): string => join(bench.folder, 'state', name);

describe('what is remembered', () => {
  it('is said to be nothing in a first round, and no longer in the second', async () => {
    const SERVICE = await bench.saying(setpoint(70));
    expect((await bench.run({ SERVICE })).errors).toContain(LOST);
    expect((await bench.run({ SERVICE })).errors).toBe('');
  });

  it('is said to be lost where its directory has gone, and the round goes on', async () => {
    const SERVICE = await bench.saying(setpoint(70));
    await bench.run({ SERVICE });
    rmSync(join(bench.folder, 'state'), { recursive: true });
    const { code, applied, errors } = await bench.run({ SERVICE, MAX_JUMP: '5' });
    expect([code, applied]).toEqual([0, ['70', '70']]);
    expect(errors).toContain(LOST);
    rmSync(join(bench.folder, 'state'), { recursive: true });
    expect((await bench.run({ SERVICE: DEAD })).applied).toEqual(['70', '70', '55']);
  });

  it.each([
    ['nothing', ''],
    ['zeros', '\u0000'.repeat(64)],
    ['zeros within a number', '7\u00000\n'],
    ['words', 'seventy\n'],
    ['far too much', '7'.repeat(100_000)],
    ['a command', '$(reboot)\n'],
    ['another number behind it', '70\n80\n'],
  ])('is not used where a power cut has left %s', async (_what, content) => {
    const SERVICE = await bench.saying(setpoint(70));
    await bench.run({ SERVICE });
    for (const name of ['setting', 'fallback', 'refused', 'failures'])
      writeFileSync(stateFile(name), content);
    const { code, applied, errors } = await bench.run({ SERVICE: DEAD, MAX_JUMP: '5' });
    expect([code, applied]).toEqual([1, ['70', '55']]);
    expect(errors).toContain(LOST);
    expect(bench.lines('state/failures')).toEqual(['1']);
  });

  it('is not what a run that was killed had only prepared', async () => {
    const SERVICE = await bench.saying(setpoint(70));
    await bench.run({ SERVICE });
    writeFileSync(stateFile('setting.new'), '80\n');
    await bench.run({ SERVICE });
    expect(bench.lines('state/setting')).toEqual(['70']);
  });

  it('is forgotten where it is of another loop', async () => {
    const SERVICE = await bench.saying(setpoint(70));
    await bench.run({ SERVICE });
    const { applied, errors } = await bench.run({ SERVICE: DEAD, LOOP: 'seahorse-bank' });
    expect(applied).toEqual(['70', '55']);
    expect(errors).toContain('was of loop kelp-flume; what it remembers is forgotten');
    expect((await bench.run({ SERVICE, LOOP: 'seahorse-bank' })).errors).toBe('');
  });

  it('is not written anew where nothing has changed', async () => {
    const SERVICE = await bench.saying(setpoint(70));
    await bench.run({ SERVICE });
    const inodes = () =>
      readdirSync(join(bench.folder, 'state')).map((name) => statSync(stateFile(name)).ino);
    const before = inodes();
    await bench.run({ SERVICE });
    expect(inodes()).toEqual(before);
  });

  it('does not hold the pump up where nothing can be written', async () => {
    const MAX_JUMP = '5';
    await bench.run({ SERVICE: await bench.saying(setpoint(40)) });
    // A directory of that name can be written by nobody, not even by root.
    mkdirSync(stateFile('setting.new'));
    writeFileSync(join(stateFile('setting.new'), 'file'), '');
    const { code, applied, errors } = await bench.run({
      SERVICE: await bench.saying(setpoint(90)),
      MAX_JUMP,
    });
    expect([code, applied]).toEqual([0, ['40', '90']]);
    expect(errors).toContain('nothing can be written');
  });
});

describe('a clock that changes', () => {
  it.each([
    ['back to 1970', '1970-01-01T00:00:00Z'],
    ['far ahead', '2099-12-31T23:59:59Z'],
  ])('%s changes nothing but the time of a reading', async (_what, time) => {
    const { address, posted } = await keepingService(bench, {
      take: (_request, response) => {
        response.writeHead(422).end('{"detail": "/readings/0/time lies in the future"}');
      },
    });
    const READ = bench.command('read', "echo 'power 85.7'");
    bench.command('date', `case $2 in +%s) echo 0 ;; *) echo '${time}' ;; esac`);
    const PATH = `${bench.folder}:${process.env.PATH ?? ''}`;
    await bench.run({ SERVICE: address });
    const longAgo = new Date(0);
    const ahead = new Date('2199-01-01T00:00:00Z');
    utimesSync(stateFile('setting'), ahead, ahead);
    utimesSync(stateFile('fallback'), longAgo, longAgo);
    const { code, applied, errors } = await bench.run({ SERVICE: address, READ, PATH });
    expect([code, applied]).toEqual([0, ['70', '70']]);
    expect(JSON.parse(posted[0]?.body ?? '').readings[0].time).toBe(time);
    expect(errors).toContain('the service answered 422: /readings/0/time lies in the future');
    expect((await bench.run({ SERVICE: DEAD, PATH })).applied).toEqual(['70', '70', '60']);
  });
});
