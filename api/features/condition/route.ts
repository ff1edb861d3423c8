/** Answers with the condition of a loop. */

import { z } from '@hono/zod-openapi';
import { rangeQuery } from '../../fields/instant.ts';
import { MONEY_MAX } from '../../fields/money.ts';
import { queryDecimal } from '../../fields/query-field.ts';
import { PRICE } from '../../fields/running-fields.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { noBody } from '../../http/request-body.ts';
import { tableOf } from '../../http/table-of.ts';
import type { CompiledLoops } from '../../records/loop/compiled-loops.ts';
import { findLoop } from '../../records/loop/kind.ts';
import { perContext } from '../../units/per-context.ts';
import { conditionSchema } from './answer-schema.ts';
import { answerCondition } from './condition.ts';

const query = perContext((context) =>
  z.strictObject({
    ...rangeQuery(context).shape,
    price: queryDecimal(context, PRICE).optional(),
    cleaningCost: queryDecimal(context, {
      description:
        'What one cleaning costs; where it is left out, by the check of kind screen-cleaning of the loop or the service of its pump.',
      minimum: 0,
      aboveMinimum: true,
      maximum: MONEY_MAX,
      example: 15,
    }).optional(),
  }),
);

export function conditionRoute(api: Api, loops: CompiledLoops): void {
  const { clock, workers } = api.deps;
  defineRoute(
    api,
    {
      method: 'get',
      path: '/v1/loops/{loopId}/condition',
      operationId: 'getCondition',
      summary: 'What the readings of a loop mean',
      description:
        'What was measured since the pump was installed against what loop and pump should do at each setting: a verdict with its evidence, the trend of each measure, when an outlet falls short, and what waiting costs against cleaning.',
      tag: 'readings',
      query,
      body: noBody,
      problems: ['no-installed-pump', 'unsolved', 'unavailable'],
      answer: jsonAnswer({
        schema: conditionSchema,
        description: 'The verdict and what it rests on.',
        example: example('answers/condition'),
        table: tableOf(conditionSchema, 'evidence', [
          'measure',
          'outlet',
          'residual',
          'standardError',
          'trendPerYear',
          { name: 'low', at: 'interval.low' },
          { name: 'high', at: 'interval.high' },
          'readings',
        ]),
      }),
    },
    async ({ params, query: asked, store }) => {
      const loop = await findLoop(store, params.loopId, null);
      return loop.ok ? answerCondition({ store, clock, workers, loops }, { loop: loop.value, asked }) : loop;
    },
  );
}
