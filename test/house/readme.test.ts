/** What the README promises, done: its tour is run twice against a service, its words are counted. */
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
  let again = '';

  beforeAll(async () => {
    const { api } = await appUnderTest();
    server = await startServer({ fetch: api.app.fetch, host: '127.0.0.1', port: 0 });
    await loadWorld(serviceAt(server.url));
    const run = promisify(execFile);
    // Each answer on a line of its own.
    const script = tour(server.url).replaceAll(/^(\s*)curl -s/gm, "$1curl -s -w '\\n'");
    const once = async () => (await run('bash', ['-euc', script], { cwd: packageFolder() })).stdout;
    output = await once();
    again = await once();
  });

  afterAll(() => server.stop());

  it('meets no problem', () => {
    expect(output).not.toContain('urn:loopwright:problem');
    expect(output.split('\n').length).toBeGreaterThan(20);
  });

  it('meets none when it is run again on the same database', () => {
    expect(again).not.toContain('urn:loopwright:problem');
    expect(again.split('\n').length).toBe(output.split('\n').length);
    expect(again.split('\n')[0]).toBe('70');
  });

  it('shows the setting of the flume as a bare number, and the summary with it', () => {
    const lines = output.split('\n');
    expect(lines[0]).toBe('70');
    expect(lines[1]).toContain('Canister 250');
  });
});

/** Words that the README may have by its parts, code and tables apart. */
const WORDS_MOST = 1_100;

describe('the prose of the README', () => {
  it('keeps to its length', () => {
    const prose = README.replace(/^```[\s\S]*?^```/gm, '').replace(/^\|.*$/gm, '');
    expect(prose.split(/\s+/).length).toBeLessThanOrEqual(WORDS_MOST);
  });
});

describe('the codes of problems in the OpenAPI document', () => {
  it('are those of the registry, each with its status', () => {
    const rows = [...SPECIFICATION.matchAll(/- `([a-z0-9-]+)` \((\d{3})\): /g)].map(([, code, status]) => ({
      code,
      status,
    }));
    const registry = Object.entries(PROBLEMS).map(([code, { status }]) => ({ code, status: String(status) }));
    expect(rows.toSorted((a, b) => ((a.code ?? '') < (b.code ?? '') ? -1 : 1))).toEqual(
      registry.toSorted((a, b) => (a.code < b.code ? -1 : 1)),
    );
  });
});
