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

const savingsTable = tableOf(summarySchema, 'largestSavings', [
  { name: 'loopName', at: 'loop.name' },
  'kind',
  { name: 'pumpName', at: 'pump.name' },
  'count',
  'setting',
  'annualEnergySaving',
  'annualCostSaving',
  'purchaseCost',
  { name: 'paybackSimple', at: 'payback.simple' },
  { name: 'paybackBeyondTurnDown', at: 'payback.beyondTurnDown' },
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
      summary: 'Summarise the site',
      description:
        'Sums power, energy and cost of all loops with their installed pumps. States the loops that are below required, those that can turn down, and the hours of service and tasks. Lists the ten largest savings over all stored pumps at the same requirement; CSV has the savings. A large site takes a while: each loop is computed once until something changes that it depends on. Power is the mean over the year. At most one saving is listed for a loop. The limits are 20,000 loops and 500,000 loops times pumps. One summary runs at a time and eight wait; more are answered with 503.',
      tag: 'Invest',
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
