/** Names the application while its routes are being mounted, and all that it takes from outside. */
import type { OpenAPIHono } from '@hono/zod-openapi';
import type { Logger } from 'pino';
import type { SiteStore, Store } from '../store/store.ts';
import type { WorkerPool } from '../threads/worker-pool.ts';

/** All that the application takes from outside. It opens nothing, listens to nothing, reads no clock of its own. */
export interface AppDependencies {
  readonly store: Store;
  readonly clock: () => Date;
  readonly newId: () => string;
  readonly logger: Logger;
  /** Where jobs run that would delay other requests. */
  readonly workers: WorkerPool;
  readonly version: string;
}

/** What a question about one site is answered with. */
export interface SiteDependencies extends Omit<AppDependencies, 'store'> {
  readonly store: SiteStore;
}

/** `siteId`: the site that the caller acts in. */
export interface RequestVariables {
  Variables: { requestId: string; siteId: string };
}

export interface Api {
  readonly app: OpenAPIHono<RequestVariables>;
  readonly deps: AppDependencies;
  /** The statuses of problems that the OpenAPI document shows so far. */
  readonly documentedStatuses: Set<number>;
}
