/** Creates, lists, reads, replaces and deletes loops. */
import { failed, success } from '../../../curves/result.ts';
import { recordBody } from '../../fields/record-fields.ts';
import { listExample, storedExample } from '../../fields/stored-example.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { listQuery, nextCursor, pageRequest } from '../../http/list-query.ts';
import { noContent } from '../../http/no-content.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { writeProblem } from '../write-problems.ts';
import { compileLoopOrProblem } from './compile.ts';
import type { LoopRecord } from './kind.ts';
import { findLoop } from './kind.ts';
import { loopAnswer, loopInput, loopList } from './schema.ts';
import { loopTable } from './table.ts';
import { statedDensity } from './water.ts';

const LOOP_EXAMPLE = example('loop-kelp-flume');

const collection = { path: '/v1/loops', tag: 'loops' } as const;
const one = { path: '/v1/loops/{loopId}', tag: 'loops', query: noQuery } as const;

const body = jsonBody({ schema: loopInput, density: statedDensity, example: LOOP_EXAMPLE });

const stored = storedExample({ input: loopInput, answer: loopAnswer, document: LOOP_EXAMPLE });

const storedLoop = (description: string, status: 200 | 201 = 200) =>
  jsonAnswer({ schema: loopAnswer, description, example: stored, status });

const answerOf = (record: LoopRecord) => ({
  body: recordBody(record),
  validator: { version: record.version },
});

function collectionRoutes(api: Api): void {
  const { store, clock, newId } = api.deps;
  defineRoute(
    api,
    {
      ...collection,
      method: 'post',
      operationId: 'createLoop',
      summary: 'Create a loop',
      description: 'Stores a loop by its pipework, or by its system curve where that is not known.',
      query: noQuery,
      body,
      answer: storedLoop('The loop as it is stored.', 201),
    },
    async ({ body: document, siteId }) => {
      const model = compileLoopOrProblem(document);
      if (!model.ok) return model;
      const now = clock().getTime();
      const inserted = await store.insertLoop({ siteId, id: newId(), document, now });
      if (inserted.outcome !== 'inserted') return failed(writeProblem(inserted, 'loop'));
      const { record } = inserted;
      return success({ ...answerOf(record), location: `/v1/loops/${record.id}` });
    },
  );
  defineRoute(
    api,
    {
      ...collection,
      method: 'get',
      operationId: 'listLoops',
      summary: 'List loops',
      description: 'Stored loops in the order of their creation, page by page.',
      query: listQuery,
      body: noBody,
      answer: jsonAnswer({
        schema: loopList,
        description: 'A page of loops.',
        example: listExample({ input: loopInput, answer: loopList, document: LOOP_EXAMPLE }),
        table: loopTable,
      }),
    },
    async ({ siteId, query }) => {
      const page = await store.listLoops(pageRequest(siteId, query));
      return success({ body: { items: page.records.map(recordBody), next: nextCursor(page) } });
    },
  );
}

function loopRoutesOfOne(api: Api): void {
  const { store, clock } = api.deps;
  defineRoute(
    api,
    {
      ...one,
      method: 'get',
      operationId: 'getLoop',
      summary: 'Read a loop',
      description: 'A stored loop as it was entered.',
      body: noBody,
      answer: storedLoop('The loop.'),
    },
    async ({ params }) => {
      const found = await findLoop(store, params.loopId, null);
      return found.ok ? success(answerOf(found.value)) : found;
    },
  );
  defineRoute(
    api,
    {
      ...one,
      method: 'put',
      operationId: 'replaceLoop',
      summary: 'Replace a loop',
      description: 'Writes all of a loop.',
      conditional: true,
      body,
      answer: storedLoop('The loop as it is stored.'),
    },
    async ({ params, body: document, siteId, expectedVersion }) => {
      const model = compileLoopOrProblem(document);
      if (!model.ok) return model;
      const loop = { siteId, id: params.loopId, document, now: clock().getTime() };
      const written = await store.replaceLoop({ ...loop, expectedVersion });
      return written.outcome === 'replaced'
        ? success(answerOf(written.record))
        : failed(writeProblem(written, 'loop'));
    },
  );
  defineRoute(
    api,
    {
      ...one,
      method: 'delete',
      operationId: 'deleteLoop',
      summary: 'Delete a loop',
      description: 'Deletes a loop that no routine check is of.',
      conditional: true,
      body: noBody,
      answer: noContent('The loop is gone.'),
      problems: ['in-use'],
    },
    async ({ params, siteId, expectedVersion }) => {
      const deleted = await store.deleteLoop({ siteId, id: params.loopId, expectedVersion });
      return deleted.outcome === 'deleted' ? success({ body: null }) : failed(writeProblem(deleted, 'loop'));
    },
  );
}

export function loopRoutes(api: Api): void {
  collectionRoutes(api);
  loopRoutesOfOne(api);
}
