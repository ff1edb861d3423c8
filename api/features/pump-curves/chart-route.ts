/** Answers with the picture of a pump's curves. */
import { success } from '../../../curves/result.ts';
import { MODEL_VERSION } from '../../../models/model-version.ts';
import { markupText } from '../../drawing/markup/markup.ts';
import { SVG_EXAMPLE } from '../../drawing/svg-example.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { pageAnswer } from '../../http/page-answer.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { findPump } from '../../records/pump/kind.ts';
import { pumpChart } from './chart.ts';

export function pumpChartRoute(api: Api): void {
  const { version: program } = api.deps;
  defineRoute(
    api,
    {
      method: 'get',
      path: '/v1/pumps/{pumpId}/chart.svg',
      operationId: 'getPumpChart',
      summary: 'A picture of the curves of a pump',
      description:
        'Head and electrical power over flow at several settings, with the entered points, the best efficiency and where the head may lie by grade and scatter. Axes are in the units in force.',
      tag: 'pumps',
      query: noQuery,
      body: noBody,
      answer: pageAnswer({
        mediaType: 'image/svg+xml',
        description:
          'The picture, to be shown or printed as it is; it holds no script and refers to nothing.',
        example: SVG_EXAMPLE,
      }),
    },
    async ({ params, system, store }) => {
      const found = await findPump(store, params.pumpId, null);
      if (!found.ok) return found;
      const { id, version, document: pump, fit } = found.value;
      const body = markupText(pumpChart({ entered: pump, fit }, { id: 'pump', system }));
      return success({ body, validator: { basis: [program, MODEL_VERSION, id, version] } });
    },
  );
}
