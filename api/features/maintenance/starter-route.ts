/** Stores the starter set of a loop: the routine checks that common practice asks of it. */

import { z } from '@hono/zod-openapi';
import { failed, type Result, success } from '../../../curves/result.ts';
import type { Caution } from '../../../models/cautions/catalogue.ts';
import { workCautions } from '../../../models/cautions/upkeep.ts';
import { missingFrom, starterSet } from '../../../models/maintenance/starter-set.ts';
import { dangersOf, type MaintenanceTask } from '../../../models/maintenance/task.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { type Problem, problem } from '../../http/problem.ts';
import { noQuery } from '../../http/route.ts';
import { findLoop, type LoopRecord } from '../../records/loop/kind.ts';
import { PUMPS } from '../../records/pump/kind.ts';
import { dateText, taskItemBody } from '../../records/task/answer.ts';
import { starterAnswerSchema } from '../../records/task/answer-schema.ts';
import { TASKS } from '../../records/task/kind.ts';
import { type FirstDue, firstDueField } from '../../records/task/schema.ts';
import { firstDay, taskProblem, taskView } from '../../records/task/view.ts';
import type { SiteStore } from '../../store/store.ts';
import { named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';

const starterRequest = perContext((context) =>
  named(
    context,
    'StarterRequest',
    z.strictObject({
      firstDue: firstDueField(context).optional(),
    }),
    { description: 'When the checks are due for the first time; today where it is left out.' },
  ),
);

export function starterTasksRoute(api: Api): void {
  const { clock, newId } = api.deps;
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
    async ({ params, body, store }) => {
      const loop = await findLoop(store, params.loopId, null);
      if (!loop.ok) return loop;
      const view = await taskView({ store, clock });
      const set = await starterTasks(store, loop.value, { firstDue: body.firstDue, view });
      if (!set.ok) return set;
      const { documents, kept, cautions } = set.value;
      const tasks = documents.map((document) => ({ id: newId(), document }));
      const inserted = await store.of(TASKS).insertAll({ now: clock().getTime(), tasks });
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

interface Asked {
  readonly firstDue: FirstDue | undefined;
  readonly view: { readonly timeZone: string; readonly today: number };
}

interface StarterTasks {
  readonly documents: readonly MaintenanceTask[];
  readonly kept: number;
  readonly cautions: readonly Caution[];
}

/** The starter set of a stored loop, less what it has. */
async function starterTasks(
  store: SiteStore,
  loop: LoopRecord,
  { firstDue, view }: Asked,
): Promise<Result<StarterTasks, Problem>> {
  const installed = loop.document.installed?.pump;
  const pump = installed === undefined ? undefined : await store.of(PUMPS).get(installed);
  const there = await store.of(TASKS).all({ loop: loop.id });
  if (there.outcome === 'too-many') return failed(tooMany(there));
  const set = starterSet(loop.document, pump?.document ?? null);
  if (!set.ok) return failed(tooMany(set.failure));
  const due = firstDue === undefined ? dateText(view.today) : firstDay(firstDue, view.timeZone);
  const documents = missingFrom(
    there.records.map(({ document }) => document),
    set.value.tasks,
  ).map((task) => ({ ...task, loop: loop.id, firstDue: due }));
  return success({ documents, kept: there.records.length, cautions: set.value.cautions });
}

const tooMany = ({ limit, actual }: { readonly limit: number; readonly actual: number }): Problem =>
  problem('limit-exceeded', `The loop asks for ${actual} checks; ${limit} are the most.`, { limit, actual });
