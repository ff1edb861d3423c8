/** Answers where a pump at a setting meets the system curve of a loop. */
import { z } from '@hono/zod-openapi';
import { queryDecimal, queryQuantity } from '../../fields/query-field.ts';
import { runningQuery } from '../../fields/running-fields.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { noBody } from '../../http/request-body.ts';
import { tableOf } from '../../http/table-of.ts';
import type { CompiledLoops } from '../../records/loop/compiled-loops.ts';
import { findLoop } from '../../records/loop/kind.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { dutyPointSchema } from './answer-schema.ts';
import { answerDutyPoint } from './duty-point.ts';

const query = (context: SchemaContext) =>
  z.strictObject({
    pump: z
      .string()
      .openapi({
        description: 'Id or key of the pump; the installed one where it is left out.',
        examples: ['0198c0de'],
      })
      .optional(),
    setting: queryDecimal(context, {
      description:
        'Setting [%], on the grid or off it; the installed one for the installed pump, else the highest, where it is left out.',
      minimum: 0,
      aboveMinimum: true,
      maximum: 100,
      example: 70,
    }).optional(),
    velocity: queryQuantity(context, 'velocity', {
      description:
        'Tells how far the stream of each outlet keeps this velocity; that of its stated reach where it is left out.',
      minimum: 0,
      aboveMinimum: true,
      maximum: 30,
      example: 0.1,
    }).optional(),
    ...runningQuery(context),
  });

export function dutyPointRoute(api: Api, loops: CompiledLoops): void {
  const { clock, workers } = api.deps;
  defineRoute(
    api,
    {
      method: 'get',
      path: '/v1/loops/{loopId}/duty-point',
      operationId: 'getDutyPoint',
      summary: 'Where a pump at a setting lands on a loop',
      description:
        'The stable crossing of least flow of pump and system curve, where a pump starting from rest arrives, with the flow of each outlet and what it costs a year.',
      tag: 'loops',
      query,
      body: noBody,
      problems: ['no-installed-pump', 'unsolved', 'unavailable'],
      answer: jsonAnswer({
        schema: dutyPointSchema,
        description: 'The duty.',
        example: example('answers/duty-point'),
        table: tableOf(dutyPointSchema, 'outlets', ['name', 'flow', 'requiredFlow', 'margin', 'velocity']),
      }),
    },
    async ({ params, query: asked, system, store }) => {
      const loop = await findLoop(store, params.loopId, null);
      return loop.ok
        ? answerDutyPoint({ store, clock, workers, loops }, { loop: loop.value, asked, system })
        : loop;
    },
  );
}
