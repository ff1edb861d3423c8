/** What is checked of a completion before it is stored, and what the store says of it. */

import { failed, type Result, success } from '../../../curves/result.ts';
import { invalidRequest, type Problem, problem } from '../../http/problem.ts';
import type { SiteStore } from '../../store/store.ts';
import type { Completion, CompletionKey, CompletionOperations, CompletionRecord } from './contract.ts';
import { COMPLETIONS } from './kind.ts';

/** Clocks of callers may be ahead of the service's by this. */
const CLOCK_SKEW_MS = 60_000;

export const notInFuture = (at: number, now: number): Result<null, Problem> =>
  at <= now + CLOCK_SKEW_MS
    ? success(null)
    : failed(invalidRequest([{ pointer: '/at', detail: 'must not be in the future' }]));

const says = ({ minutes, note }: Completion): string => JSON.stringify([minutes ?? null, note ?? null]);

/** A completion that is there already answers for one that says the same; one that says otherwise is refused. */
export function settled(
  outcome: Awaited<ReturnType<CompletionOperations['insert']>>,
  entered: Completion,
): Result<CompletionRecord, Problem> {
  switch (outcome.outcome) {
    case 'inserted':
      return success(outcome.record);
    case 'exists':
      if (says(outcome.record.document) === says(entered)) return success(outcome.record);
      return failed(
        invalidRequest([
          { pointer: '/at', detail: `is the instant of another completion, ${outcome.record.id}` },
        ]),
      );
    case 'missing':
      return failed(noCompletion('maintenance task'));
  }
}

export const noCompletion = (noun = 'completion'): Problem =>
  problem('not-found', `There is no ${noun} with this id.`);

export async function findCompletion(
  store: SiteStore,
  key: CompletionKey,
): Promise<Result<CompletionRecord, Problem>> {
  const completion = await store.of(COMPLETIONS).get(key);
  return completion === undefined ? failed(noCompletion()) : success(completion);
}
