/** Stores, lists, averages and deletes readings of a loop. */

import { z } from '@hono/zod-openapi';
import { failed, type Result, success } from '../../../curves/result.ts';
import { fitOnLoop } from '../../../models/calibration/applied.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { describedInstant, rangeQuery } from '../../fields/instant.ts';
import { queryWhole } from '../../fields/query-field.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { noContent } from '../../http/no-content.ts';
import { decodeCursor, encodeCursor, PAGE_LIMIT_DEFAULT, PAGE_LIMIT_MAX } from '../../http/paging.ts';
import { invalidRequest, type Problem, problem } from '../../http/problem.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { runJob } from '../../http/run-job.ts';
import { unknownRecord } from '../../http/unknown-record.ts';
import { described } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { CompiledLoops } from '../loop/compiled-loops.ts';
import { findLoop, type LoopRecord } from '../loop/kind.ts';
import { PUMPS, type PumpRecord } from '../pump/kind.ts';
import { findSite } from '../site/kind.ts';
import { writeProblem } from '../write-problems.ts';
import { readingList, readingsTaken } from './answer-schema.ts';
import { readingsBody } from './body.ts';
import { READINGS_DELETED_MAX } from './contract.ts';
import { readingsJob } from './job.ts';
import { READINGS } from './kind.ts';
import { READING_STRETCHES, readingPage, type Stretch } from './pages.ts';
import { type PlausibilityCautions, plausibilityJob } from './plausibility-job.ts';
import { readingsTable } from './table.ts';
import { timeRange } from './time-range.ts';

const common = { path: '/v1/loops/{loopId}/readings', tag: 'readings' } as const;

function takingRoute(api: Api, loops: CompiledLoops): void {
  const { clock, workers } = api.deps;
  defineRoute(
    api,
    {
      ...common,
      method: 'post',
      operationId: 'takeReadings',
      summary: 'Take in readings of a loop',
      description:
        'Stores all of the readings or none, in JSON or CSV, up to 50,000 and 8 MiB a request. A reading of an instant that has one already is merged into it: fields that it states win, those that it leaves out stay.',
      query: noQuery,
      body: readingsBody,
      answer: jsonAnswer({
        schema: readingsTaken,
        description: 'How many were taken in, and how many of these were merged.',
        example: { accepted: 2, merged: 0, cautions: [], units: {} },
        status: 201,
      }),
      problems: ['malformed-csv', 'unavailable'],
    },
    async ({ params, body: text, system, store }) => {
      const loop = await findLoop(store, params.loopId, null);
      if (!loop.ok) return loop;
      const { installed } = loop.value.document;
      const compiled = loops.compile(loop.value, []);
      if (!compiled.ok) return compiled;
      const model = compiled.value;
      const pump = installed && (await store.of(PUMPS).get(installed.pump));
      const outlets = model.system.outlets.map(({ name }) => name);
      const rules = {
        outlets,
        settings: pump === undefined ? null : pump.document.settings,
        now: clock().getTime(),
      };
      const work = { ...text, system, density: model.water.density, rules };
      const read = await runJob(workers, readingsJob, { ready: null, work });
      if (!read.ok) return read;
      if (!read.value.ok) return read.value;
      const written = await store
        .of(READINGS)
        .insert({ loop: params.loopId, readings: read.value.value, outlets });
      if (written.outcome === 'missing') {
        return failed(await unknownRecord(store, { noun: 'loop', name: params.loopId, place: null }));
      }
      if (written.outcome === 'still') return failed(stillProblem(written.time));
      const { accepted, merged } = written;
      const station = installed && pump && { pump, count: installed.count };
      const cautions = await entryCautionsOf(api, { loop: loop.value, model, station }, read.value.value);
      const body = { accepted, merged, cautions: [...cautions] };
      return success({ body, location: `/v1/loops/${params.loopId}/readings` });
    },
  );
}

/** What looks odd about readings; nothing where no pump is installed, or where too much long work waits. */
async function entryCautionsOf(
  { deps }: Api,
  {
    loop,
    model,
    station,
  }: {
    readonly loop: LoopRecord;
    readonly model: CompiledLoop;
    readonly station: { readonly pump: PumpRecord; readonly count: number } | undefined;
  },
  readings: readonly Reading[],
): Promise<PlausibilityCautions> {
  if (station === undefined) return [];
  const { pump, count } = station;
  const entered = { entered: pump.document, fit: fitOnLoop(pump, loop.calibration) };
  const done = await runJob(deps.workers, plausibilityJob, {
    ready: model,
    work: { pump: entered, count, readings },
  });
  return done.ok ? done.value : [];
}

/** A reading of the same instant that is there already takes part in what is wrong. */
function stillProblem(time: number): Problem {
  const detail = `say no flow at speed together with that of ${new Date(time).toISOString()} which is there already; against a closed valve state the head too, or both pressures`;
  return invalidRequest([{ pointer: '/readings', detail }]);
}

const MEANS_LIMIT_MAX = 1_000;

