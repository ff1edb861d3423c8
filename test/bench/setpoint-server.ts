/** A process with a scheduled loop and, behind the same middleware, a route that answers a constant. */
import { readFileSync } from 'node:fs';
import { v7 } from 'uuid';
import { DEFAULT_SITE_ID } from '../../api/access/site.ts';
import { buildApi } from '../../api/app.ts';
import type { AnswerForm } from '../../api/http/answer-form.ts';
import type { Api } from '../../api/http/api.ts';
import { defineRoute } from '../../api/http/define-route.ts';
import { noBody } from '../../api/http/request-body.ts';
import { noQuery } from '../../api/http/route.ts';
import { makeLogger } from '../../api/log.ts';
import { defaultSite, SITE } from '../../api/records/site/kind.ts';
import { mountRoutes } from '../../api/routes.ts';
import { startServer } from '../../api/server.ts';
import { openSqliteStore } from '../../api/store/sqlite.ts';
import { sameThread } from '../../api/threads/same-thread.ts';
import { success } from '../../curves/result.ts';

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
      method: 'get',
      path: '/v1/bare/{loopId}/setpoint',
      operationId: 'bare',
      summary: 'A constant.',
      description: 'A constant.',
      tag: 'service',
      query: noQuery,
      body: noBody,
      answer: constantAnswer,
    },
    async () => success({ body: {} }),
  );
}

const opened = await openSqliteStore(':memory:');
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

async function sent(method: string, path: string, body: unknown): Promise<string> {
  const headers = { 'Content-Type': JSON_TYPE };
  const response = await app.request(`http://localhost${path}`, {
    method,
    headers,
    body: JSON.stringify(body),
  });
  const text = await response.text();
  if (!response.ok) throw new Error(`${method} ${path}: ${text}`);
  return JSON.parse(text).id;
}

const exampleOf = (file: string) =>
  JSON.parse(readFileSync(new URL(`../../openapi/examples/${file}.json`, import.meta.url), 'utf8'));

const pump = await sent('POST', '/v1/pumps', exampleOf('pump-canister-250'));
const installed = { pump, count: 1, setting: 80 };
const loop = await sent('POST', '/v1/loops', { ...exampleOf('loop-kelp-flume'), installed });
const phases = [
  { name: 'day', from: '07:00', factor: 1, rampMinutes: 10 },
  { name: 'night', from: '22:00', factor: 0.6 },
];
await sent('PUT', `/v1/loops/${loop}/schedule`, { phases });
constant.text = await (await app.request(`http://localhost/v1/loops/${loop}/setpoint`)).text();
const { url } = await startServer({ fetch: (request) => app.fetch(request), host: '127.0.0.1', port: 0 });
process.send?.({ full: `${url}/v1/loops/${loop}/setpoint`, bare: `${url}/v1/bare/${loop}/setpoint` });
process.once('disconnect', () => process.exit(0));
