/** Reads a schedule with its figures, stores it, deletes it. */

import { z } from '@hono/zod-openapi';
import { failed, type Result, success } from '../../../curves/result.ts';
import type { Schedule } from '../../../models/schedule/schedule.ts';
import { siteYear } from '../../clock/site-time.ts';
import { queryWhole } from '../../fields/query-field.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { noContent } from '../../http/no-content.ts';
import { type Problem, problem } from '../../http/problem.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { unsolvedProblem } from '../../question/solve-problems.ts';
import type { CompiledLoops } from '../../records/loop/compiled-loops.ts';
import { findLoop } from '../../records/loop/kind.ts';
import { putCondition } from '../../records/put-condition.ts';
import { scheduleProblem } from '../../records/schedule/fits-loop.ts';
import { SCHEDULES, type SchedulePut, type ScheduleRecord } from '../../records/schedule/kind.ts';
import { scheduleInput } from '../../records/schedule/schema.ts';
import { writeProblem } from '../../records/write-problems.ts';
import type { SiteStore } from '../../store/store.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { scheduleAnswer } from './answer.ts';
import { scheduleSchema } from './answer-schema.ts';
import { planned } from './planned-loop.ts';
import { runPlan } from './run-plan.ts';
import { type LoopSources, loadSources } from './sources.ts';
import { scheduleTable } from './table.ts';
import { scheduleYear } from './year.ts';

const SCHEDULE_EXAMPLE = example('schedule');

const YEARS = { minimum: 1971, maximum: 2200 } as const;

const yearQuery = (context: SchemaContext) =>
  z.strictObject({
    year: queryWhole(context, {
      description: "The year of the figures; the site's current one where it is left out.",
      ...YEARS,
      example: 2026,
    }).optional(),
  });

const path = '/v1/loops/{loopId}/schedule';
const tag = 'schedules';
const problems = ['no-installed-pump', 'unsolved'] as const;

const answer = (description: string) =>
  jsonAnswer({
    schema: scheduleSchema,
    description,
    example: example('answers/schedule'),
    table: scheduleTable,
  });

interface Asked {
  readonly schedule: Schedule;
  /** Undefined: the site's current one. */
  readonly year: number | undefined;
}

/** Everything of the answer but the record: worked out before a schedule is stored that cannot be answered. */
async function workedOut({ deps }: Api, sources: LoopSources, { schedule, year: asked }: Asked) {
  const from = deps.clock().getTime();
  const year = asked ?? siteYear(sources.site.document.timeZone, from);
  const worked = await runPlan(deps.workers, sources, { phases: schedule, isScheduled: true, from, year });
  if (!worked.ok) return worked;
  return success((record: ScheduleRecord) => {
    const loop = planned(sources, record, worked.value);
    const figures = scheduleYear(loop, year);
    if (!figures.ok) return failed(unsolvedProblem(figures.failure));
    const body = scheduleAnswer(loop, record, figures.value);
    return success({ body, validator: { version: record.version, derived: true } });
  });
}

const noSchedule = (): Problem => problem('not-found', 'The loop has no schedule.');

function readRoute(api: Api, loops: CompiledLoops): void {
  defineRoute(
    api,
    {
      path,
      tag,
      problems,
      method: 'get',
      operationId: 'getSchedule',
      summary: 'Read the schedule of a loop',
      description:
        'The phases as they were entered, the smallest setting that serves each, and what they use and cost in a year of the calendar, hour by hour.',
      query: yearQuery,
      body: noBody,
      answer: answer('The schedule and its figures.'),
    },
    async ({ params, query, store }) => {
      const loop = await findLoop(store, params.loopId, null);
      if (!loop.ok) return loop;
      const schedule = await store.of(SCHEDULES).get(params.loopId);
      if (schedule === undefined) return failed(noSchedule());
      const sources = await loadSources({ store, loops }, loop.value, schedule.document.tariff);
      if (!sources.ok) return sources;
      const asked = { schedule: schedule.document, year: query.year };
      const worked = await workedOut(api, sources.value, asked);
      return worked.ok ? worked.value(schedule) : worked;
    },
  );
}

/** Without If-Match a schedule is made where there is none. */
async function written(
  store: SiteStore,
  put: SchedulePut,
): Promise<Result<{ readonly record: ScheduleRecord; readonly isNew: boolean }, Problem>> {
  const outcome = await store.of(SCHEDULES).put(put);
  switch (outcome.outcome) {
    case 'inserted':
    case 'replaced':
      return success({ record: outcome.record, isNew: outcome.outcome === 'inserted' });
    case 'exists': {
      const errors = [{ header: 'If-Match', detail: 'is required, since there is a schedule' }];
      return failed(problem('version-required', 'Send the ETag that was read in If-Match.', { errors }));
    }
    default:
      return failed(writeProblem(outcome, 'schedule'));
  }
}

function writeRoute(api: Api, loops: CompiledLoops): void {
  const { clock } = api.deps;
  defineRoute(
    api,
    {
      path,
      tag,
      problems,
      method: 'put',
      operationId: 'putSchedule',
      summary: 'Write the schedule of a loop',
      description: 'Writes all of the schedule; without If-Match it creates one where there is none.',
      conditional: 'optional',
      query: noQuery,
      body: jsonBody({ schema: scheduleInput, example: SCHEDULE_EXAMPLE }),
      answer: answer('The schedule as it is stored, and its figures.'),
    },
    async ({ params, body: document, store, ...conditions }) => {
      const loop = await findLoop(store, params.loopId, null);
      if (!loop.ok) return loop;
      const sources = await loadSources({ store, loops }, loop.value, document.tariff);
      if (!sources.ok) return sources;
      const misfit = scheduleProblem(document, sources.value.model);
      if (misfit !== null) return failed(misfit);
      const worked = await workedOut(api, sources.value, { schedule: document, year: undefined });
      if (!worked.ok) return worked;
      const stored = await store.of(SCHEDULES).get(params.loopId);
      if (stored !== undefined) {
        const condition = putCondition(conditions, { stored, put: { document }, noun: 'schedule' });
        if (!condition.ok) return condition;
        if (condition.value === 'is-stored') return worked.value(stored);
      }
      const { isConditional, expectedVersion } = conditions;
      const done = await written(store, {
        id: params.loopId,
        document,
        now: clock().getTime(),
        expectedVersion: isConditional ? expectedVersion : 'none',
      });
      if (!done.ok) return done;
      const answered = worked.value(done.value.record);
      if (!answered.ok || !done.value.isNew) return answered;
      return success({
        ...answered.value,
        status: 201 as const,
        location: `/v1/loops/${params.loopId}/schedule`,
      });
    },
  );
}

function deleteRoute(api: Api): void {
  defineRoute(
    api,
    {
      path,
      tag,
      method: 'delete',
      operationId: 'deleteSchedule',
      summary: 'Delete the schedule of a loop',
      description: 'Deletes the schedule; the loop stays.',
      conditional: true,
      query: noQuery,
      body: noBody,
      answer: noContent('The schedule is gone.'),
    },
    async ({ params, expectedVersion, store }) => {
      const deleted = await store.of(SCHEDULES).delete({ id: params.loopId, expectedVersion });
      return deleted.outcome === 'deleted'
        ? success({ body: null })
        : failed(writeProblem(deleted, 'schedule'));
    },
  );
}

export function scheduleRoutes(api: Api, loops: CompiledLoops): void {
  readRoute(api, loops);
  writeRoute(api, loops);
  deleteRoute(api);
}
