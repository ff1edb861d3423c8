/** Creates, lists, reads, replaces and deletes pumps. */
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
import { fitPumpOrProblem } from './fit.ts';
import type { PumpRecord } from './kind.ts';
import { findPump } from './kind.ts';
import { pumpAnswer, pumpInput, pumpList } from './schema.ts';
import { pumpTable } from './table.ts';

const PUMP_EXAMPLE = example('pump-canister-250');

const collection = { path: '/v1/pumps', tag: 'pumps' } as const;
const one = { path: '/v1/pumps/{pumpId}', tag: 'pumps', query: noQuery } as const;

const body = jsonBody({ schema: pumpInput, example: PUMP_EXAMPLE });

const stored = storedExample({ input: pumpInput, answer: pumpAnswer, document: PUMP_EXAMPLE });

export const storedPumpAnswer = (description: string, status: 200 | 201 = 200) =>
  jsonAnswer({ schema: pumpAnswer, description, example: stored, status });

export const pumpAnswerOf = (record: PumpRecord) => ({
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
      operationId: 'createPump',
      summary: 'Create a pump',
      description: 'Stores a pump and the curves that are fitted to its points.',
      query: noQuery,
      body,
      answer: storedPumpAnswer('The pump as it is stored.', 201),
    },
    async ({ body: document, siteId }) => {
      const fit = fitPumpOrProblem(document);
      if (!fit.ok) return fit;
      const now = clock().getTime();
      const { record } = await store.insertPump({ siteId, id: newId(), document, fit: fit.value, now });
      return success({ ...pumpAnswerOf(record), location: `/v1/pumps/${record.id}` });
    },
  );
  defineRoute(
    api,
    {
      ...collection,
      method: 'get',
      operationId: 'listPumps',
      summary: 'List pumps',
      description: 'Stored pumps in the order of their creation, page by page.',
      query: listQuery,
      body: noBody,
      answer: jsonAnswer({
        schema: pumpList,
        description: 'A page of pumps.',
        example: listExample({ input: pumpInput, answer: pumpList, document: PUMP_EXAMPLE }),
        table: pumpTable,
      }),
    },
    async ({ siteId, query }) => {
      const page = await store.listPumps(pageRequest(siteId, query));
      return success({ body: { items: page.records.map(recordBody), next: nextCursor(page) } });
    },
  );
}

function pumpRoutesOfOne(api: Api): void {
  const { store, clock } = api.deps;
  defineRoute(
    api,
    {
      ...one,
      method: 'get',
      operationId: 'getPump',
      summary: 'Read a pump',
      description: 'A stored pump as it was entered.',
      body: noBody,
      answer: storedPumpAnswer('The pump.'),
    },
    async ({ params }) => {
      const found = await findPump(store, params.pumpId, null);
      return found.ok ? success(pumpAnswerOf(found.value)) : found;
    },
  );
  defineRoute(
    api,
    {
      ...one,
      method: 'put',
      operationId: 'replacePump',
      summary: 'Replace a pump',
      description: 'Writes all of a pump and fits its curves anew.',
      conditional: true,
      body,
      answer: storedPumpAnswer('The pump as it is stored.'),
    },
    async ({ params, body: document, siteId, expectedVersion }) => {
      const fit = fitPumpOrProblem(document);
      if (!fit.ok) return fit;
      const pump = { siteId, id: params.pumpId, document, fit: fit.value, now: clock().getTime() };
      const written = await store.replacePump({ ...pump, expectedVersion });
      return written.outcome === 'replaced'
        ? success(pumpAnswerOf(written.record))
        : failed(writeProblem(written, 'pump'));
    },
  );
  defineRoute(
    api,
    {
      ...one,
      method: 'delete',
      operationId: 'deletePump',
      summary: 'Delete a pump',
      description: 'Deletes a pump that no loop has installed and no routine check is of.',
      conditional: true,
      body: noBody,
      answer: noContent('The pump is gone.'),
      problems: ['in-use'],
    },
    async ({ params, siteId, expectedVersion }) => {
      const deleted = await store.deletePump({ siteId, id: params.pumpId, expectedVersion });
      return deleted.outcome === 'deleted' ? success({ body: null }) : failed(writeProblem(deleted, 'pump'));
    },
  );
}

export function pumpRoutes(api: Api): void {
  collectionRoutes(api);
  pumpRoutesOfOne(api);
}
