/** Answers with the printable report of a loop. */
import { z } from '@hono/zod-openapi';
import { success } from '../../../curves/result.ts';
import { PAGE_EXAMPLE } from '../../drawing/page-example.ts';
import { queryWhole } from '../../fields/query-field.ts';
import { COUNT } from '../../fields/running-fields.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { pageAnswer } from '../../http/page-answer.ts';
import { noBody } from '../../http/request-body.ts';
import { findLoop } from '../../records/loop/kind.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import type { RecommendationDeps } from '../recommendation/recommendation.ts';
import type { PlanCache } from '../schedule/plan-cache.ts';
import { loopReportOf } from './compose.ts';
import { loopReport } from './report/report.ts';

const query = (context: SchemaContext) =>
  z.strictObject({
    pump: described(context, z.string().min(1), {
      description:
        'Ids or keys of stored pumps to choose among, separated by commas; all stored pumps where it is left out.',
      examples: ['0198c0de,0198c0df'],
    }).optional(),
    count: queryWhole(context, COUNT).optional(),
  });

export function loopReportRoute(
  api: Api,
  { recommending, plans }: { readonly recommending: RecommendationDeps; readonly plans: PlanCache },
): void {
  const deps = { ...api.deps, ...recommending, plans };
  defineRoute(
    api,
    {
      method: 'get',
      path: '/v1/loops/{loopId}/report',
      operationId: 'getLoopReport',
      summary: 'The printable report of a loop',
      description:
        'One page to print, on A4 in metric units and on Letter in US units: the recommended pump, its setting and cost, what each outlet gets, pictures of the duty and of the day, how the installed pump compares, what its readings mean, uncertainty, cautions, assumptions, sources, and the versions of the data.',
      tag: 'loops',
      query,
      body: noBody,
      problems: ['no-requirement', 'unsolved', 'unavailable'],
      answer: pageAnswer({
        mediaType: 'text/html',
        description: 'The page, complete in itself: no script, no reference to anything outside.',
        example: PAGE_EXAMPLE,
      }),
    },
    async ({ params, query: { pump, count = 1 }, system, store }) => {
      const loop = await findLoop(store, params.loopId, null);
      if (!loop.ok) return loop;
      const asked = { loop: loop.value, pumps: pump?.split(','), count, system };
      const reported = await loopReportOf({ ...deps, store }, asked);
      if (!reported.ok) return reported;
      const { report, basis } = reported.value;
      return success({ body: loopReport(report), validator: { basis } });
    },
  );
}
