/** The commands that the controller script starts: that they fail or hang holds nothing up and leaves nothing behind. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  type ControllerBench,
  controllerBench,
  keepingService,
  runs,
  SCRIPT,
  setpoint,
} from './controller-bench.ts';

let bench: ControllerBench;
beforeEach(() => {
  bench = controllerBench();
});
afterEach(() => bench.dispose());

const note = (): string => `echo $! >>'${bench.folder}/started'`;

/** Children of every kind: of the same group, of another, and one whose parent has ended. */
const hanging = (): string =>
  [
    `echo $$ >>'${bench.folder}/started'`,
    `sleep 300 & ${note()}`,
    `setsid sleep 300 & ${note()}`,
    `(setsid sh -c 'echo $$ >>"${bench.folder}/started"; exec sleep 300' &)`,
    `trap '' TERM INT HUP`,
    'sleep 300',
  ].join('\n');

async function nothingIsLeft(): Promise<void> {
  const started = bench.lines('started');
  expect(started).toHaveLength(4);
  await expect.poll(() => started.filter(runs)).toEqual([]);
}

describe('APPLY', () => {
  it('that hangs is killed after TIMEOUT with all that it started, and the round ends with 3', async () => {
    const SERVICE = await bench.saying(setpoint(50));
    const { code, errors } = await bench.run({
      SERVICE,
      APPLY: bench.command('hang', hanging()),
      TIMEOUT: '1',
    });
    expect(code).toBe(3);
    expect(errors).toContain('APPLY did not end within 1 s at setting 50, and was killed');
    await nothingIsLeft();
    expect(await bench.run({ SERVICE })).toMatchObject({ code: 0, applied: ['50'] });
  });

  it('that hangs at the fallback ends with 3 as well', async () => {
    const APPLY = bench.command('hang', hanging());
    expect((await bench.run({ SERVICE: 'http://127.0.0.1:1', APPLY, TIMEOUT: '1' })).code).toBe(3);
    await nothingIsLeft();
  });

  it.each([
    ['fails', 'exit 7', 'exit code 7'],
    ['dies', 'kill -9 $$', 'was killed'],
  ])('that %s ends with 3, and what was not dialled is not remembered', async (_what, script, words) => {
    const SERVICE = await bench.saying(setpoint(50));
    const { code, errors } = await bench.run({ SERVICE, APPLY: bench.command('wrong', script) });
    expect(code).toBe(3);
    expect(errors).toContain(words);
    expect(existsSync(join(bench.folder, 'state', 'setting'))).toBe(false);
    expect(bench.lines('state/fallback')).toEqual(['60']);
  });

  it('that is not there ends with 3', async () => {
    const SERVICE = await bench.saying(setpoint(50));
    expect((await bench.run({ SERVICE, APPLY: join(bench.folder, 'nothing') })).code).toBe(3);
  });

  it('may leave a process of its own behind, which neither holds up this round nor the next', async () => {
    const SERVICE = await bench.saying(setpoint(50));
    const script = `sleep 300 >/dev/null 2>&1 & ${note()}\nprintf '%s\\n' "$1" >>'${bench.folder}/applied'`;
    const APPLY = bench.command('leave', script);
    expect((await bench.run({ SERVICE, APPLY })).code).toBe(0);
    expect((await bench.run({ SERVICE, APPLY })).code).toBe(0);
    const started = bench.lines('started');
    expect(started.map(runs)).toEqual([true, true]);
    for (const pid of started) process.kill(Number(pid));
  });
});

describe('READ', () => {
  it('that hangs is killed after TIMEOUT with all that it started, and changes nothing', async () => {
    const { address, posted } = await keepingService(bench);
    const READ = bench.command('hang', hanging());
    await bench.run({ SERVICE: address });
    expect(await bench.run({ SERVICE: address, READ, TIMEOUT: '1' })).toMatchObject({
      code: 0,
      applied: ['70', '70'],
    });
    expect(posted).toEqual([]);
    await nothingIsLeft();
  });
});

describe('two runs at once', () => {
  const noting = (): string =>
    bench.command('note', `echo begin >>'${bench.folder}/log'\nsleep 0.4\necho end >>'${bench.folder}/log'`);

  it('dial one after the other', async () => {
    const SERVICE = await bench.saying(setpoint(50));
    const variables = { SERVICE, APPLY: noting() };
    const both = await Promise.all([bench.run(variables), bench.run(variables)]);
    expect(both.map(({ code }) => code)).toEqual([0, 0]);
    expect(bench.lines('log')).toEqual(['begin', 'end', 'begin', 'end']);
  });

  it('are one where the first does not end: the second ends with 2 and dials nothing', async () => {
    const SERVICE = await bench.saying(setpoint(50));
    expect((await bench.run({ SERVICE })).code).toBe(0);
    // One process, so that its end is the end of the lock.
    const hold = 'exec 9<"$0"; flock 9; echo held; exec sleep 300';
    const holder = spawn('sh', ['-c', hold, join(bench.folder, 'state')]);
    await once(holder.stdout, 'data');
    const { code, applied, errors } = await bench.run({ SERVICE, TIMEOUT: '0.2' });
    holder.kill();
    await once(holder, 'close');
    expect([code, applied]).toEqual([2, ['50']]);
    expect(errors).toContain('another run is at work');
  });

  it('are none where the first was killed: the next goes on as soon as its command has ended', async () => {
    const SERVICE = await bench.saying(setpoint(50));
    const APPLY = noting();
    const env = {
      PATH: process.env.PATH ?? '',
      SERVICE,
      APPLY,
      LOOP: 'kelp-flume',
      FALLBACK: '55',
      STATE: join(bench.folder, 'state'),
    };
    const first = spawn('sh', [SCRIPT], { env, stdio: 'ignore' });
    await expect.poll(() => bench.lines('log'), { timeout: 10_000 }).toEqual(['begin']);
    first.kill('SIGKILL');
    await once(first, 'close');
    expect((await bench.run({ SERVICE, APPLY })).code).toBe(0);
    expect(bench.lines('log')).toEqual(['begin', 'end', 'begin', 'end']);
  });
});
