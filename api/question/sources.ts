/** Finds the loop and the pumps of a recommendation, in the store or in the request itself. */

import { type Result, success } from '../../curves/result.ts';
import type { Loop } from '../../models/loop/loop.ts';
import { waterProperties } from '../../models/physics/water.ts';
import type { Pump } from '../../models/pump/pump.ts';
import { toPointer } from '../http/json-pointer.ts';
import type { Problem } from '../http/problem.ts';
import type { BodyReading } from '../http/request-body.ts';
import type { StoredLoop } from '../records/loop/compiled-loops.ts';
import { findLoop, LOOPS } from '../records/loop/kind.ts';
import { statedDensity } from '../records/loop/water.ts';
import type { SiteStore } from '../store/store.ts';
import { DEFAULT_DENSITY } from '../units/schema-context.ts';
import type { CandidateRequest } from './candidates.ts';

export async function findStoredLoop(
  store: SiteStore,
  loop: string | Loop,
): Promise<Result<StoredLoop, Problem>> {
  if (typeof loop === 'string') return findLoop(store, loop, { pointer: '/loop' });
  return success({ id: null, version: null, document: loop });
}

/** The pumps of a body, each with its place. */
export function candidateRequests(
  pumps: readonly (string | Pump | { readonly pump: string | Pump; readonly count: number })[],
): readonly CandidateRequest[] {
  return pumps.map((one, index) => {
    const isCounted = typeof one === 'object' && 'pump' in one;
    const path = isCounted ? ['pumps', index, 'pump'] : ['pumps', index];
    return {
      ...(isCounted ? one : { pump: one, count: 1 }),
      path,
      place: { pointer: toPointer(path) },
    };
  });
}

/** The density of the water of the loop that a body is about, before the body is read [kg/m3]. */
export async function densityOfLoop(raw: unknown, { system, store }: BodyReading): Promise<number> {
  if (typeof raw !== 'object' || raw === null || !('loop' in raw)) return DEFAULT_DENSITY;
  if (typeof raw.loop !== 'string') return statedDensity(raw.loop, { system });
  // Only pumps have heads, and pumps by their ids have none.
  const pumps = 'pumps' in raw && Array.isArray(raw.pumps) ? raw.pumps : [];
  if (pumps.every((pump) => typeof pump === 'string')) return DEFAULT_DENSITY;
  const stored = await store.of(LOOPS).get(raw.loop);
  return stored === undefined ? DEFAULT_DENSITY : waterProperties(stored.document.water).density;
}
