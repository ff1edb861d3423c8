/** The starter set of a loop: the routine checks that common practice asks of it. */
import { failed, success } from '../../../curves/result.ts';
import { workCautions } from '../../../models/cautions/upkeep.ts';
import { dangersOf } from '../../../models/maintenance/task.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { noQuery } from '../../http/route.ts';
import { findLoop } from '../../records/loop/kind.ts';
import { taskItemBody } from '../../records/task/answer.ts';
import { starterAnswerSchema } from '../../records/task/answer-schema.ts';
import { taskProblem, taskView } from '../../records/task/view.ts';
import { starterRequest } from './starter-schema.ts';
import { starterTasks } from './starter-tasks.ts';

export function starterTasksRoute(api: Api): void {
  const { store, clock, newId } = api.deps;
  defineRoute(
    api,
    {
      path: '/v1/loops/{loopId}/starter-tasks',
      tag: 'maintenance',
      method: 'post',
      operationId: 'createStarterTasks',
      summary: 'Create the starter set of a loop',
      description:
        'Stores the routine checks that common practice asks of a loop: an inspection for each bulkhead of its pipework, the cleaning of its intake screens, the wet-end service of its installed pump, its unions, the test of its residual-current device. Those that it has are not made again; each can be changed or deleted afterwards.',
      query: noQuery,
      body: jsonBody({ schema: starterRequest, example: example('starter-tasks') }),
      answer: jsonAnswer({
        schema: starterAnswerSchema,
        description: 'The checks that were made.',
        example: example('answers/starter-tasks'),
        status: 201,
      }),
    },
    async ({ params, body, siteId }) => {
      const loop = await findLoop(store, params.loopId, null);
      if (!loop.ok) return loop;
      const view = await taskView(api.deps);
      const set = await starterTasks(store, loop.value, { firstDue: body.firstDue, view });
      if (!set.ok) return set;
      const { documents, kept, cautions } = set.value;
      const tasks = documents.map((document) => ({ id: newId(), document }));
      const inserted = await store.insertMaintenanceTasks({ siteId, now: clock().getTime(), tasks });
      if (inserted.outcome !== 'inserted') return failed(taskProblem(inserted));
      const kinds = documents.map(({ kind }) => kind);
      return success({
        body: {
          items: inserted.records.map((record) => taskItemBody(record, view)),
          kept,
          cautions: [...workCautions(dangersOf(kinds)), ...cautions],
        },
        location: `/v1/maintenance-tasks?loop=${loop.value.id}`,
      });
    },
  );
}
