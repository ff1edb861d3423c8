/** Answers with the picture of a pump against the system curve of a loop. */
import { z } from '@hono/zod-openapi';
import { success } from '../../../curves/result.ts';
import { markupText } from '../../drawing/markup/markup.ts';
import { SVG_EXAMPLE } from '../../drawing/svg-example.ts';
import { queryDecimal, queryWhole } from '../../fields/query-field.ts';
import { COUNT } from '../../fields/running-fields.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { pageAnswer } from '../../http/page-answer.ts';
import { noBody } from '../../http/request-body.ts';
import { findLoop } from '../../records/loop/kind.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import type { RecommendationDeps } from '../recommendation/recommendation.ts';
import { loopChart } from './chart.ts';
import { loopChartFigures } from './chart-figures.ts';

const query = (context: SchemaContext) =>
  z.strictObject({
    pump: described(context, z.string().min(1), {
      description:
        'Id or key of a stored pump; where it is left out the installed one, else the one that is recommended.',
      examples: ['0198c0de'],
    }).optional(),
    setting: queryDecimal(context, {
      description:
        'Setting [%]; where it is left out the installed one for the installed pump, else the one that is recommended, else the highest.',
      minimum: 0,
      aboveMinimum: true,
      maximum: 100,
      example: 70,
    }).optional(),
    count: queryWhole(context, COUNT).optional(),
  });

export function loopChartRoute(api: Api, recommending: RecommendationDeps): void {
  const deps = { ...api.deps, ...recommending };
  defineRoute(
    api,
    {
      method: 'get',
      path: '/v1/loops/{loopId}/chart.svg',
      operationId: 'getLoopChart',
      summary: 'A picture of a pump on a loop',
      description:
        'The curve of a pump at a setting against the system curve of the loop, the duty point where they meet, what the loop needs, and where the pump may lie by grade and scatter. Where no pump is installed or serves, the system curve alone. Axes are in the units in force.',
      tag: 'loops',
      query,
      body: noBody,
      problems: ['unsolved', 'unavailable'],
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
      const charted = await loopChartFigures({ ...deps, store }, { loop: loop.value, asked, system });
      if (!charted.ok) return charted;
      const { figures, basis } = charted.value;
      const body = markupText(loopChart(figures, { id: 'loop' }));
      return success({ body, validator: { basis: [deps.version, basis] } });
    },
  );
}
