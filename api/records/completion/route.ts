/** Stores, lists, reads and deletes completions of routine checks. */
import { failed, type Result, success } from '../../../curves/result.ts';
import { siteDay } from '../../clock/site-time.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { listQuery, nextCursor, pageRequest } from '../../http/list-query.ts';
import { noContent } from '../../http/no-content.ts';
import type { Problem } from '../../http/problem.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { tableOf } from '../../http/table-of.ts';
import { perContext } from '../../units/per-context.ts';
import { dateText } from '../task/answer.ts';
import type { MaintenanceTaskRecord } from '../task/contract.ts';
import { findTask, taskView } from '../task/view.ts';
import { writeProblem } from '../write-problems.ts';
import { completionBody } from './answer.ts';
import { completionList, completionSchema } from './answer-schema.ts';
import type { CompletionRecord } from './contract.ts';
import { COMPLETIONS } from './kind.ts';
import { completionInput } from './schema.ts';
import { findCompletion, notInFuture, settled } from './write.ts';

const collection = { path: '/v1/maintenance-tasks/{taskId}/completions', tag: 'maintenance' } as const;
const one = {
  path: '/v1/maintenance-tasks/{taskId}/completions/{completionId}',
  tag: 'maintenance',
  query: noQuery,
} as const;

const body = jsonBody({ schema: completionInput, example: example('completion') });

const pageQuery = perContext((context) => listQuery(context).omit({ name: true }));

const storedCompletion = (description: string, status: 200 | 201 = 200) =>
  jsonAnswer({
    schema: completionSchema,
    description,
    example: example('answers/completion'),
    status,
  });

const answerOf = (record: CompletionRecord, task: Result<MaintenanceTaskRecord, Problem>) => {
  if (!task.ok) return task;
  return success({
    body: { ...completionBody(record), nextDue: dateText(task.value.progress.nextDue) },
    validator: { version: record.version, derived: true },
  });
};

const completionTable = tableOf(completionList, 'items', [
  'id',
  'task',
  'at',
  'day',
  'minutes',
  'note',
  'createdAt',
]);

function createRoute(api: Api): void {
  const { clock, newId } = api.deps;
  defineRoute(
    api,
    {
      ...collection,
      method: 'post',
      operationId: 'completeMaintenanceTask',
      summary: 'Enter that a routine check was done',
      description:
        'Stores when a check was done, in any order; it is due next one interval after the latest. Sent again as it was, it is answered again and not stored twice.',
      query: noQuery,
      body,
      answer: storedCompletion('The completion as it is stored.', 201),
    },
    async ({ params, body: entered, store }) => {
      const { taskId } = params;
      const task = await findTask(store, taskId);
      if (!task.ok) return task;
      const now = clock().getTime();
      const inTime = notInFuture(entered.at, now);
      if (!inTime.ok) return inTime;
      const { timeZone } = await taskView({ store, clock });
      const document = { ...entered, day: dateText(siteDay(timeZone, entered.at)) };
      const outcome = await store.of(COMPLETIONS).insert({ taskId, id: newId(), document, now });
      const completion = settled(outcome, document);
      if (!completion.ok) return completion;
      const answer = answerOf(completion.value, await findTask(store, taskId));
      const location = `/v1/maintenance-tasks/${taskId}/completions/${completion.value.id}`;
      return answer.ok ? success({ ...answer.value, location }) : answer;
    },
  );
}

function listRoute(api: Api): void {
  defineRoute(
    api,
    {
      ...collection,
      method: 'get',
      operationId: 'listCompletions',
      summary: 'List when a routine check was done',
      description: 'The completions of a check in the order of their instants, page by page.',
      query: pageQuery,
      body: noBody,
      answer: jsonAnswer({
        schema: completionList,
        description: 'A page of completions.',
        example: example('answers/completions'),
        table: completionTable,
      }),
    },
    async ({ params, query, store }) => {
      const task = await findTask(store, params.taskId);
      if (!task.ok) return task;
      const { records, more } = await store.of(COMPLETIONS).list({
        ...pageRequest({ ...query, name: undefined }),
        taskId: params.taskId,
      });
      const places = records.map(({ id, document }) => ({ id, createdAt: document.at }));
      return success({
        body: { items: records.map(completionBody), next: nextCursor({ records: places, more }) },
      });
    },
  );
}

function routesOfOne(api: Api): void {
  const { clock } = api.deps;
  defineRoute(
    api,
    {
      ...one,
      method: 'get',
      operationId: 'getCompletion',
      summary: 'Read when a routine check was done',
      description: 'A completion as it was entered.',
      body: noBody,
      answer: storedCompletion('The completion.'),
    },
    async ({ params, store }) => {
      const { taskId, completionId: id } = params;
      const completion = await findCompletion(store, { taskId, id });
      if (!completion.ok) return completion;
      return answerOf(completion.value, await findTask(store, taskId));
    },
  );
  defineRoute(
    api,
    {
      ...one,
      method: 'delete',
      operationId: 'deleteCompletion',
      summary: 'Take a completion away',
      description:
        'Deletes a completion that was entered by mistake; the day on which the check is due is computed again.',
      conditional: true,
      body: noBody,
      answer: noContent('The completion is gone.'),
    },
    async ({ params, expectedVersion, store }) => {
      const { taskId, completionId: id } = params;
      const now = clock().getTime();
      const deleted = await store.of(COMPLETIONS).delete({ taskId, id, expectedVersion, now });
      return deleted.outcome === 'deleted'
        ? success({ body: null })
        : failed(writeProblem(deleted, 'completion'));
    },
  );
}

export function completionRoutes(api: Api): void {
  createRoute(api);
  listRoute(api);
  routesOfOne(api);
}
