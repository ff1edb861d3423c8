/** Answers with the whole site in figures. */
import { success } from '../../../curves/result.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { tableOf } from '../../http/table-of.ts';
import { summaryAnswer } from './answer.ts';
import { summarySchema } from './answer-schema.ts';
import { oneAtATime } from './one-at-a-time.ts';
import { loopAnswers } from './run-slices.ts';
import { siteSummary } from './site-summary.ts';

const savingsTable = tableOf(summarySchema, 'savings', [
  { name: 'loop', at: 'loop.name' },
  'kind',
  { name: 'pump', at: 'pump.name' },
  'count',
  'setting',
  'energySaved',
  'costSaved',
  'purchase',
  'simplePayback',
  'paybackBeyondSetting',
]);

export function summaryRoute(api: Api): void {
  const { clock, workers } = api.deps;
  const deps = { clock, workers, answers: loopAnswers() };
  const inTurn = oneAtATime();
  defineRoute(
    api,
    {
      method: 'get',
      path: '/v1/summary',
      operationId: 'getSummary',
      summary: 'The whole site',
      description:
        'Power, energy and cost of all loops with their installed pumps, the loops short of flow and above their need, the hours that service and routine checks take, and the ten largest savings over all stored pumps at the same requirement. As CSV the savings. Takes a while for a large site: each loop is worked out once for as long as nothing changes that it follows from.',
      tag: 'site',
      query: noQuery,
      body: noBody,
      problems: ['unavailable'],
      answer: jsonAnswer({
        schema: summarySchema,
        description: 'The site in figures.',
        example: example('answers/summary'),
        table: savingsTable,
      }),
    },
    async ({ system, store }) => {
      const summed = await inTurn(() => siteSummary({ ...deps, store }));
      if (!summed.ok) return summed;
      const { site, versions } = summed.value;
      return success({
        body: summaryAnswer(summed.value, system),
        validator: { basis: [site.version, versions] },
      });
    },
  );
}
