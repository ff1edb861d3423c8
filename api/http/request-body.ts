/** Names what a route takes as its body: how it is read, how it is documented. */
import type { z } from '@hono/zod-openapi';
import { type Result, success } from '../../curves/result.ts';
import type { SiteStore } from '../store/store.ts';
import type { UnitSystem } from '../units/unit-system.ts';
import type { Problem } from './problem.ts';

export interface DocumentedBody {
  readonly mediaType: string;
  readonly schema: z.ZodType;
  /** In metric units. */
  readonly example: unknown;
  /** Where the body may also come as another type. */
  readonly other?: DocumentedBody;
}

/** What a body is read with: its units, and the records that it may be about. */
export interface BodyReading {
  readonly system: UnitSystem;
  readonly store: SiteStore;
}

export interface RequestBody<Body> {
  read(request: Request, reading: BodyReading): Promise<Result<Body, Problem>>;
  /** Undefined where there is no body. */
  document(): DocumentedBody | undefined;
}

export const noBody: RequestBody<undefined> = {
  read: async () => success(undefined),
  document: () => undefined,
};
