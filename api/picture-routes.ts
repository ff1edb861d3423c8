/** The routes that answer with pictures or pages. */

import { comparisonPageRoutes } from './features/comparison/page-route.ts';
import { conditionChartRoute } from './features/condition/chart-route.ts';
import { loopChartRoute } from './features/loop-chart/route.ts';
import { loopReportRoute } from './features/loop-report/route.ts';
import { pumpChartRoute } from './features/pump-curves/chart-route.ts';
import type { RecommendationMeans } from './features/recommendation/recommendation.ts';
import { dayChartRoute } from './features/schedule/day-chart-route.ts';
import type { PlanCache } from './features/schedule/plan-cache.ts';
import type { Api } from './http/api.ts';

export function pictureRoutes(
  api: Api,
  { means, plans }: { readonly means: RecommendationMeans; readonly plans: PlanCache },
): void {
  pumpChartRoute(api);
  loopChartRoute(api, means);
  dayChartRoute(api, plans);
  conditionChartRoute(api, means.loops);
  comparisonPageRoutes(api);
  loopReportRoute(api, { means, plans });
}
