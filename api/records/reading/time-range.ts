/** Reads the period that a query asks about. */
import { failed, type Result, success } from '../../../curves/result.ts';
import { invalidRequest, type Problem } from '../../http/problem.ts';

/** From an instant on and before another [ms]. */
export interface TimeRange {
  readonly from: number;
  readonly before: number;
}

/** After any instant that is taken in. */
const FOREVER = 8e12;

/** All of time where nothing is stated. */
export function timeRange({
  from = 0,
  to = FOREVER,
}: {
  readonly from?: number | undefined;
  readonly to?: number | undefined;
}): Result<TimeRange, Problem> {
  if (from < to) return success({ from, before: to });
  return failed(invalidRequest([{ parameter: 'to', detail: 'must be after `from`' }]));
}
