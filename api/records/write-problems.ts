/** Turns writes that the store refused into problems. */
import { invalidRequest, type Place, type Problem, problem } from '../http/problem.ts';
import type { InUse, Missing, Stale, UnknownLoop, UnknownPump, UnknownTariff } from '../store/versions.ts';

export type RefusedWrite = Stale | Missing | InUse | UnknownLoop | UnknownPump | UnknownTariff;

/** `noun` is the kind of resource that was to be written. */
export function writeProblem(outcome: RefusedWrite, noun: string): Problem {
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
    case 'unknown-loop':
      return invalidRequest([{ pointer: '/loop', detail: 'names no loop that is stored' }]);
    case 'unknown-pump':
      return invalidRequest([{ pointer: '/installed/pump', detail: 'names no pump that is stored' }]);
  }
}

const listedAt = (collection: string): string => `GET ${collection} lists those that there are`;

/** Of an id in the path. */
export const nothingHere = (noun: string, collection: string): Problem =>
  problem('not-found', `There is no ${noun} with this id. ${listedAt(collection)}.`);

export function noRecord(kind: 'loop' | 'pump' | 'tariff', place: Place | null): Problem {
  const collection = `/v1/${kind}s`;
  if (place === null) return nothingHere(kind, collection);
  return invalidRequest([{ ...place, detail: `names no ${kind} that is stored; ${listedAt(collection)}` }]);
}
