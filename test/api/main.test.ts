import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { runTypescript } from './child-process.ts';
import { removeDirectory, temporaryDirectory } from './store/opened.ts';

it('the program starts in an empty directory, is healthy and ready, and stops at SIGTERM with exit code 0', async () => {
  const directory = temporaryDirectory();
  const child = runTypescript('api/main.ts', [], { cwd: directory, env: { PORT: '0' } });
  try {
    await child.untilOutputHas('"listening"');
    const url = /"url":"([^"]+)"/.exec(child.output())?.[1] ?? '';
    expect((await fetch(`${url}/healthz`)).status).toBe(200);
    expect((await fetch(`${url}/readyz`)).status).toBe(200);
    expect(existsSync(join(directory, 'data', 'loopwright.sqlite'))).toBe(true);
    child.process.kill('SIGTERM');
    expect(await child.ended).toBe(0);
    expect(child.errors()).toBe('');
  } finally {
    child.process.kill('SIGKILL');
    await child.ended;
    removeDirectory(directory);
  }
});
