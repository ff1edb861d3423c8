/** The routes that answer with pictures or pages. */
import type { Api } from '../http/api.ts';
import { answerCache } from '../work/answer-cache.ts';
import type { LoopCache } from '../work/loop-cache.ts';
import type { PlanCache } from '../work/plan-cache.ts';
import type { Recommended } from '../work/recommend.ts';
import { comparisonPageRoutes } from './comparison-pages.ts';
import { conditionChartRoute } from './condition-chart.ts';
import { dayChartRoute } from './day-chart.ts';
import { loopChartRoute } from './loop-chart.ts';
import { loopReportRoute } from './loop-report.ts';
import { pumpChartRoute } from './pump-chart.ts';

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
