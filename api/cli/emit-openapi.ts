/** Writes openapi/openapi.json and the answers it shows, or with `--check` fails where a file is not what would be written. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { DEFAULT_SITE_ID } from '../access/site.ts';
import { buildApi } from '../app.ts';
import { openApiDocument } from '../features/docs/document.ts';
import type { Api } from '../http/api.ts';
import { packageFolder } from '../http/examples.ts';
import { makeLogger } from '../log.ts';
import { defaultSite, SITE } from '../records/site/kind.ts';
import { openSqliteStore } from '../store/sqlite.ts';
import { sameThread } from '../threads/same-thread.ts';
import { VERSION } from '../version.ts';
import { exampleAnswers } from './example-answers.ts';

/** So that a file changes only when what it says changes. */
const EMITTED_AT = Date.UTC(2026, 0, 15, 12);

async function withApi<T>(use: (api: Api) => T | Promise<T>): Promise<T> {
  const opened = await openSqliteStore(':memory:');
  if (!opened.ok) throw new Error(`no database in memory: ${opened.failure.code}`);
  const store = opened.value;
  await store.of(DEFAULT_SITE_ID, SITE).ensure({ document: defaultSite('EUR'), now: EMITTED_AT });
  let ids = 0;
  const newId = () => {
    ids += 1;
    return `0198c0de-0000-7000-8000-${String(ids).padStart(12, '0')}`;
  };
  const api = buildApi({
    store,
    version: VERSION,
    clock: () => new Date(EMITTED_AT),
    newId,
    logger: makeLogger({ level: 'fatal' }),
    workers: sameThread,
  });
  try {
    return await use(api);
  } finally {
    await store.close();
  }
}

const asText = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;

function currentText(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}

/** Whether the file says what it should, afterwards. */
function settle(file: string, text: string, check: boolean): boolean {
  const path = join(packageFolder(), 'openapi', file);
  if (currentText(path) === text) return true;
  if (check) {
    process.stderr.write(`openapi/${file} is stale: run \`npm run openapi\`.\n`);
    return false;
  }
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
  return true;
}

/** The document shows the answers, so these are settled first. */
async function emit(check: boolean): Promise<boolean> {
  const answers = await withApi((api) =>
    exampleAnswers(async (path, init) => api.app.request(`http://localhost${path}`, init)),
  );
  const settled = [...answers].map(([file, answer]) => settle(join('examples', file), asText(answer), check));
  const document = await withApi((api) => openApiDocument(api));
  settled.push(settle('openapi.json', asText(document), check));
  return settled.every(Boolean);
}

process.exitCode = (await emit(process.argv.includes('--check'))) ? 0 : 1;
