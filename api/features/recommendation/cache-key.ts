/** All that the answer to a recommendation follows from, as a text to remember it by. */
import type { RecommendationQuestion } from './question.ts';

/** Answers about more candidates are too large to keep many of. */
const CANDIDATES_MOST = 50;

/**
 * Stored records stand in it by id and version, which never mean something else later. Null for a question with a loop or
 * a pump that came with the request, and for one that rests on more than it states.
 */
export function questionKey({ site, loop, candidates, ...stated }: RecommendationQuestion): string | null {
  const isStored = loop.id !== null && candidates.every(({ id }) => id !== null);
  if (!isStored || stated.options.assurance !== undefined || candidates.length > CANDIDATES_MOST) return null;
  const pumps = candidates.map(({ id, version, count }) => [id, version, count]);
  return JSON.stringify([site.id, site.version, loop.id, loop.version, pumps, stated]);
}
