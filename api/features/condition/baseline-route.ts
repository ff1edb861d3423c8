/** Begins a new baseline of a loop, or goes back to the one that the rules give. */
import { z } from '@hono/zod-openapi';
import { failed, success } from '../../../curves/result.ts';
import { bodyInstant } from '../../fields/instant.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { noContent } from '../../http/no-content.ts';
import { invalidRequest, type Problem, problem } from '../../http/problem.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { BASELINES } from '../../records/baseline/kind.ts';
import type { CompiledLoops } from '../../records/loop/compiled-loops.ts';
import { findLoop } from '../../records/loop/kind.ts';
import { named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import { baselineAnswer } from './baseline-answer.ts';
import { baselineSchema } from './baseline-schema.ts';
import { judgeLoop } from './judge-loop.ts';

const common = { path: '/v1/loops/{loopId}/baseline', tag: 'Run', query: noQuery } as const;

const request = perContext((context) =>
  named(
    context,
    'Baseline',
    z.strictObject({
      from: bodyInstant(context, {
        description: 'When the baseline begins, not in the future; by default now.',
        example: '2026-04-01T00:00:00Z',
      }).optional(),
    }),
    { description: 'From when on readings are those of the loop as it should be.' },
  ),
);

const inFuture = (): Problem =>
  invalidRequest([{ pointer: '/from', detail: 'is in the future; state an instant up to now' }]);

export function baselineRoutes(api: Api, loops: CompiledLoops): void {
  const { clock } = api.deps;
  defineRoute(
    api,
    {
      ...common,
      method: 'post',
      operationId: 'createBaseline',
      etag: 'none',
      summary: 'Begin a new baseline of a loop',
      description:
        'From `from` on readings count as those of the loop as it should be, such as after a repair, and later ones are compared with them. It begins later where pipework, pump or points changed since, or after a later cleaning or service. One request is kept a loop, the last.',
      body: jsonBody({ schema: request, example: example('baseline') }),
      answer: jsonAnswer({
        schema: baselineSchema,
        description: 'The baseline as it is now.',
        example: example('answers/baseline'),
        status: 201,
      }),
      problems: ['no-installed-pump', 'unsolved', 'unavailable'],
    },
    async ({ params, body, store }) => {
      const loop = await findLoop(store, params.loopId, null);
      if (!loop.ok) return loop;
      if (loop.value.document.installed === undefined) {
        return failed(problem('no-installed-pump', 'The loop has no installed pump to judge readings by.'));
      }
      const now = clock().getTime();
      const from = body.from ?? now;
      if (from > now) return failed(inFuture());
      await store.of(BASELINES).request({ loop: params.loopId, from });
      const judged = await judgeLoop({ ...api.deps, store, loops }, { loop: loop.value, asked: {} });
      if (!judged.ok) return judged;
      const baseline = baselineAnswer(judged.value.report);
      if (baseline === undefined) throw new Error('invariant: a baseline was requested');
      // The condition is where a baseline can be read.
      return success({ body: baseline, location: `/v1/loops/${params.loopId}/condition` });
    },
  );
  defineRoute(
    api,
    {
      ...common,
      method: 'delete',
      operationId: 'deleteBaseline',
      summary: 'Withdraw the request for a baseline',
      description:
        'Goes back to the baseline that the rules give: since the last cleaning or service, the installation of the pump, or the first reading.',
      body: noBody,
      answer: noContent('No baseline is requested.'),
    },
    async ({ params, store }) => {
      const loop = await findLoop(store, params.loopId, null);
      if (!loop.ok) return loop;
      await store.of(BASELINES).request({ loop: params.loopId, from: null });
      return success({ body: null });
    },
  );
}
