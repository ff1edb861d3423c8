/** Makes, stores, lists, reads and deletes comparisons of life-cycle costs. */
import { failed, success } from '../../../curves/result.ts';
import { recordBody } from '../../fields/record-fields.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { listQuery, nextCursor, pageRequest } from '../../http/list-query.ts';
import { noContent } from '../../http/no-content.ts';
import { problem } from '../../http/problem.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { writeProblem } from '../../records/write-problems.ts';
import type { Store } from '../../store/store.ts';
import type { RecommendationDeps } from '../recommendation/recommendation.ts';
import { comparisonList, comparisonSchema } from './answer-schema.ts';
import { makeComparison } from './comparison.ts';
import type { ComparisonRecord } from './contract.ts';
import { comparisonRequest } from './schema.ts';
import { isStale } from './sources.ts';
import { comparisonListTable, comparisonTable } from './table.ts';

const collection = { path: '/v1/comparisons', tag: 'money' } as const;
const one = { path: '/v1/comparisons/{comparisonId}', tag: 'money', query: noQuery } as const;

const storedComparison = (description: string, status: 200 | 201 = 200) =>
  jsonAnswer({
    schema: comparisonSchema,
    description,
    example: example('answers/comparison'),
    table: comparisonTable,
    status,
  });

async function answerOf(store: Store, siteId: string, record: ComparisonRecord) {
  const { name, figures } = record.document;
  const stale = await isStale(store, siteId, record.document);
  const { document: _, ...rest } = record;
  const body = { ...recordBody({ ...rest, document: { ...figures, name } }), stale };
  // Whether it is stale moves without its version: it is never answered 304.
  return { body, validator: { version: record.version, derived: stale } };
}

const itemOf = ({ document: { name, figures }, ...record }: ComparisonRecord) => {
  const { currency, options, cheapest, summary } = figures;
  const best = cheapest === null ? null : (options[cheapest]?.name ?? null);
  return recordBody({
    ...record,
    document: { name, currency, summary, options: options.length, cheapest: best },
  });
};

function makingRoute(api: Api, recommending: RecommendationDeps): void {
  const { store, clock, newId } = api.deps;
  const deps = { ...recommending, store, clock, newId };
  defineRoute(
    api,
    {
      ...collection,
      method: 'post',
      operationId: 'createComparison',
      summary: 'Which option costs least over the years?',
      description:
        'The life-cycle cost of each option by element and year: purchase, pipework, energy from the main job (by schedule and tariff where a loop has them), attention, parts, expected losses. The first option is what the others are measured against. Loops and pumps by id or inline. The comparison is stored.',
      query: noQuery,
      body: jsonBody({ schema: comparisonRequest, example: example('comparison-seahorse-bank') }),
      answer: storedComparison('The comparison as it is stored.', 201),
      problems: ['no-requirement', 'unsolved', 'unavailable'],
    },
    async ({ body, siteId, system }) => {
      const made = await makeComparison(deps, body, { siteId, system });
      if (!made.ok) return made;
      const kept = { siteId, id: newId(), document: made.value, now: clock().getTime() };
      const { record } = await store.insertComparison(kept);
      const answer = await answerOf(store, siteId, record);
      return success({ ...answer, location: `/v1/comparisons/${record.id}` });
    },
  );
}

function listRoute(api: Api): void {
  const { store } = api.deps;
  defineRoute(
    api,
    {
      ...collection,
      method: 'get',
      operationId: 'listComparisons',
      summary: 'List comparisons',
      description: 'Stored comparisons in the order of their creation, page by page, without their figures.',
      query: listQuery,
      body: noBody,
      answer: jsonAnswer({
        schema: comparisonList,
        description: 'A page of comparisons.',
        example: example('answers/comparisons'),
        table: comparisonListTable,
      }),
    },
    async ({ siteId, query }) => {
      const page = await store.listComparisons(pageRequest(siteId, query));
      return success({ body: { items: page.records.map(itemOf), next: nextCursor(page) } });
    },
  );
}

function routesOfOne(api: Api): void {
  const { store } = api.deps;
  defineRoute(
    api,
    {
      ...one,
      method: 'get',
      operationId: 'getComparison',
      summary: 'Read a comparison',
      description: 'A stored comparison as it was made; `stale` tells whether its basis has moved since.',
      body: noBody,
      answer: storedComparison('The comparison.'),
    },
    async ({ params, siteId }) => {
      const record = await store.getComparison({ siteId, id: params.comparisonId });
      return record === undefined
        ? failed(problem('not-found', 'There is no comparison with this id.'))
        : success(await answerOf(store, siteId, record));
    },
  );
  defineRoute(
    api,
    {
      ...one,
      method: 'delete',
      operationId: 'deleteComparison',
      summary: 'Delete a comparison',
      description: 'Deletes a stored comparison.',
      conditional: true,
      body: noBody,
      answer: noContent('The comparison is gone.'),
    },
    async ({ params, siteId, expectedVersion }) => {
      const deleted = await store.deleteComparison({ siteId, id: params.comparisonId, expectedVersion });
      return deleted.outcome === 'deleted'
        ? success({ body: null })
        : failed(writeProblem(deleted, 'comparison'));
    },
  );
}

export function comparisonRoutes(api: Api, recommending: RecommendationDeps): void {
  makingRoute(api, recommending);
  listRoute(api);
  routesOfOne(api);
}
