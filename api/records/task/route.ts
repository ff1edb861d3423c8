/** Creates, lists, reads, replaces and deletes routine checks. */
import { success } from '../../../curves/result.ts';
import type { Api } from '../../http/api.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { keyedBody } from '../../http/json-body.ts';
import { nextCursor, pageRequest } from '../../http/list-query.ts';
import { listOfOwn } from '../list-records.ts';
import { mountRecords } from '../mount-records.ts';
import { taskAnswer, taskListAnswer } from './answer.ts';
import { taskAnswerSchema, taskListSchema } from './answer-schema.ts';
import { TASKS } from './kind.ts';
import { dueBounds, taskListQuery } from './query.ts';
import { taskInput } from './schema.ts';
import { taskTable } from './table.ts';
import { TASK_NOUN, taskOf, taskProblem, taskView } from './view.ts';

const WORDS = {
  operation: ['MaintenanceTask', 'MaintenanceTasks'],
  summary: ['a routine check', 'routine checks'],
  answer: ['check', 'checks'],
  problem: TASK_NOUN,
} as const;

const OPERATIONS = {
  create: { description: 'Stores what is to be done at a loop or a pump again and again, and when first.' },
  list: {
    description:
      'Stored checks in the order of their creation, page by page: when each is due, and what all that the filters let through ask of a year in hours and money.',
  },
  read: { description: 'A stored check as it was entered, and when it is due.' },
  replace: {
    description:
      'Writes all of a check; its completions stay, and the day on which it is due is computed again.',
  },
  delete: { description: 'Deletes a check with its completions.' },
} as const;

function taskList({ clock }: Pick<Api['deps'], 'clock'>) {
  return listOfOwn({
    query: taskListQuery,
    answer: (words) =>
      jsonAnswer({
        schema: taskListSchema,
        example: example('answers/maintenance-tasks'),
        table: taskTable,
        ...words,
      }),
    async page({ query, store }) {
      const view = await taskView({ store, clock });
      const { loop, pump, kind, name } = query;
      const choice = { loop, pump, kind, name, ...dueBounds(query, view.today) };
      const [page, totals] = await Promise.all([
        store.of(TASKS).list({ ...pageRequest(query), ...choice }),
        store.of(TASKS).totals({ ...choice, today: view.today }),
      ]);
      return taskListAnswer(page.records, { next: nextCursor(page), totals, view });
    },
  });
}

export function maintenanceTaskRoutes(api: Api): void {
  const { clock } = api.deps;
  mountRecords(api, TASKS, {
    collection: '/v1/maintenance-tasks',
    one: '/v1/maintenance-tasks/{taskId}',
    idOf: ({ taskId }) => taskId,
    tag: 'maintenance',
    words: WORDS,
    operations: OPERATIONS,
    body: keyedBody({ schema: taskInput, example: example('maintenance-task') }),
    async ready({ body, store }) {
      const { timeZone } = await taskView({ store, clock });
      return success({ ...body, document: taskOf(body.document, timeZone) });
    },
    answer: (words) =>
      jsonAnswer({ schema: taskAnswerSchema, example: example('answers/maintenance-task'), ...words }),
    // What is due changes with the day, so that no answer follows from its version alone.
    answerOf: async (record, store) => ({
      body: taskAnswer(record, await taskView({ store, clock })),
      validator: { version: record.version, derived: true },
    }),
    list: taskList({ clock }),
    problemOf: taskProblem,
  });
}
