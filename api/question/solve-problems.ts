/** Turns selections that cannot be made into problems that name the place and the remedy. */

import type { Unsolved } from '../../models/network/solve-failure.ts';
import type { BalanceFailure } from '../../models/selection/balanced-loop.ts';
import { toPointer } from '../http/json-pointer.ts';
import type { Place } from '../http/problem.ts';
import { invalidRequest, type Problem, type ProblemError, problem } from '../http/problem.ts';

/** What a selection may fail on, and where the request states it; null where the path does. */
export interface SelectionPlaces {
  readonly loop: Place | null;
  readonly balancing: Place;
}

const errorsAt = (place: Place | null, detail: string): readonly ProblemError[] =>
  place === null ? [] : [{ ...place, detail }];

/** `isInline`: the loop came with the request, so that a fault can be named where it is. */
export function selectionProblem(
  failure: BalanceFailure,
  { loop, balancing, isInline }: SelectionPlaces & { readonly isInline: boolean },
): Problem {
  switch (failure.code) {
    case 'no-requirement': {
      const detail = 'No outlet of the loop requires a flow above 0: state a requiredFlow or a reach.';
      return problem('no-requirement', detail, {
        errors: errorsAt(loop, 'has no outlet that requires a flow'),
      });
    }
    case 'trim-needs-pipework':
      return invalidRequest([
        { ...balancing, detail: 'must not be trimmed for a loop that is known by its system curve alone' },
      ]);
    case 'trim-needs-requirement': {
      const detail = `needs a requiredFlow on every outlet, 0 for closed; ${failure.outlet} has none`;
      if (!isInline || loop === null || !('pointer' in loop))
        return invalidRequest([{ ...balancing, detail }]);
      const pointer = `${loop.pointer}${toPointer([...failure.path, 'requiredFlow'])}`;
      return invalidRequest([{ pointer, detail: `is needed to trim; 0 closes ${failure.outlet}` }]);
    }
    default:
      return unsolvedProblem(failure);
  }
}

/** A loop or pump so extreme that the equations were not solved within their limits. */
export function unsolvedProblem({ code }: Unsolved): Problem {
  const detail = `The equations of this loop were not solved within their limits (${code}): look for extreme lengths, bores or flows.`;
  return problem('unsolved', detail);
}
