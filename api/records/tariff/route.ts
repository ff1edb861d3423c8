/** Creates, lists, reads, replaces and deletes tariffs. */
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
import type { TariffRecord } from './kind.ts';
import { findTariff } from './kind.ts';
import { tariffAnswer, tariffInput, tariffList } from './schema.ts';

const TARIFF_EXAMPLE = example('tariff');

const collection = { path: '/v1/tariffs', tag: 'tariffs' } as const;
const one = { path: '/v1/tariffs/{tariffId}', tag: 'tariffs', query: noQuery } as const;

const body = jsonBody({ schema: tariffInput, example: TARIFF_EXAMPLE });

const stored = storedExample({ input: tariffInput, answer: tariffAnswer, document: TARIFF_EXAMPLE });

const storedTariff = (description: string, status: 200 | 201 = 200) =>
  jsonAnswer({ schema: tariffAnswer, description, example: stored, status });

const answerOf = (record: TariffRecord) => ({
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
      operationId: 'createTariff',
      summary: 'Create a tariff',
      description: 'Stores prices by month, day and time of day.',
      query: noQuery,
      body,
      answer: storedTariff('The tariff as it is stored.', 201),
    },
    async ({ body: document, siteId }) => {
      const now = clock().getTime();
      const { record } = await store.insertTariff({ siteId, id: newId(), document, now });
      return success({ ...answerOf(record), location: `/v1/tariffs/${record.id}` });
    },
  );
  defineRoute(
    api,
    {
      ...collection,
      method: 'get',
      operationId: 'listTariffs',
      summary: 'List tariffs',
      description: 'Stored tariffs in the order of their creation, page by page.',
      query: listQuery,
      body: noBody,
      answer: jsonAnswer({
        schema: tariffList,
        description: 'A page of tariffs.',
        example: listExample({ input: tariffInput, answer: tariffList, document: TARIFF_EXAMPLE }),
        table: ({ items }) => ({
          columns: ['id', 'name', 'version', 'createdAt', 'updatedAt'].map((name) => ({
            name,
          })),
          rows: items.map(({ id, name, version, createdAt, updatedAt }) => [
            id,
            name,
            version,
            createdAt,
            updatedAt,
          ]),
        }),
      }),
    },
    async ({ siteId, query }) => {
      const page = await store.listTariffs(pageRequest(siteId, query));
      return success({ body: { items: page.records.map(recordBody), next: nextCursor(page) } });
    },
  );
}

function routesOfOne(api: Api): void {
  const { store, clock } = api.deps;
  defineRoute(
    api,
    {
      ...one,
      method: 'get',
      operationId: 'getTariff',
      summary: 'Read a tariff',
      description: 'A stored tariff as it was entered.',
      body: noBody,
      answer: storedTariff('The tariff.'),
    },
    async ({ params }) => {
      const found = await findTariff(store, params.tariffId, null);
      return found.ok ? success(answerOf(found.value)) : found;
    },
  );
  defineRoute(
    api,
    {
      ...one,
      method: 'put',
      operationId: 'replaceTariff',
      summary: 'Replace a tariff',
      description: 'Writes all of a tariff.',
      conditional: true,
      body,
      answer: storedTariff('The tariff as it is stored.'),
    },
    async ({ params, body: document, siteId, expectedVersion }) => {
      const tariff = { siteId, id: params.tariffId, document, now: clock().getTime() };
      const written = await store.replaceTariff({ ...tariff, expectedVersion });
      return written.outcome === 'replaced'
        ? success(answerOf(written.record))
        : failed(writeProblem(written, 'tariff'));
    },
  );
  defineRoute(
    api,
    {
      ...one,
      method: 'delete',
      operationId: 'deleteTariff',
      summary: 'Delete a tariff',
      description: 'Deletes a tariff that neither the site nor a schedule goes by.',
      conditional: true,
      body: noBody,
      answer: noContent('The tariff is gone.'),
      problems: ['in-use'],
    },
    async ({ params, siteId, expectedVersion }) => {
      const deleted = await store.deleteTariff({ siteId, id: params.tariffId, expectedVersion });
      return deleted.outcome === 'deleted'
        ? success({ body: null })
        : failed(writeProblem(deleted, 'tariff'));
    },
  );
}

export function tariffRoutes(api: Api): void {
  collectionRoutes(api);
  routesOfOne(api);
}
