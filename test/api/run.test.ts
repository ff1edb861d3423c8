import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Child, runTypescript } from './child-process.ts';
import { openedStore, removeDirectory, temporaryDirectory } from './store/opened.ts';

let directory = '';
const children: Child[] = [];
beforeEach(() => {
  directory = temporaryDirectory();
});
afterEach(async () => {
  for (const child of children.splice(0)) {
    child.process.kill('SIGKILL');
    await child.ended;
  }
  removeDirectory(directory);
});

function start(env: Readonly<Record<string, string>> = {}): Child {
  const child = runTypescript('test/api/run-in-process.ts', [], {
    cwd: directory,
    env: { PORT: '0', ...env },
  });
  children.push(child);
  return child;
}

const logLines = (child: Child): { msg: string; url?: string }[] =>
  child
    .output()
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));

async function urlOf(child: Child): Promise<string> {
  await child.untilOutputHas('"listening"');
  const url = logLines(child).find(({ msg }) => msg === 'listening')?.url;
  if (url === undefined) throw new Error(`no url: ${child.output()}`);
  return url;
}

describe('the process', () => {
  it('says where it listens, answers, keeps its file under the working directory', async () => {
    const child = start();
    const url = await urlOf(child);
    expect(url).toMatch(/^http:\/\/127\.0\.0\.1:[1-9]\d*$/);
    // UUID version 7 (RFC 9562, section 5.7): the version digit is 7, the variant digit 8, 9, a or b.
    expect(await (await fetch(url)).json()).toEqual({
      id: expect.stringMatching(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/),
      version: expect.stringMatching(/^\d+\.\d+\.\d+$/),
    });
    expect(existsSync(join(directory, 'data', 'loopwright.sqlite'))).toBe(true);
  });

  it.each(['SIGTERM', 'SIGINT'] as const)(
    'stops at %s with exit code 0 and lets go of the file',
    async (signal) => {
      const child = start();
      await fetch(await urlOf(child));
      child.process.kill(signal);
      expect(await child.ended).toBe(0);
      expect(logLines(child).map(({ msg }) => msg)).toEqual(['listening', 'stopping', 'stopped']);
      expect(child.errors()).toBe('');
      expect(existsSync(join(directory, 'data', 'loopwright.sqlite-wal'))).toBe(false);
      await (await openedStore(join(directory, 'data', 'loopwright.sqlite'))).close();
    },
  );

  it('refuses a wrong variable in one line, with exit code 1 and no file made', async () => {
    const child = start({ HOST: '0.0.0.0' });
    expect(await child.ended).toBe(1);
    expect(child.errors()).toMatch(/^loopwright: HOST is "0\.0\.0\.0", .*\n$/);
    expect(child.output()).toBe('');
    expect(existsSync(join(directory, 'data'))).toBe(false);
  });

  it('refuses in one line to share its file with a process that runs already', async () => {
    const first = start();
    const url = await urlOf(first);
    const second = start();
    expect(await second.ended).toBe(1);
    expect(second.errors()).toMatch(
      /^loopwright: \.\/data\/loopwright\.sqlite is in use by another process; .*\n$/,
    );
    expect((await fetch(url)).status).toBe(200);
  });

  it('ends with exit code 1 at an error that nobody caught, and logs it', async () => {
    const child = start();
    await fetch(`${await urlOf(child)}/bug`);
    expect(await child.ended).toBe(1);
    expect(child.output()).toContain('a planted bug');
  });
});
