/** Answers how many spares must be on the shelf. */
import { success } from '../../../curves/result.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { noQuery } from '../../http/route.ts';
import { sparesSchema } from './answer-schema.ts';
import { sparesRequest } from './request-schema.ts';
import { answerSpares } from './spares.ts';

export function sparesRoute(api: Api): void {
  defineRoute(
    api,
    {
      method: 'post',
      path: '/v1/spares',
      operationId: 'countSpares',
      summary: 'How many spares must lie on the shelf?',
      description:
        'The smallest number of spares that lasts through one lead time, from failure counts (Poisson), also for the worst rate that the counts still allow. Nothing is stored.',
      tag: 'money',
      query: noQuery,
      body: jsonBody({ schema: sparesRequest, example: example('spares') }),
      answer: jsonAnswer({
        schema: sparesSchema,
        description: 'The shelf, its confidence and the failure rate behind it.',
        example: example('answers/spares'),
      }),
    },
    async ({ body, store }) => {
      const answer = await answerSpares(store, body);
      return answer.ok ? success({ body: answer.value }) : answer;
    },
  );
}
