/** Refuses what a recommendation cannot be asked for, at its place in the request. */
import { failed, type Result, success } from '../../../curves/result.ts';
import type { Assurance } from '../../../models/assurance/assure-loop.ts';
import { type AppliedCalibration, calibratedAssurance } from '../../../models/calibration/applied.ts';
import { invalidRequest, type Problem } from '../../http/problem.ts';
import type { AskedAssurance } from './assurance-request.ts';

/** Candidates that are judged again for each saving, of which there are up to twenty. */
export const LOSSES_CANDIDATES = 500;

/** Null where none is asked for. */
export function statedAssurance(
  asked: AskedAssurance | undefined,
  calibration: AppliedCalibration | null | undefined,
): Result<Assurance | null, Problem> {
  if (asked === undefined) return success(null);
  if (asked !== 'calibration') return success(asked);
  if (calibration !== null && calibration !== undefined) return success(calibratedAssurance(calibration));
  const detail =
    'is not available: the loop has no calibration whose interval could be taken; apply one by POST /v1/loops/{loopId}/calibration';
  return failed(invalidRequest([{ pointer: '/assurance', detail }]));
}

/** Null where the detail can be given. */
export function detailProblem(detail: 'plain' | 'losses', candidates: number): Problem | null {
  if (detail === 'plain' || candidates <= LOSSES_CANDIDATES) return null;
  const text = `losses looks at no more than ${LOSSES_CANDIDATES} candidates, not ${candidates}: name those to choose among`;
  const over = { limit: LOSSES_CANDIDATES, actual: candidates };
  return invalidRequest([{ pointer: '/detail', detail: text, ...over }]);
}
