/** The routes that answer with pictures or pages. */

import { comparisonPageRoutes } from './features/comparison/page-route.ts';
import { conditionChartRoute } from './features/condition/chart-route.ts';
import { loopChartRoute } from './features/loop-chart/route.ts';
import { loopReportRoute } from './features/loop-report/route.ts';
import { pumpChartRoute } from './features/pump-curves/chart-route.ts';
import type { Recommended } from './features/recommendation/recommendation.ts';
import { dayChartRoute } from './features/schedule/day-chart-route.ts';
import type { PlanCache } from './features/schedule/plan-cache.ts';
import type { Api } from './http/api.ts';
import { answerCache } from './question/answer-cache.ts';
import type { LoopCache } from './records/loop/compiled-loops.ts';

export function pictureRoutes(
  api: Api,
  { loops, plans }: { readonly loops: LoopCache; readonly plans: PlanCache },
): void {
  const means = { loops, heavyWork: api.deps.heavyWork, answers: answerCache<Recommended>() };
  pumpChartRoute(api);
  loopChartRoute(api, means);
  dayChartRoute(api, plans);
  conditionChartRoute(api, loops);
  comparisonPageRoutes(api);
  loopReportRoute(api, { means, plans });
}
