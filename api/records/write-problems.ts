/** Turns writes that the store refused into problems. */
import { invalidRequest, type Problem, problem } from '../http/problem.ts';
import type {
  InUse,
  KeyTaken,
  Missing,
  Stale,
  UnknownLoop,
  UnknownPump,
  UnknownTariff,
} from '../store/versions.ts';

export type RefusedWrite = Stale | Missing | InUse | KeyTaken | UnknownLoop | UnknownPump | UnknownTariff;

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
    case 'key-taken':
      return problem('key-taken', `The key is that of another ${noun}, "${outcome.usedBy[0]?.name}".`, {
        usedBy: outcome.usedBy,
        errors: [{ pointer: '/key', detail: `is that of another ${noun}; choose another` }],
      });
    case 'unknown-tariff':
      return invalidRequest([{ pointer: '/tariff', detail: 'names no tariff that is stored' }]);
    case 'unknown-loop':
      return invalidRequest([{ pointer: '/loop', detail: 'names no loop that is stored' }]);
    case 'unknown-pump':
      return invalidRequest([{ pointer: '/installed/pump', detail: 'names no pump that is stored' }]);
  }
}

/** Of an id in the path. */
export const nothingHere = (noun: string, collection: string): Problem =>
  problem('not-found', `There is no ${noun} with this id. GET ${collection} lists those that there are.`);
