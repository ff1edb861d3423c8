/** Mounts the routes that every stored kind has: create, list, read, replace, delete. */
import { success } from '../../curves/result.ts';
import type { Api } from '../http/api.ts';
import { defineRoute } from '../http/define-route.ts';
import { noContent } from '../http/no-content.ts';
import { noBody } from '../http/request-body.ts';
import { noQuery } from '../http/route.ts';
import type { Kind } from '../store/kind.ts';
import type { StoredRecord } from '../store/versions.ts';
import { mountReplace } from './mount-replace.ts';
import type {
  KeptOperations,
  KeyedReady,
  RecordOperations,
  RecordsSpec,
  ReplaceableSpec,
} from './records-spec.ts';
import { refused } from './refused.ts';
import { routeWords } from './route-words.ts';

type Stored = StoredRecord<unknown>;

function mountCollection<One extends string, Entered, Ready, Kept extends Stored, Out>(
  api: Api,
  kind: Kind<KeptOperations<Ready, Kept>>,
  spec: RecordsSpec<One, Entered, Ready, Kept, Out>,
): void {
  const { clock, newId } = api.deps;
  const { collection, words, operations, body, ready, answer, answerOf, writtenAnswerOf = answerOf } = spec;
  const [one, many] = words.answer;
  defineRoute(
    api,
    {
      ...routeWords(spec, { verb: 'Create', of: 0 }, operations.create),
      path: collection,
      method: 'post',
      query: noQuery,
      body,
      answer: answer({ description: `The ${one} as it is stored.`, status: 201 }),
    },
    async (request) => {
      const checked = await ready(request);
      if (!checked.ok) return checked;
      const stamp = { id: newId(), now: clock().getTime() };
      const { store } = request;
      const inserted = await store.of(kind).insert({ ...checked.value, ...stamp });
      if (inserted.outcome !== 'inserted') return refused(spec, { outcome: inserted, store, name: '' });
      const { record } = inserted;
      const answered = await writtenAnswerOf(record, store);
      return success({ ...answered, location: `${collection}/${record.id}` });
    },
  );
  const listed = routeWords(spec, { verb: 'List', of: 1 }, operations.list);
  spec.list(api, { ...listed, path: collection, page: `A page of ${many}.` });
}

function mountRead<One extends string, Entered, Ready, Kept extends Stored, Out>(
  api: Api,
  kind: Kind<KeptOperations<Ready, Kept>>,
  spec: RecordsSpec<One, Entered, Ready, Kept, Out>,
): void {
  const { one: path, idOf, words, operations, answer, answerOf } = spec;
  defineRoute(
    api,
    {
      ...routeWords(spec, { verb: 'Read', of: 0, name: 'get' }, operations.read),
      path,
      method: 'get',
      query: noQuery,
      body: noBody,
      answer: answer({ description: `The ${words.answer[0]}.` }),
    },
    async ({ params, sentParams, store }) => {
      const record = await store.of(kind).get(idOf(params));
      return record === undefined
        ? refused(spec, { outcome: { outcome: 'missing' }, store, name: idOf(sentParams) })
        : success(await answerOf(record, store));
    },
  );
}

function mountDelete<One extends string, Entered, Ready, Kept extends Stored, Out>(
  api: Api,
  kind: Kind<KeptOperations<Ready, Kept>>,
  spec: RecordsSpec<One, Entered, Ready, Kept, Out>,
): void {
  const { one: path, idOf, words, operations } = spec;
  defineRoute(
    api,
    {
      ...routeWords(spec, { verb: 'Delete', of: 0 }, operations.delete),
      path,
      method: 'delete',
      query: noQuery,
      conditional: true,
      body: noBody,
      answer: noContent(`The ${words.answer[0]} is gone.`),
    },
    async ({ params, sentParams, expectedVersion, store }) => {
      const deleted = await store.of(kind).delete({ id: idOf(params), expectedVersion });
      return deleted.outcome === 'deleted'
        ? success({ body: null })
        : refused(spec, { outcome: deleted, store, name: idOf(sentParams) });
    },
  );
}

/** Of records that are made once and never changed. */
export function mountKeptRecords<One extends string, Entered, Ready, Kept extends Stored, Out>(
  api: Api,
  kind: Kind<KeptOperations<Ready, Kept>>,
  spec: RecordsSpec<One, Entered, Ready, Kept, Out>,
): void {
  mountCollection(api, kind, spec);
  mountRead(api, kind, spec);
  mountDelete(api, kind, spec);
}

export function mountRecords<
  One extends string,
  Entered,
  Ready extends KeyedReady,
  Kept extends StoredRecord<object>,
  Out,
>(
  api: Api,
  kind: Kind<RecordOperations<Ready, Kept>>,
  spec: ReplaceableSpec<One, Entered, Ready, Kept, Out>,
): void {
  const { create } = spec.operations;
  const problems = [...(create.problems ?? []), 'key-taken'] as const;
  const operations = { ...spec.operations, create: { ...create, problems } };
  mountCollection(api, kind, { ...spec, operations });
  mountRead(api, kind, spec);
  mountReplace(api, kind, spec);
  mountDelete(api, kind, spec);
}
