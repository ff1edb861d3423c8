/** Mounts the route that writes a record by its id or key, and creates the one of a new key. */
import { failed, type Result, success } from '../../curves/result.ts';
import type { Api } from '../http/api.ts';
import { defineRoute } from '../http/define-route.ts';
import { invalidRequest, type Problem } from '../http/problem.ts';
import { noQuery } from '../http/route.ts';
import { isKeyedNoun, unknownRecord } from '../http/unknown-record.ts';
import { isIdShaped, isKey, KEY_RULE } from '../store/key-form.ts';
import type { Kind } from '../store/kind.ts';
import type { SiteStore } from '../store/store.ts';
import type { StoredRecord } from '../store/versions.ts';
import { nothingYet, type PutConditions, putCondition } from './put-condition.ts';
import type { KeyedReady, OperationFacts, RecordOperations, ReplaceableSpec } from './records-spec.ts';
import { refused } from './refused.ts';
import { routeWords } from './route-words.ts';

const PUT_WORDS =
  'By a key that is not there yet it creates, without If-Match. What is stored already is answered with its version, and needs no If-Match.';

const replaceFacts = ({ description, problems = [], ...facts }: OperationFacts): OperationFacts => ({
  ...facts,
  description: `${description} ${PUT_WORDS}`,
  problems: [...problems, 'key-taken'],
});

/** The record of a request, as its path calls it. */
interface Called {
  readonly name: string;
  readonly store: SiteStore;
}

/** The key by which a PUT creates its record: that of the path, which the body may repeat. */
async function keyToCreate(
  name: string,
  { key, noun, store }: { key: string | null | undefined; noun: string; store: SiteStore },
): Promise<Result<string, Problem>> {
  if (isIdShaped(name) && isKeyedNoun(noun))
    return failed(await unknownRecord(store, { noun, name, place: null }));
  if (!isKey(name)) return failed(invalidRequest([{ pointer: '/key', detail: `of the path ${KEY_RULE}` }]));
  if (key === undefined || key === name) return success(name);
  const detail = `must be "${name}" as in the path, or left out`;
  return failed(invalidRequest([{ pointer: '/key', detail }]));
}

export function mountReplace<
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
  const { clock, newId } = api.deps;
  const { collection, one: path, idOf, words, operations, body, ready, answer, answerOf } = spec;
  const { writtenAnswerOf = answerOf } = spec;
  const noun = words.problem;

  async function create(entered: Ready, { name, isConditional, store }: PutConditions & Called) {
    const key = await keyToCreate(name, { key: entered.key, noun, store });
    if (!key.ok) return key;
    if (isConditional) return failed(nothingYet(noun));
    const record = { ...entered, key: key.value, id: newId(), now: clock().getTime() };
    const inserted = await store.of(kind).insert(record);
    if (inserted.outcome !== 'inserted') return refused(spec, { outcome: inserted, store, name });
    const answered = await writtenAnswerOf(inserted.record, store);
    return success({ ...answered, status: 201 as const, location: `${collection}/${inserted.record.id}` });
  }

  defineRoute(
    api,
    {
      ...routeWords(spec, { verb: 'Replace', of: 0 }, replaceFacts(operations.replace)),
      path,
      method: 'put',
      query: noQuery,
      conditional: 'optional',
      body,
      answer: answer({ description: `The ${words.answer[0]} as it is stored.` }),
    },
    async (request) => {
      const { params, sentParams, expectedVersion, store } = request;
      const checked = await ready(request);
      if (!checked.ok) return checked;
      const [id, name] = [idOf(params), idOf(sentParams)];
      const stored = await store.of(kind).get(id);
      if (stored === undefined) return create(checked.value, { ...request, name });
      // By its id a record is replaced as a whole; by its key, what is not stated of the key stays.
      const { key = id === name ? null : undefined } = checked.value;
      const put = { ...checked.value, key };
      const condition = putCondition(request, { stored, put, noun });
      if (!condition.ok) return condition;
      if (condition.value === 'is-stored') return success(await writtenAnswerOf(stored, store));
      const now = clock().getTime();
      const written = await store.of(kind).replace({ ...put, id, now, expectedVersion });
      return written.outcome === 'replaced'
        ? success(await writtenAnswerOf(written.record, store))
        : refused(spec, { outcome: written, store, name });
    },
  );
}