const query = perContext((context) =>
  z.strictObject({
    ...rangeQuery(context).shape,
    by: described(context, z.enum(READING_STRETCHES), {
      description:
        'Means of an hour by UTC, or of a day by the clocks of the site; hours and days without readings are left out.',
      examples: ['day'],
    }).optional(),
    limit: queryWhole(context, {
      description: `How many items a page has at most: 1 to ${PAGE_LIMIT_MAX}, ${PAGE_LIMIT_DEFAULT} where it is not stated; with \`by\` 1 to ${MEANS_LIMIT_MAX}, ${MEANS_LIMIT_MAX} where it is not stated.`,
      minimum: 1,
      maximum: MEANS_LIMIT_MAX,
      example: PAGE_LIMIT_DEFAULT,
    }).optional(),
    cursor: described(context, z.string().max(200), {
      type: 'string',
      description: 'The `next` of the page before.',
    }).optional(),
  }),
);

const PLAIN = 'reading';

const kindOf = (by: Stretch | null): string => by ?? PLAIN;

/** Where the page of a cursor begins; the cursor must be of the same kind of page. */
function cursorStart(cursor: string | undefined, by: Stretch | null): Result<number | null, Problem> {
  if (cursor === undefined) return success(null);
  const start = decodeCursor(cursor);
  if (start?.id === kindOf(by)) return success(start.createdAt);
  return failed(invalidRequest([{ parameter: 'cursor', detail: 'must be `next` of the page before' }]));
}

function pageLimit(limit: number | undefined, by: Stretch | null): Result<number, Problem> {
  if (by !== null) return success(limit ?? MEANS_LIMIT_MAX);
  if (limit === undefined || limit <= PAGE_LIMIT_MAX) return success(limit ?? PAGE_LIMIT_DEFAULT);
  const detail = `must be at most ${PAGE_LIMIT_MAX} without \`by\``;
  return failed(invalidRequest([{ parameter: 'limit', detail }]));
}

function readingRoute(api: Api): void {
  defineRoute(
    api,
    {
      ...common,
      method: 'get',
      operationId: 'listReadings',
      summary: 'Read the readings of a loop',
      description:
        'Readings from `from` on and before `to`, in the order of time, page by page; with `by` the means of hours or days.',
      query,
      body: noBody,
      answer: jsonAnswer({
        schema: readingList,
        description: 'A page of readings.',
        example: example('answers/readings'),
        table: readingsTable,
      }),
    },
    async ({ params, query: asked, store }) => {
      const loop = await findLoop(store, params.loopId, null);
      if (!loop.ok) return loop;
      const range = timeRange(asked);
      if (!range.ok) return range;
      const { by = null } = asked;
      const start = cursorStart(asked.cursor, by);
      if (!start.ok) return start;
      const limit = pageLimit(asked.limit, by);
      if (!limit.ok) return limit;
      const { timeZone } = (await findSite(store)).document;
      const from = Math.max(range.value.from, start.value ?? range.value.from);
      const choice = { loop: params.loopId, from, before: range.value.before };
      const { items, next } = await readingPage(store, { ...choice, by, limit: limit.value, timeZone });
      const cursor = next === null ? null : encodeCursor({ createdAt: next, id: kindOf(by) });
      return success({ body: { items: [...items], next: cursor } });
    },
  );
}

const deletedRange = perContext((context) => {
  const instant = (description: string, example: string) =>
    describedInstant(context, { description, example });
  return z.strictObject({
    from: instant('From this instant on, with its offset.', '2026-01-01T00:00:00Z'),
    to: instant('Before this instant, with its offset.', '2026-02-01T00:00:00Z'),
  });
});

function deletingRoute(api: Api): void {
  defineRoute(
    api,
    {
      ...common,
      method: 'delete',
      operationId: 'deleteReadings',
      summary: 'Delete readings of a loop',
      description: `Deletes the readings from \`from\` on and before \`to\`, at most ${READINGS_DELETED_MAX}, as when a meter was read in a wrong unit. If-Match takes the ETag of the loop, whose version stays.`,
      conditional: true,
      query: deletedRange,
      body: noBody,
      answer: noContent('The readings are deleted, if there were any.'),
    },
    async ({ params, query: asked, expectedVersion, store }) => {
      const loop = await findLoop(store, params.loopId, null);
      if (!loop.ok) return loop;
      const { version } = loop.value;
      if (expectedVersion !== 'any' && expectedVersion !== version) {
        return failed(writeProblem({ outcome: 'stale', version }, 'loop'));
      }
      const range = timeRange(asked);
      if (!range.ok) return range;
      const deleted = await store.of(READINGS).delete({ loop: params.loopId, ...range.value });
      if (deleted.outcome === 'deleted') return success({ body: null });
      const { limit, actual } = deleted;
      const detail = `There are ${actual} readings from \`from\` to \`to\`, more than are deleted at once: choose a shorter time.`;
      return failed(
        problem('limit-exceeded', detail, { limit, actual, errors: [{ parameter: 'to', detail }] }),
      );
    },
  );
}

export function readingRoutes(api: Api, loops: CompiledLoops): void {
  takingRoute(api, loops);
  readingRoute(api);
  deletingRoute(api);
}
