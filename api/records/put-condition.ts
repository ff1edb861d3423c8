/** Judges whether a PUT may write over what is stored, by its conditions and by what it states. */
import { failed, type Result, success } from '../../curves/result.ts';
import { isAlike } from '../fields/alike.ts';
import { type Problem, problem } from '../http/problem.ts';
import type { RouteRequest } from '../http/route.ts';
import { jsonText } from '../store/json-text.ts';
import { writeProblem } from './write-problems.ts';

interface Stored {
  readonly version: number;
  readonly key?: string | null | undefined;
  readonly document: object;
}

export type PutConditions = Pick<
  RouteRequest<string, unknown, unknown>,
  'expectedVersion' | 'isConditional' | 'mustBeNew'
>;

/** The version read would be of nothing, since there is nothing yet. */
export const nothingYet = (noun: string): Problem =>
  problem('stale-version', `There is no ${noun} yet: to create it, leave out If-Match.`, {
    errors: [{ header: 'If-Match', detail: 'names a version, but there is none; leave it out' }],
  });

/** As it would be read back from the store; a key is compared where one is stated. */
const isSame = (stored: Stored, { document, key }: Omit<Stored, 'version'>): boolean =>
  (key === undefined || key === (stored.key ?? null)) &&
  isAlike(JSON.parse(jsonText(document)), stored.document);

/** A PUT of what is stored changes nothing, and needs no If-Match, so that a script that sets a site up can run twice. */
export function putCondition(
  { expectedVersion, isConditional, mustBeNew }: PutConditions,
  { stored, put, noun }: { stored: Stored; put: Omit<Stored, 'version'>; noun: string },
): Result<'write' | 'is-stored', Problem> {
  const { version } = stored;
  if (mustBeNew) {
    const errors = [
      { header: 'If-None-Match', detail: 'demands that there is none; leave it out to replace' },
    ];
    return failed(problem('stale-version', `There is a ${noun} already, at version ${version}.`, { errors }));
  }
  if (isConditional && expectedVersion !== 'any' && expectedVersion !== version)
    return failed(writeProblem({ outcome: 'stale', version }, noun));
  if (isSame(stored, put)) return success('is-stored');
  if (isConditional) return success('write');
  const errors = [{ header: 'If-Match', detail: `is required, since this changes the ${noun}` }];
  const detail = `There is a ${noun}, at version ${version}: send the ETag that was read in If-Match.`;
  return failed(problem('version-required', detail, { errors }));
}
