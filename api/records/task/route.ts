/** Creates, lists, reads, replaces and deletes routine checks. */
import { failed, success } from '../../../curves/result.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { nextCursor, pageRequest } from '../../http/list-query.ts';
import { noContent } from '../../http/no-content.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { type TaskView, taskAnswer, taskListAnswer } from './answer.ts';
import { taskAnswerSchema, taskListSchema } from './answer-schema.ts';
import type { MaintenanceTaskRecord } from './contract.ts';
import { dueBounds, taskListQuery } from './query.ts';
import { taskInput } from './schema.ts';
import { taskTable } from './table.ts';
import { findTask, taskOf, taskProblem, taskView } from './view.ts';

const collection = { path: '/v1/maintenance-tasks', tag: 'maintenance' } as const;
const one = { path: '/v1/maintenance-tasks/{taskId}', tag: 'maintenance', query: noQuery } as const;

const body = jsonBody({ schema: taskInput, example: example('maintenance-task') });

const storedTask = (description: string, status: 200 | 201 = 200) =>
  jsonAnswer({
    schema: taskAnswerSchema,
    description,
    example: example('answers/maintenance-task'),
    status,
  });

/** What is due changes with the day, so that no answer follows from its version alone. */
const answerOf = (record: MaintenanceTaskRecord, view: TaskView) => ({
  body: taskAnswer(record, view),
  validator: { version: record.version, derived: true },
});

function createRoute(api: Api): void {
  const { store, clock, newId } = api.deps;
  defineRoute(
    api,
    {
      ...collection,
      method: 'post',
      operationId: 'createMaintenanceTask',
      summary: 'Create a routine check',
      description: 'Stores what is to be done at a loop or a pump again and again, and when first.',
      query: noQuery,
      body,
      answer: storedTask('The check as it is stored.', 201),
    },
    async ({ body: entered, siteId }) => {
      const view = await taskView(api.deps);
      const tasks = [{ id: newId(), document: taskOf(entered, view.timeZone) }];
      const inserted = await store.insertMaintenanceTasks({ siteId, now: clock().getTime(), tasks });
      if (inserted.outcome !== 'inserted') return failed(taskProblem(inserted));
      const [record] = inserted.records;
      if (record === undefined) throw new Error('invariant: one was inserted');
      return success({ ...answerOf(record, view), location: `/v1/maintenance-tasks/${record.id}` });
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
      operationId: 'listMaintenanceTasks',
      summary: 'List routine checks',
      description:
        'Stored checks in the order of their creation, page by page: when each is due, and what all that the filters let through ask of a year in hours and money.',
      query: taskListQuery,
      body: noBody,
      answer: jsonAnswer({
        schema: taskListSchema,
        description: 'A page of checks.',
        example: example('answers/maintenance-tasks'),
        table: taskTable,
      }),
    },
    async ({ siteId, query }) => {
      const view = await taskView(api.deps);
      const { loop, pump, kind, name } = query;
      const choice = { siteId, loop, pump, kind, name, ...dueBounds(query, view.today) };
      const [page, totals] = await Promise.all([
        store.listMaintenanceTasks({ ...pageRequest(siteId, query), ...choice }),
        store.maintenanceTotals({ ...choice, today: view.today }),
      ]);
      return success({
        body: taskListAnswer(page.records, { next: nextCursor(page), totals, view }),
      });
    },
  );
}

function readRoute(api: Api): void {
  defineRoute(
    api,
    {
      ...one,
      method: 'get',
      operationId: 'getMaintenanceTask',
      summary: 'Read a routine check',
      description: 'A stored check as it was entered, and when it is due.',
      body: noBody,
      answer: storedTask('The check.'),
    },
    async ({ params, siteId }) => {
      const task = await findTask(api.deps, { siteId, id: params.taskId });
      return task.ok ? success(answerOf(task.value, await taskView(api.deps))) : task;
    },
  );
}

function replaceRoute(api: Api): void {
  const { store, clock } = api.deps;
  defineRoute(
    api,
    {
      ...one,
      method: 'put',
      operationId: 'replaceMaintenanceTask',
      summary: 'Replace a routine check',
      description: 'Writes all of a check; its completions stay, and the day it is due follows anew.',
      conditional: true,
      body,
      answer: storedTask('The check as it is stored.'),
    },
    async ({ params, body: entered, siteId, expectedVersion }) => {
      const view = await taskView(api.deps);
      const document = taskOf(entered, view.timeZone);
      const task = { siteId, id: params.taskId, document, now: clock().getTime() };
      const written = await store.replaceMaintenanceTask({ ...task, expectedVersion });
      return written.outcome === 'replaced'
        ? success(answerOf(written.record, view))
        : failed(taskProblem(written));
    },
  );
}

function deleteRoute(api: Api): void {
  defineRoute(
    api,
    {
      ...one,
      method: 'delete',
      operationId: 'deleteMaintenanceTask',
      summary: 'Delete a routine check',
      description: 'Deletes a check with its completions.',
      conditional: true,
      body: noBody,
      answer: noContent('The check is gone.'),
    },
    async ({ params, siteId, expectedVersion }) => {
      const deletion = { siteId, id: params.taskId, expectedVersion };
      const deleted = await api.deps.store.deleteMaintenanceTask(deletion);
      return deleted.outcome === 'deleted' ? success({ body: null }) : failed(taskProblem(deleted));
    },
  );
}

export function maintenanceTaskRoutes(api: Api): void {
  createRoute(api);
  listRoute(api);
  readRoute(api);
  replaceRoute(api);
  deleteRoute(api);
}
