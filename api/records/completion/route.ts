/** Stores, lists, reads and deletes completions of routine checks. */
import type { z } from '@hono/zod-openapi';
import { failed, success } from '../../../curves/result.ts';
import { siteDay } from '../../clock/site-time.ts';
import type { Api } from '../../http/api.ts';
import type { Table } from '../../http/csv.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { listQuery, nextCursor, pageRequest } from '../../http/list-query.ts';
import { noContent } from '../../http/no-content.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { perContext } from '../../units/per-context.ts';
import { dateText } from '../task/answer.ts';
import type { MaintenanceTaskRecord } from '../task/contract.ts';
import { findTask, noTask, taskView } from '../task/view.ts';
import { writeProblem } from '../write-problems.ts';
import { completionBody } from './answer.ts';
import { completionList, completionSchema } from './answer-schema.ts';
import type { CompletionRecord } from './contract.ts';
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

const answerOf = (record: CompletionRecord, task: MaintenanceTaskRecord | undefined) => {
  if (task === undefined) return failed(noTask());
  return success({
    body: { ...completionBody(record), nextDue: dateText(task.progress.nextDue) },
    validator: { version: record.version, derived: true },
  });
};

const COLUMNS = ['id', 'task', 'at', 'day', 'minutes', 'note', 'createdAt'] as const;

const completionTable = ({ items }: z.input<ReturnType<typeof completionList>>): Table => ({
  columns: COLUMNS.map((name) => ({ name })),
  rows: items.map((item) => COLUMNS.map((name) => item[name])),
});

function createRoute(api: Api): void {
  const { store, clock, newId } = api.deps;
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
    async ({ params, body: entered, siteId }) => {
      const key = { siteId, id: params.taskId };
      const task = await findTask(api.deps, key);
      if (!task.ok) return task;
      const now = clock().getTime();
      const inTime = notInFuture(entered.at, now);
      if (!inTime.ok) return inTime;
      const { timeZone } = await taskView(api.deps);
      const document = { ...entered, day: dateText(siteDay(timeZone, entered.at)) };
      const outcome = await store.insertCompletion({ siteId, taskId: key.id, id: newId(), document, now });
      const completion = settled(outcome, document);
      if (!completion.ok) return completion;
      const answer = answerOf(completion.value, await store.getMaintenanceTask(key));
      const location = `/v1/maintenance-tasks/${key.id}/completions/${completion.value.id}`;
      return answer.ok ? success({ ...answer.value, location }) : answer;
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
    async ({ params, siteId, query }) => {
      const task = await findTask(api.deps, { siteId, id: params.taskId });
      if (!task.ok) return task;
      const { records, more } = await store.listCompletions({
        ...pageRequest(siteId, { ...query, name: undefined }),
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
  const { store, clock } = api.deps;
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
    async ({ params, siteId }) => {
      const { taskId, completionId: id } = params;
      const completion = await findCompletion(store, { siteId, taskId, id });
      if (!completion.ok) return completion;
      return answerOf(completion.value, await store.getMaintenanceTask({ siteId, id: taskId }));
    },
  );
  defineRoute(
    api,
    {
      ...one,
      method: 'delete',
      operationId: 'deleteCompletion',
      summary: 'Take a completion away',
      description: 'Deletes a completion that was entered by mistake; the day the check is due follows anew.',
      conditional: true,
      body: noBody,
      answer: noContent('The completion is gone.'),
    },
    async ({ params, siteId, expectedVersion }) => {
      const { taskId, completionId: id } = params;
      const now = clock().getTime();
      const deleted = await store.deleteCompletion({ siteId, taskId, id, expectedVersion, now });
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
