/** A process with the whole service and, behind the same middleware, a route that answers a constant. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { v7 } from 'uuid';
import { DEFAULT_SITE_ID } from '../../api/access/site.ts';
import { buildApi } from '../../api/app.ts';
import { recommendationRequest } from '../../api/features/recommendation/request-schema.ts';
import type { AnswerForm } from '../../api/http/answer-form.ts';
import type { Api } from '../../api/http/api.ts';
import { defineRoute } from '../../api/http/define-route.ts';
import { jsonBody } from '../../api/http/json-body.ts';
import { noQuery } from '../../api/http/route.ts';
import { makeLogger } from '../../api/log.ts';
import { defaultSite, SITE } from '../../api/records/site/kind.ts';
import { mountRoutes } from '../../api/routes.ts';
import { startServer } from '../../api/server.ts';
import { openSqliteStore } from '../../api/store/sqlite.ts';
import { sameThread } from '../../api/threads/same-thread.ts';
import { success } from '../../curves/result.ts';

const EXAMPLES = new URL('../../openapi/examples/', import.meta.url);
const JSON_TYPE = 'application/json';

/** Written once the service has given its answer. */
const constant = { text: '' };

const constantAnswer: AnswerForm<object> = {
  status: 200,
  hasTable: false,
  mediaType: 'application/json',
  chooseMediaType: () => success(JSON_TYPE),
  write: () => success({ text: constant.text, contentType: JSON_TYPE }),
  document: () => ({ status: 200, description: 'A constant.', schema: undefined, example: undefined }),
};

function bareRoute(api: Api): void {
  defineRoute(
    api,
    {
      method: 'post',
      path: '/v1/bare',
      operationId: 'bare',
      summary: 'A constant.',
      description: 'A constant.',
      tag: 'service',
      query: noQuery,
      body: jsonBody({ schema: recommendationRequest, example: {} }),
      answer: constantAnswer,
    },
    async () => success({ body: {} }),
  );
}

const directory = mkdtempSync(join(tmpdir(), 'loopwright-bench-'));
const opened = await openSqliteStore(join(directory, 'store.sqlite'));
if (!opened.ok) throw new Error(`no database: ${opened.failure.code}`);
const store = opened.value;
await store.of(DEFAULT_SITE_ID, SITE).ensure({ document: defaultSite('EUR'), now: Date.now() });
const logger = makeLogger({ level: 'info' });
const deps = {
  store,
  clock: () => new Date(),
  newId: () => v7(),
  logger,
  workers: sameThread,
  version: 'bench',
};

const { app } = buildApi(deps, (api) => {
  mountRoutes(api);
  bareRoute(api);
});

async function posted(path: string, body: string): Promise<string> {
  const headers = { 'Content-Type': JSON_TYPE };
  const response = await app.request(`http://localhost${path}`, { method: 'POST', headers, body });
  const text = await response.text();
  if (!response.ok) throw new Error(`POST ${path}: ${text}`);
  return text;
}

async function storedExample(path: string, file: string): Promise<string> {
  const { id } = JSON.parse(await posted(path, readFileSync(new URL(file, EXAMPLES), 'utf8')));
  return id;
}

const { pumps: files } = JSON.parse(readFileSync(new URL('demo.json', EXAMPLES), 'utf8'));
const loop = await storedExample('/v1/loops', 'loop-kelp-flume.json');
const pumps: string[] = [];
for (const file of files) pumps.push(await storedExample('/v1/pumps', file));
const body = JSON.stringify({ loop, pumps, price: 0.21 });
constant.text = await posted('/v1/recommendations', body);
const server = await startServer({ fetch: app.fetch, host: '127.0.0.1', port: 0 });
process.send?.({ url: server.url, body });
process.once('disconnect', async () => {
  await server.stop();
  await store.close();
  rmSync(directory, { recursive: true });
  process.exit(0);
});
