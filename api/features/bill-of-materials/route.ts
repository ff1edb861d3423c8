/** Answers what the pipework of a loop is made of, and what that costs. */
import { success } from '../../../curves/result.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { noQuery } from '../../http/route.ts';
import { tableOf } from '../../http/table-of.ts';
import { densityOfLoop } from '../../question/sources.ts';
import { billSchema } from './answer-schema.ts';
import { answerBill } from './bill-of-materials.ts';
import { billRequest } from './request-schema.ts';

export function billOfMaterialsRoute(api: Api): void {
  defineRoute(
    api,
    {
      method: 'post',
      path: '/v1/bills-of-materials',
      operationId: 'listMaterials',
      summary: "What is a loop's pipework made of, and what does it cost?",
      description:
        'Pipes by length, fittings, valves, tees, nozzles and screens by pieces, priced by the list that comes along. The pump is no part of it. The total can be pasted into the extras of a comparison. Nothing is stored.',
      tag: 'money',
      query: noQuery,
      body: jsonBody({
        schema: billRequest,
        density: densityOfLoop,
        example: example('bill-of-materials'),
      }),
      answer: jsonAnswer({
        schema: billSchema,
        description: 'The bill, its total, and what it lacks.',
        example: example('answers/bill-of-materials'),
        table: tableOf(billSchema, 'materials', ['kind', 'name', 'count', 'length', 'bought', 'cost']),
      }),
    },
    async ({ body, system, store }) => {
      const answer = await answerBill(store, body, system);
      return answer.ok ? success({ body: answer.value }) : answer;
    },
  );
}
