/** Answers with the picture of the condition of a loop. */
import { success } from '../../../curves/result.ts';
import { markupText } from '../../drawing/markup/markup.ts';
import { SVG_EXAMPLE } from '../../drawing/svg-example.ts';
import { rangeQuery } from '../../fields/instant.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { pageAnswer } from '../../http/page-answer.ts';
import { noBody } from '../../http/request-body.ts';
import type { CompiledLoops } from '../../records/loop/compiled-loops.ts';
import { findLoop } from '../../records/loop/kind.ts';
import { conditionChart } from './chart.ts';
import { chartedCondition } from './chart-figures.ts';
import { answerCondition } from './condition.ts';

export function conditionChartRoute(api: Api, loops: CompiledLoops): void {
  const { version } = api.deps;
  defineRoute(
    api,
    {
      method: 'get',
      path: '/v1/loops/{loopId}/condition/chart.svg',
      operationId: 'getConditionChart',
      summary: 'A picture of the condition of a loop',
      description:
        'How far each thing that was measured departs from what is predicted, day by day, with its robust trend, and what is found.',
      tag: 'readings',
      query: rangeQuery,
      body: noBody,
      problems: ['no-installed-pump', 'unsolved', 'unavailable'],
      answer: pageAnswer({
        mediaType: 'image/svg+xml',
        description:
          'The picture, to be shown or printed as it is; it holds no script and refers to nothing.',
        example: SVG_EXAMPLE,
      }),
    },
    async ({ params, query: asked, store }) => {
      const loop = await findLoop(store, params.loopId, null);
      if (!loop.ok) return loop;
      const answered = await answerCondition({ ...api.deps, store, loops }, { loop: loop.value, asked });
      if (!answered.ok) return answered;
      const { body, validator } = answered.value;
      const figures = chartedCondition(body, loop.value.document.name);
      return success({
        body: markupText(conditionChart(figures, { id: 'condition' })),
        validator: { basis: [version, validator.basis] },
      });
    },
  );
}
