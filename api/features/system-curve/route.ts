/** Answers with the system curve of a loop. */

import { z } from '@hono/zod-openapi';
import { failed, success } from '../../../curves/result.ts';
import { basisOf } from '../../fields/basis.ts';
import { LIST_MAX } from '../../fields/limits.ts';
import { queryQuantity, queryWhole } from '../../fields/query-field.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { noBody } from '../../http/request-body.ts';
import { runJob } from '../../http/run-job.ts';
import { tableOf } from '../../http/table-of.ts';
import { unsolvedProblem } from '../../question/solve-problems.ts';
import type { CompiledLoops } from '../../records/loop/compiled-loops.ts';
import { dataBasisOf } from '../../records/loop/data-basis.ts';
import { findLoop } from '../../records/loop/kind.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { systemCurveSchema } from './answer-schema.ts';
import { systemCurveJob } from './job.ts';

const POINTS_DEFAULT = 21;

const query = (context: SchemaContext) =>
  z.strictObject({
    flow: queryQuantity(context, 'flow', {
      description:
        'Largest total flow of the table; one and a half times the required duty where it is left out.',
      minimum: 0,
      aboveMinimum: true,
      maximum: 10,
      example: 8000,
    }).optional(),
    points: queryWhole(context, {
      description: 'Rows, from no flow to the largest; 1 is the largest alone, 21 where it is left out.',
      minimum: 1,
      maximum: LIST_MAX,
      example: POINTS_DEFAULT,
    }).optional(),
  });

export function systemCurveRoute(api: Api, loops: CompiledLoops): void {
  const { workers } = api.deps;
  defineRoute(
    api,
    {
      method: 'get',
      path: '/v1/loops/{loopId}/system-curve',
      operationId: 'getSystemCurve',
      summary: 'The head that a loop needs against its flow',
      description:
        'Whatever the pump: needed head and the flow of each outlet by total flow, and the least duty that serves every outlet.',
      tag: 'loops',
      query,
      body: noBody,
      problems: ['unsolved', 'unavailable'],
      answer: jsonAnswer({
        schema: systemCurveSchema,
        description: 'The curve and the required duty.',
        example: example('answers/system-curve'),
        table: tableOf(systemCurveSchema, 'points', ({ points }) => [
          'flow',
          'head',
          ...(points[0]?.outlets ?? []).map(({ name }, place) => ({
            name,
            unitOf: ['outlets', 'flow'],
            of: ({ outlets }: (typeof points)[number]) => outlets[place]?.flow,
          })),
        ]),
      }),
    },
    async ({ params, query: { flow = null, points = POINTS_DEFAULT }, store }) => {
      const found = await findLoop(store, params.loopId, null);
      if (!found.ok) return found;
      const compiled = loops.compile(found.value, []);
      if (!compiled.ok) return compiled;
      const asked = { ready: compiled.value, work: { flow, points } };
      const done = await runJob(workers, systemCurveJob, asked);
      if (!done.ok) return done;
      if (!done.value.ok) return failed(unsolvedProblem(done.value.failure));
      const basis = basisOf({ loop: found.value, pumps: [] });
      return success({
        body: { ...done.value.value, dataBasis: dataBasisOf(found.value), basis },
        validator: { basis },
      });
    },
  );
}
