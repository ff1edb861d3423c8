/** Answers with the condition of a loop. */

import { z } from '@hono/zod-openapi';
import { includeQuery } from '../../fields/include-query.ts';
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
import { INCLUDED } from './judge-loop.ts';

const query = perContext((context) =>
  z.strictObject({
    ...rangeQuery(context).shape,
    price: queryDecimal(context, PRICE).optional(),
    cleaningCost: queryDecimal(context, {
      description:
        'Cost of one cleaning or service; by default that of the maintenance task of the loop, or of the service stated at its pump.',
      minimum: 0,
      aboveMinimum: true,
      maximum: MONEY_MAX,
      example: 15,
    }).optional(),
    include: includeQuery(context, INCLUDED).optional(),
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
        'Whether a loop has changed since its baseline, by the readings of the installed pump as of `to`, else of now: a verdict with the causes that explain it, whether the loop is as entered, what the meters can show, which reading to take next, and what follows if the change goes on. Where it asks for a cleaning now, the maintenance task that cleans the screen becomes due today.',
      tag: 'Run',
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
          'change',
          'standardError',
          'trendPerYear',
          { name: 'trendLow', at: 'interval.low' },
          { name: 'trendHigh', at: 'interval.high' },
          'readingCount',
        ]),
      }),
    },
    async ({ params, query: asked, system, store }) => {
      const loop = await findLoop(store, params.loopId, null);
      if (!loop.ok) return loop;
      return answerCondition({ store, clock, workers, loops }, { loop: loop.value, asked, system });
    },
  );
}
