/** The controller script as a text: that ShellCheck has nothing to say, and that other shells read it alike. */
import { execFileSync, spawnSync } from 'node:child_process';
import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  type ControllerBench,
  controllerBench,
  keepingService,
  SCRIPT,
  setpoint,
} from './controller-bench.ts';

let bench: ControllerBench;
beforeEach(() => {
  bench = controllerBench();
});
afterEach(() => bench.dispose());

const isThere = (program: string): boolean => spawnSync(program, ['--version']).error === undefined;

describe('the controller script', () => {
  it('passes ShellCheck', () => {
    if (!isThere('shellcheck') && process.env.CI !== 'true') {
      process.stderr.write('ShellCheck is not installed: the controller script is not checked by it.\n');
      return;
    }
    const { status, stdout } = spawnSync('shellcheck', [SCRIPT], { encoding: 'utf8' });
    expect(stdout).toBe('');
    expect(status).toBe(0);
  });

  it('runs alike in another shell: steps, a fallback, a reading', async () => {
    symlinkSync(
      execFileSync('sh', ['-c', 'command -v bash'], { encoding: 'utf8' }).trim(),
      join(bench.folder, 'sh'),
    );
    const PATH = `${bench.folder}:${process.env.PATH ?? ''}`;
    const READ = bench.command('read', "echo 'power 85.7'");
    const variables = { PATH, READ, MAX_JUMP: '20' };
    const ends: (readonly [number, string | undefined])[] = [];
    const { address, posted } = await keepingService(bench, { document: setpoint(30) });
    const wrong = await bench.answering('\u0000');
    const infeasible = await bench.saying(setpoint(70, { feasible: false, reason: 'npsh' }));
    for (const SERVICE of [address, infeasible, wrong, infeasible, address, address, address]) {
      const { code, applied } = await bench.run({ ...variables, SERVICE });
      ends.push([code, applied.at(-1)]);
    }
    expect(ends).toEqual([
      [0, '30'],
      [4, '50'],
      [1, '60'],
      [4, '70'],
      [0, '50'],
      [0, '30'],
      [0, '30'],
    ]);
    expect(posted).toHaveLength(1);
  });

  it('is executable, and begins as a POSIX shell script', () => {
    expect(execFileSync('head', ['-n', '1', SCRIPT], { encoding: 'utf8' })).toBe('#!/bin/sh\n');
    expect(() => execFileSync('test', ['-x', SCRIPT])).not.toThrow();
  });

  it('names in its head every variable that it reads, and no other', async () => {
    const text = execFileSync('cat', [SCRIPT], { encoding: 'utf8' });
    const read = [...text.matchAll(/^([A-Z_]+)=\$\{\1:-/gm)].map(([, name]) => name);
    const head = text.slice(0, text.indexOf('\nset -u'));
    const named = [...head.matchAll(/^# {3}([A-Z_]+(?:, [A-Z_]+)*) {2,}/gm)].flatMap(([, names]) =>
      names?.split(', '),
    );
    expect(named).toEqual(read);
  });
});
