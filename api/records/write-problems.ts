/** Turns writes that the store refused into problems. */
import { invalidRequest, type Place, type Problem, problem } from '../http/problem.ts';
import type { InUse, Missing, Stale, UnknownPump, UnknownTariff } from '../store/versions.ts';

/** `noun` is the kind of resource that was to be written. */
export function writeProblem(
  outcome: Stale | Missing | InUse | UnknownPump | UnknownTariff,
  noun: string,
): Problem {
  switch (outcome.outcome) {
    case 'missing':
      return problem('not-found', `There is no ${noun} with this id.`);
    case 'stale':
      return problem('stale-version', `The ${noun} is at version ${outcome.version}.`, {
        errors: [{ header: 'If-Match', detail: `names another version than ${outcome.version}` }],
      });
    case 'in-use':
      return problem('in-use', `The ${noun} is used by others.`, { usedBy: outcome.usedBy });
    case 'unknown-tariff':
      return invalidRequest([{ pointer: '/tariff', detail: 'names no tariff that is stored' }]);
    case 'unknown-pump':
      return invalidRequest([{ pointer: '/installed/pump', detail: 'names no pump that is stored' }]);
  }
}

export function noRecord(kind: 'loop' | 'pump' | 'tariff', place: Place | null): Problem {
  if (place === null) return problem('not-found', `There is no ${kind} with this id.`);
  return invalidRequest([{ ...place, detail: `names no ${kind} that is stored` }]);
}
