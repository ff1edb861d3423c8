/** Makes, stores, lists, reads and deletes comparisons of life-cycle costs. */
import { success } from '../../../curves/result.ts';
import { recordBody } from '../../fields/record-fields.ts';
import type { Api } from '../../http/api.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { plainList } from '../../records/list-records.ts';
import { mountKeptRecords } from '../../records/mount-records.ts';
import type { SiteStore } from '../../store/store.ts';
import type { RecommendationDeps } from '../recommendation/recommendation.ts';
import { comparisonList, comparisonSchema } from './answer-schema.ts';
import { makeComparison } from './comparison.ts';
import type { ComparisonRecord } from './contract.ts';
import { COMPARISONS } from './kind.ts';
import { comparisonRequest } from './schema.ts';
import { isStale } from './sources.ts';
import { comparisonListTable, comparisonTable } from './table.ts';

const WORDS = {
  operation: ['Comparison', 'Comparisons'],
  summary: ['a comparison', 'comparisons'],
  answer: ['comparison', 'comparisons'],
  problem: 'comparison',
} as const;

const OPERATIONS = {
  create: {
    summary: 'Which option costs least over the years?',
    description:
      'The life-cycle cost of each option by element and year: purchase, pipework, energy from the main job (by schedule and tariff where a loop has them), attention, parts, expected losses. The first option is what the others are measured against. Loops and pumps by id or inline. The comparison is stored.',
    problems: ['no-requirement', 'unsolved', 'unavailable'],
  },
  list: {
    description: 'Stored comparisons in the order of their creation, page by page, without their figures.',
  },
  read: {
    description:
      'A stored comparison as it was made; `stale` states whether a record of its basis has changed since.',
  },
  delete: { description: 'Deletes a stored comparison.' },
} as const;

async function answerOf(record: ComparisonRecord, store: SiteStore) {
  const { name, figures } = record.document;
  const stale = await isStale(store, record.document);
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

export function comparisonRoutes(api: Api, recommending: RecommendationDeps): void {
  const { clock, newId } = api.deps;
  const deps = { ...recommending, clock, newId };
  mountKeptRecords(api, COMPARISONS, {
    collection: '/v1/comparisons',
    one: '/v1/comparisons/{comparisonId}',
    idOf: ({ comparisonId }) => comparisonId,
    tag: 'money',
    words: WORDS,
    operations: OPERATIONS,
    body: jsonBody({ schema: comparisonRequest, example: example('comparison-seahorse-bank') }),
    async ready({ body, system, store }) {
      const made = await makeComparison({ ...deps, store }, body, system);
      return made.ok ? success({ document: made.value }) : made;
    },
    answer: (words) =>
      jsonAnswer({
        schema: comparisonSchema,
        example: example('answers/comparison'),
        table: comparisonTable,
        ...words,
      }),
    answerOf,
    list: plainList({
      kind: COMPARISONS,
      answer: (words) =>
        jsonAnswer({
          schema: comparisonList,
          example: example('answers/comparisons'),
          table: comparisonListTable,
          ...words,
        }),
      bodyOf: (records, next) => ({ items: records.map(itemOf), next }),
    }),
  });
}
