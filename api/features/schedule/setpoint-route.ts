/** Answers what a controller is to set, now and in the next 24 hours. */
import { z } from '@hono/zod-openapi';
import { failed, type Result } from '../../../curves/result.ts';
import { MS_PER_DAY, type ZoneOffsets } from '../../../models/calendar/zone-offsets.ts';
import { solving } from '../../../models/network/solve-failure.ts';
import type { Step } from '../../../models/schedule/setpoints.ts';
import { oncePerObject } from '../../caches/once-per-object.ts';
import { siteYear } from '../../clock/site-time.ts';
import { zoneAround } from '../../clock/zone.ts';
import { describedInstant } from '../../fields/instant.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import type { Problem } from '../../http/problem.ts';
import { noBody } from '../../http/request-body.ts';
import { tableOf } from '../../http/table-of.ts';
import { unsolvedProblem } from '../../question/solve-problems.ts';
import { perContext } from '../../units/per-context.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { type Latest, latestReading, readingUpTo } from './latest-reading.ts';
import type { PlanCache, SteppedLoop } from './plan-cache.ts';
import type { PlannedLoop } from './planned-loop.ts';
import { setpointAnswer, setpointsAnswer } from './setpoint-answer.ts';
import { setpointSchema, setpointsSchema } from './setpoint-schema.ts';

const query = perContext((context) =>
  z.strictObject({
    at: describedInstant(context, {
      description: 'The instant that is asked about, with its offset; now where it is left out.',
      example: '2026-01-15T22:30:00Z',
    }).optional(),
  }),
);

const common = {
  method: 'get',
  tag: 'schedules',
  query,
  body: noBody,
  problems: ['no-installed-pump', 'no-requirement', 'unsolved'],
} as const;

function solved<T>(compute: () => T): Result<T, Problem> {
  const computed = solving(compute);
  return computed.ok ? computed : failed(unsolvedProblem(computed.failure));
}

function zoneAt({ sources }: PlannedLoop, instant: number): ZoneOffsets {
  const { timeZone } = sources.site.document;
  return zoneAround(timeZone, siteYear(timeZone, instant));
}

/** One answer a step and reading, so that it is also written once. */
const answersOf = oncePerObject(({ planned }: SteppedLoop) =>
  oncePerObject((step: Step) =>
    oncePerObject(({ latest }: Latest, system: UnitSystem) =>
      setpointAnswer(planned, { step, latest }, { zone: zoneAt(planned, step.from), system }),
    ),
  ),
);

const setpointsTable = tableOf(setpointsSchema, 'items', [
  'from',
  'until',
  'phase',
  'setting',
  'feasible',
  'power',
  'flow',
]);

function setpointRoute(api: Api, plans: PlanCache): void {
  const { clock } = api.deps;
  defineRoute(
    api,
    {
      ...common,
      path: '/v1/loops/{loopId}/setpoint',
      operationId: 'getSetpoint',
      summary: 'What to set now',
      description:
        'The setting of the phase that runs, or without a schedule the one recommended for the installed pump. Never an error because a phase is infeasible: then `feasible` is false, and the setting is the one that protects animals and pump. With a reading of the last quarter of an hour, `latestReading` states whether the pump does what it was set to. Ask again as often as you like with If-None-Match: while setting and reading are the same, the answer is 304.',
      answer: jsonAnswer({
        schema: setpointSchema,
        description: 'The setting, since when, until when, and the fallback.',
        example: example('answers/setpoint'),
        table: ({ outlets, fallback, latestReading, cautions, summary, dataBasis, basis, units, ...step }) =>
          setpointsTable({ items: [step], fallback, dataBasis, basis, units }),
      }),
    },
    async ({ params: { loopId: loop }, query: { at }, system, store }) => {
      const found = await plans.find(store, loop);
      if (!found.ok) return found;
      const { planned, stepAt } = found.value;
      const instant = at ?? clock().getTime();
      const reading = await readingUpTo(store, { loop, instant });
      return solved(() => {
        const step = stepAt(instant);
        const latest = latestReading(found.value, reading);
        const body = answersOf(found.value)(step)(latest, system);
        const { basis, versions } = planned;
        return { body, validator: { basis: [basis, versions, step.from, step.until, reading ?? null] } };
      });
    },
  );
}

function setpointsRoute(api: Api, plans: PlanCache): void {
  const { clock } = api.deps;
  defineRoute(
    api,
    {
      ...common,
      path: '/v1/loops/{loopId}/setpoints',
      operationId: 'getSetpoints',
      summary: 'What to set in the next 24 hours',
      description: 'Every step from now on, the first being the one that runs.',
      answer: jsonAnswer({
        schema: setpointsSchema,
        description: 'The steps, in order.',
        example: example('answers/setpoints'),
        table: setpointsTable,
      }),
    },
    async ({ params, query: { at }, store }) => {
      const found = await plans.find(store, params.loopId);
      if (!found.ok) return found;
      const { planned, steps } = found.value;
      const instant = at ?? clock().getTime();
      return solved(() => {
        const list = steps(instant, instant + MS_PER_DAY);
        const body = setpointsAnswer(planned, list, zoneAt(planned, instant));
        const edges = [list[0]?.from, list.at(-1)?.until, list.length];
        return { body, validator: { basis: [planned.basis, planned.versions, edges] } };
      });
    },
  );
}

export function setpointRoutes(api: Api, plans: PlanCache): void {
  setpointRoute(api, plans);
  setpointsRoute(api, plans);
}
