/** What the README promises, done: its tour is run against a service, its tables are compared with the code. */
import { execFile } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serviceAt } from '../../api/cli/demo/call.ts';
import { loadWorld } from '../../api/cli/demo/world.ts';
import { packageFolder } from '../../api/http/examples.ts';
import { PROBLEMS } from '../../api/http/problem-registry.ts';
import { type RunningServer, startServer } from '../../api/server.ts';
import { appUnderTest } from '../api/app-under-test.ts';

const README = readFileSync(join(packageFolder(), 'README.md'), 'utf8');
const SPECIFICATION = readFileSync(join(packageFolder(), 'openapi', 'openapi.json'), 'utf8');

/** The commands of the tour as one script, against another address. */
function tour(url: string): string {
  const blocks = [...README.matchAll(/```sh tour\n([\s\S]*?)```/g)].map(([, block]) => block ?? '');
  return blocks.join('\n').replace('URL=http://127.0.0.1:8080', `URL=${url}`);
}

describe('the tour of the README', () => {
  let server: RunningServer;
  let output = '';

  beforeAll(async () => {
    const { api } = await appUnderTest();
    server = await startServer({ fetch: api.app.fetch, host: '127.0.0.1', port: 0 });
    await loadWorld(serviceAt(server.url));
    const run = promisify(execFile);
    // Each answer on a line of its own.
    const script = tour(server.url).replaceAll(/^(\s*)curl -s/gm, "$1curl -s -w '\\n'");
    const { stdout } = await run('bash', ['-euc', script], { cwd: packageFolder() });
    output = stdout;
  });

  afterAll(() => server.stop());

  it('meets no problem', () => {
    expect(output).not.toContain('urn:loopwright:problem');
    expect(output.split('\n').length).toBeGreaterThan(20);
  });

  it('shows the setting of the flume as a bare number, and the summary with it', () => {
    const lines = output.split('\n');
    expect(lines[0]).toBe('70');
    expect(lines[1]).toContain('Canister 250');
  });
});

describe('the table of problems in the README', () => {
  const rows = [...README.matchAll(/^\| `([a-z0-9-]+)` \| (\d{3}) \|/gm)].map(([, code, status]) => ({
    code,
    status,
  }));

  it('lists every problem of the registry with its status, and no other', () => {
    const registry = Object.entries(PROBLEMS).map(([code, { status }]) => ({ code, status: String(status) }));
    expect(rows).toEqual(registry);
  });

  it('has each in the OpenAPI document too', () => {
    expect(Object.keys(PROBLEMS).filter((code) => !SPECIFICATION.includes(code))).toEqual([]);
  });
});
