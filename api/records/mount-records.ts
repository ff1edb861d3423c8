/** Mounts the routes that every stored kind has: create, list, read, replace, delete. */
import { failed, success } from '../../curves/result.ts';
import type { Api } from '../http/api.ts';
import { defineRoute } from '../http/define-route.ts';
import { noContent } from '../http/no-content.ts';
import { noBody } from '../http/request-body.ts';
import { noQuery } from '../http/route.ts';
import type { Kind } from '../store/kind.ts';
import type { StoredRecord } from '../store/versions.ts';
import type {
  KeptOperations,
  OperationFacts,
  RecordOperations,
  RecordsSpec,
  ReplaceableSpec,
} from './records-spec.ts';
import { nothingHere, type RefusedWrite, writeProblem } from './write-problems.ts';

type Stored = StoredRecord<unknown>;

/** The words of an operation on a kind: its verb, then the kind's word for one or for many. */
function routeWords(
  { words, tag }: Pick<RecordsSpec<string, unknown, unknown, Stored, unknown>, 'words' | 'tag'>,
  { verb, of, name = verb.toLowerCase() }: { verb: string; of: 0 | 1; name?: string },
  { description, summary = `${verb} ${words.summary[of]}`, problems = [] }: OperationFacts,
) {
  return { tag, operationId: `${name}${words.operation[of]}`, summary, description, problems };
}

function refused(
  {
    words,
    collection,
    problemOf,
  }: Pick<RecordsSpec<string, unknown, unknown, Stored, unknown>, 'words' | 'collection' | 'problemOf'>,
  outcome: RefusedWrite,
) {
  if (outcome.outcome === 'missing') return failed(nothingHere(words.problem, collection));
  return failed(problemOf?.(outcome) ?? writeProblem(outcome, words.problem));
}

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
      const inserted = await request.store.of(kind).insert({ ...checked.value, ...stamp });
      if (inserted.outcome !== 'inserted') return refused(spec, inserted);
      const { record } = inserted;
      const answered = await writtenAnswerOf(record, request.store);
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
    async ({ params, store }) => {
      const record = await store.of(kind).get(idOf(params));
      return record === undefined
        ? refused(spec, { outcome: 'missing' })
        : success(await answerOf(record, store));
    },
  );
}

function mountReplace<One extends string, Entered, Ready, Kept extends Stored, Out>(
  api: Api,
  kind: Kind<RecordOperations<Ready, Kept>>,
  spec: ReplaceableSpec<One, Entered, Ready, Kept, Out>,
): void {
  const { clock } = api.deps;
  const { one: path, idOf, words, operations, body, ready, answer, answerOf } = spec;
  const { writtenAnswerOf = answerOf } = spec;
  defineRoute(
    api,
    {
      ...routeWords(spec, { verb: 'Replace', of: 0 }, operations.replace),
      path,
      method: 'put',
      query: noQuery,
      conditional: true,
      body,
      answer: answer({ description: `The ${words.answer[0]} as it is stored.` }),
    },
    async (request) => {
      const { params, expectedVersion, store } = request;
      const checked = await ready(request);
      if (!checked.ok) return checked;
      const stamp = { id: idOf(params), now: clock().getTime(), expectedVersion };
      const written = await store.of(kind).replace({ ...checked.value, ...stamp });
      return written.outcome === 'replaced'
        ? success(await writtenAnswerOf(written.record, store))
        : refused(spec, written);
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
    async ({ params, expectedVersion, store }) => {
      const deleted = await store.of(kind).delete({ id: idOf(params), expectedVersion });
      return deleted.outcome === 'deleted' ? success({ body: null }) : refused(spec, deleted);
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

export function mountRecords<One extends string, Entered, Ready, Kept extends Stored, Out>(
  api: Api,
  kind: Kind<RecordOperations<Ready, Kept>>,
  spec: ReplaceableSpec<One, Entered, Ready, Kept, Out>,
): void {
  mountCollection(api, kind, spec);
  mountRead(api, kind, spec);
  mountReplace(api, kind, spec);
  mountDelete(api, kind, spec);
}
