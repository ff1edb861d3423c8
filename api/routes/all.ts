/** Every route of the service. */
import type { Api } from '../http/api.ts';
import { loopCache } from '../work/loop-cache.ts';
import { billOfMaterialsRoute } from './bills-of-materials.ts';
import { dutyPointRoute } from './duty-point.ts';
import { leakExposureRoutes } from './leak-exposures.ts';
import { loopRoutes } from './loops.ts';
import { probeRoutes } from './probes.ts';
import { pumpCurvesRoute } from './pump-curves.ts';
import { pumpPointRoutes } from './pump-points.ts';
import { pumpRoutes } from './pumps.ts';
import { recommendationRoutes } from './recommendations.ts';
import { referenceRoutes } from './reference.ts';
import { scheduleRoutes } from './schedule.ts';
import { screenSizeRoutes } from './screen-sizes.ts';
import { setpointRoutes } from './setpoint.ts';
import { siteRoutes } from './site.ts';
import { sparesRoute } from './spares.ts';
import { specificationRoute } from './specification.ts';
import { systemCurveRoute } from './system-curve.ts';
import { tariffRoutes } from './tariffs.ts';

export function mountRoutes(api: Api): void {
  const loops = loopCache();
  siteRoutes(api);
  pumpRoutes(api);
  pumpPointRoutes(api);
  pumpCurvesRoute(api);
  loopRoutes(api);
  systemCurveRoute(api, loops);
  dutyPointRoute(api, loops);
  tariffRoutes(api);
  scheduleRoutes(api, loops);
  setpointRoutes(api, loops);
  recommendationRoutes(api, loops);
  screenSizeRoutes(api);
  leakExposureRoutes(api);
  billOfMaterialsRoute(api);
  sparesRoute(api);
  referenceRoutes(api);
  probeRoutes(api);
  specificationRoute(api);
}
