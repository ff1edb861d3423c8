/** Answers which intake screen a flow needs. */
import { success } from '../../../curves/result.ts';
import { answerExample } from '../../fields/answer-example.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { noQuery } from '../../http/route.ts';
import { documentedContext } from '../../units/schema-context.ts';
import { screenSizeSchema } from './answer-schema.ts';
import { screenSizeRequest } from './request-schema.ts';
import { computeScreenSize } from './screen-size.ts';

const REQUEST = example('screen-size');

function shownAnswer(): unknown {
  const request = screenSizeRequest(documentedContext('request')).parse(REQUEST);
  const answer = computeScreenSize(request, 'metric');
  if (!answer.ok) throw new Error(`invariant: the example is refused: ${answer.failure.detail}`);
  return answerExample(screenSizeSchema, answer.value);
}

export function screenSizeRoutes(api: Api): void {
  defineRoute(
    api,
    {
      method: 'post',
      path: '/v1/screen-sizes',
      operationId: 'sizeScreen',
      summary: 'Which intake screen does a flow take?',
      description:
        'The least length, up to 10 diameters of a cylinder, at which mean and peak velocity through the part-clogged openings keep to the limit; failing that the least count with its least length. Nothing is stored.',
      tag: 'intakes-and-leaks',
      query: noQuery,
      body: jsonBody({ schema: screenSizeRequest, example: REQUEST }),
      answer: jsonAnswer({
        schema: screenSizeSchema,
        description: 'The least screen.',
        example: shownAnswer(),
      }),
    },
    async ({ body, system }) => {
      const answer = computeScreenSize(body, system);
      return answer.ok ? success({ body: answer.value }) : answer;
    },
  );
}
