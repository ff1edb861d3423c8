/** Builds the application, which answers requests and opens nothing. */
import { OpenAPIHono } from '@hono/zod-openapi';
import { loopbackOnly } from './access/loopback.ts';
import { siteOfCaller } from './access/site.ts';
import { accessLog } from './http/access-log.ts';
import type { Api, AppDependencies, RequestVariables } from './http/api.ts';
import { answerFault, answerNotFound, refuseOtherMethods } from './http/fallbacks.ts';
import { problemSchema } from './http/problem-schema.ts';
import { requestId } from './http/request-id.ts';
import { securityHeaders } from './http/security-headers.ts';
import { urlLimit } from './http/url-limit.ts';
import { wellFormedPath } from './http/well-formed-path.ts';
import { mountRoutes } from './routes.ts';

export type { AppDependencies } from './http/api.ts';

/** The application with the registry of its operations; `mount` mounts the routes. */
export function buildApi(deps: AppDependencies, mount: (api: Api) => void = mountRoutes): Api {
  const app = new OpenAPIHono<RequestVariables>();
  const api: Api = { app, deps, documentedStatuses: new Set() };
  app.notFound(answerNotFound);
  app.onError(answerFault(deps.logger));
  app.use(requestId(deps.newId));
  app.use(accessLog(deps));
  app.use(securityHeaders);
  app.use(loopbackOnly);
  app.use(urlLimit);
  app.use(wellFormedPath);
  app.use(siteOfCaller);
  app.use(refuseOtherMethods(app));
  app.openAPIRegistry.register('Problem', problemSchema);
  mount(api);
  return api;
}

export const buildApp = (deps: AppDependencies) => buildApi(deps).app;
