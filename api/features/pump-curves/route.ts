/** Answers with the curves fitted to a pump. */
import { z } from '@hono/zod-openapi';
import { failed, success } from '../../../curves/result.ts';
import { LIST_MAX } from '../../fields/limits.ts';
import { queryDecimal, queryWhole } from '../../fields/query-field.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { noBody } from '../../http/request-body.ts';
import { tableOf } from '../../http/table-of.ts';
import { settingProblem } from '../../question/setting-problem.ts';
import { findPump } from '../../records/pump/kind.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { curvesAnswer } from './answer.ts';
import { curvesSchema } from './answer-schema.ts';

const POINTS_DEFAULT = 11;

const query = (context: SchemaContext) =>
  z.strictObject({
    setting: queryDecimal(context, {
      description: 'Setting of the table [%]; the highest where it is left out.',
      minimum: 0,
      aboveMinimum: true,
      maximum: 100,
      example: 70,
    }).optional(),
    points: queryWhole(context, {
      description: 'Rows of the table, from no flow to the largest entered one; 11 where it is left out.',
      minimum: 1,
      maximum: LIST_MAX,
      example: POINTS_DEFAULT,
    }).optional(),
  });

export function pumpCurvesRoute(api: Api): void {
  defineRoute(
    api,
    {
      method: 'get',
      path: '/v1/pumps/{pumpId}/curves',
      operationId: 'getPumpCurves',
      summary: 'The curves fitted to a pump',
      description:
        'Head at full speed as a sum of powers of flow, power as a law of speed and flow, how well they fit, and a table at one setting.',
      tag: 'pumps',
      query,
      body: noBody,
      answer: jsonAnswer({
        schema: curvesSchema,
        description: 'The fits, their diagnostics, the table.',
        example: example('answers/curves'),
        table: tableOf(curvesSchema, 'table', ['setting', 'flow', 'head', 'power', 'efficiency']),
      }),
    },
    async ({ params, query: { setting, points }, store }) => {
      const found = await findPump(store, params.pumpId, null);
      if (!found.ok) return found;
      const { id, version, document: pump, fit } = found.value;
      const at = setting ?? pump.settings.max;
      const wrong = settingProblem(pump, at);
      if (wrong !== null) return failed(wrong);
      const body = curvesAnswer(
        { entered: pump, fit },
        { id, version, setting: at, points: points ?? POINTS_DEFAULT },
      );
      return success({ body, validator: { basis: body.basis } });
    },
  );
}
