/** Answers what a leak of a tank lets out. */
import { success } from '../../../curves/result.ts';
import { answerExample } from '../../fields/answer-example.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { noQuery } from '../../http/route.ts';
import { documentedContext } from '../../units/schema-context.ts';
import { leakSchema } from './answer-schema.ts';
import { computeLeak } from './leak-exposure.ts';
import { leakRequest } from './request-schema.ts';

const REQUEST = example('leak-exposure');

function shownAnswer(): unknown {
  const answer = computeLeak(leakRequest(documentedContext('request')).parse(REQUEST), 'metric');
  if (!answer.ok) throw new Error(`invariant: the example is refused: ${answer.failure.detail}`);
  return answerExample(leakSchema, answer.value);
}

export function leakExposureRoutes(api: Api): void {
  defineRoute(
    api,
    {
      method: 'post',
      path: '/v1/leak-exposures',
      operationId: 'exposeLeak',
      summary: 'What would a leak let out?',
      description:
        'Outflow at the start, times until the surface stands at the hole and at a level, volume and depth of the flood. For a pipe that is broken below the tank the height to the break counts. Nothing is stored.',
      tag: 'intakes-and-leaks',
      query: noQuery,
      body: jsonBody({ schema: leakRequest, example: REQUEST }),
      answer: jsonAnswer({ schema: leakSchema, description: 'The leak in figures.', example: shownAnswer() }),
    },
    async ({ body, system }) => {
      const answer = computeLeak(body, system);
      return answer.ok ? success({ body: answer.value }) : answer;
    },
  );
}
