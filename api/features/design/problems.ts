/** Turns designs that cannot be searched into problems that name the place and the remedy. */
import type { DesignFailure } from '../../../models/designs/design-failure.ts';
import type { DocumentPath } from '../../../models/loop/document-path.ts';
import { toPointer } from '../../http/json-pointer.ts';
import { invalidRequest, type Problem, problem } from '../../http/problem.ts';
import { unsolvedProblem } from '../../question/solve-problems.ts';
import { loopFailureDetail } from '../../records/loop/compile.ts';
import { quoted } from '../../wording/quoted.ts';

/** `isInline`: the loop came with the request, so that a fault can be named where it is. */
export function designProblem(failure: DesignFailure, isInline: boolean): Problem {
  const at = (path: DocumentPath, detail: string): Problem =>
    invalidRequest([
      isInline
        ? { pointer: toPointer(['loop', ...path]), detail }
        : { pointer: '/loop', detail: `at ${toPointer(path)}: ${detail}` },
    ]);
  switch (failure.code) {
    case 'too-many-runs':
      return overLimit('/loop', 'runs', failure);
    case 'too-many-candidates':
      return overLimit('/pumps', 'candidates', failure);
    case 'no-pipe-price':
      return at(failure.path, 'has no price: state its price in `pipePrices`');
    case 'requirement-missing':
      return at(
        [...failure.path, 'requiredFlow'],
        `is needed: state the flow that outlet ${quoted(failure.outlet)} requires, 0 for closed`,
      );
    case 'requirement-by-size':
      return at(
        failure.path,
        `gives outlet ${quoted(failure.outlet)} a flow that depends on the size of its pipe; state \`requiredFlow\` or \`nozzleDiameter\``,
      );
    case 'outlet-shut-off':
      return at(
        failure.path,
        `is closed before outlet ${quoted(failure.outlet)}, which requires a flow; open it`,
      );
    case 'no-requirement': {
      const detail = 'No outlet of the loop requires a flow above 0: state a requiredFlow.';
      return problem('no-requirement', detail, {
        errors: [{ pointer: '/loop', detail: 'has no outlet that requires a flow' }],
      });
    }
    default:
      return 'path' in failure ? at(failure.path, loopFailureDetail(failure)) : unsolvedProblem(failure);
  }
}

function overLimit(
  pointer: string,
  noun: string,
  { limit, actual }: { readonly limit: number; readonly actual: number },
): Problem {
  return invalidRequest([
    { pointer, detail: `has ${actual} ${noun}; ${limit} are the limit`, limit, actual },
  ]);
}
