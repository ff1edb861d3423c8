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
import { judgeLoop } from './judge-loop.ts';

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
        'A control chart of each measure: its days against what is predicted, the baseline with the band in which days lie while nothing changes, cleanings, and about when a change began.',
      tag: 'Run',
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
    async ({ params, query: asked, system, store }) => {
      const loop = await findLoop(store, params.loopId, null);
      if (!loop.ok) return loop;
      const judged = await judgeLoop({ ...api.deps, store, loops }, { loop: loop.value, asked });
      if (!judged.ok) return judged;
      const { site, pump, sources } = judged.value;
      const figures = chartedCondition(judged.value, { name: loop.value.document.name, system });
      const versions = [version, loop.value.version, pump.version, site.version];
      return success({
        body: markupText(conditionChart(figures, { id: 'condition' })),
        validator: { basis: [versions, sources] },
      });
    },
  );
}
