/** What a controller is to set, now and in the next 24 hours. */

import { z } from '@hono/zod-openapi';
import { failed, type Result } from '../../../curves/result.ts';
import { MS_PER_DAY } from '../../../models/calendar/zone-offsets.ts';
import { solving } from '../../../models/network/solve-failure.ts';
import type { Step } from '../../../models/schedule/setpoints.ts';
import { siteYear } from '../../clock/site-time.ts';
import { zoneAround } from '../../clock/zone.ts';
import { describedInstant } from '../../fields/instant.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import type { Problem } from '../../http/problem.ts';
import { noBody } from '../../http/request-body.ts';
import { unsolvedProblem } from '../../question/solve-problems.ts';
import { perContext } from '../../units/per-context.ts';
import type { PlanCache, SteppedLoop } from './plan-cache.ts';
import { setpointAnswer, setpointsAnswer } from './setpoint-answer.ts';
import { setpointSchema, setpointsSchema } from './setpoint-schema.ts';
import { setpointsTable } from './setpoints-table.ts';

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

/** The zone around an instant, and what a computation in it gives. */
function inZone<T>(
  { planned }: SteppedLoop,
  instant: number,
  tell: (zone: ReturnType<typeof zoneAround>) => T,
): Result<T, Problem> {
  const { timeZone } = planned.sources.site.document;
  const told = solving(() => tell(zoneAround(timeZone, siteYear(timeZone, instant))));
  return told.ok ? told : failed(unsolvedProblem(told.failure));
}

function setpointRoute(api: Api, plans: PlanCache): void {
  const { clock } = api.deps;
  // One answer a step, so that it is also written once.
  const answers = new WeakMap<Step, ReturnType<typeof setpointAnswer>>();
  defineRoute(
    api,
    {
      ...common,
      path: '/v1/loops/{loopId}/setpoint',
      operationId: 'getSetpoint',
      summary: 'What to set now',
      description:
        'The setting of the phase that runs, or without a schedule the one recommended for the installed pump. Never an error because a phase is infeasible: `feasible` tells. Ask again as often as you like with If-None-Match: while the setting holds, the answer is 304.',
      answer: jsonAnswer({
        schema: setpointSchema,
        description: 'The setting, since when, until when, and the fallback.',
        example: example('answers/setpoint'),
        table: ({ outlets, fallback, cautions, summary, basis, units, ...step }) =>
          setpointsTable({ items: [step] }),
      }),
    },
    async ({ params, query: { at }, siteId }) => {
      const found = await plans.find({ siteId, id: params.loopId });
      if (!found.ok) return found;
      const { planned, stepAt } = found.value;
      const instant = at ?? clock().getTime();
      return inZone(found.value, instant, (zone) => {
        const step = stepAt(instant);
        const body = answers.get(step) ?? setpointAnswer(planned, step, zone);
        answers.set(step, body);
        return { body, validator: { basis: [planned.basis, planned.versions, step.from, step.until] } };
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
    async ({ params, query: { at }, siteId }) => {
      const found = await plans.find({ siteId, id: params.loopId });
      if (!found.ok) return found;
      const { planned, steps } = found.value;
      const instant = at ?? clock().getTime();
      return inZone(found.value, instant, (zone) => {
        const list = steps(instant, instant + MS_PER_DAY);
        const body = setpointsAnswer(planned, list, zone);
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
