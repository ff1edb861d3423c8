/** Chooses the pump and its setting for a loop that is balanced and assured as asked. */
import { failed, type Result, success } from '../../curves/result.ts';
import type { Limits } from '../loop/limits.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { solving } from '../network/solve-failure.ts';
import { type BalancedLoop, type BalanceFailure, balancedLoop } from '../selection/balanced-loop.ts';
import type { Balancing, Running } from '../selection/options.ts';
import { type Candidate, type Selection, select, type WorstCase } from '../selection/select.ts';
import { type Assurance, assureLoop } from './assure-loop.ts';

/** What to choose among, by which rules. */
export interface Question {
  readonly candidates: readonly Candidate[];
  readonly balancing: Balancing;
  readonly limits: Limits;
  readonly running: Running;
  /** Null: settings need to serve as entered alone. */
  readonly assurance: Assurance | null;
}

/** What was chosen. */
export interface Choice {
  /** What the figures of the selection are taken on. */
  readonly balanced: BalancedLoop;
  /** Undefined without an assurance. */
  readonly worstCase: WorstCase | undefined;
  readonly selection: Selection;
}

/**
 * The best candidate and its setting, on the loop balanced as asked, and feasible in the worst case where an
 * assurance is asked for.
 *
 * @param known the loop made ready for the same balancing, which only saves time.
 * Errors: those of `balancedLoop` and of the solver.
 */
export function choose(
  model: CompiledLoop,
  question: Question,
  known?: BalancedLoop,
): Result<Choice, BalanceFailure> {
  const { balancing, assurance } = question;
  const plain = known === undefined ? balancedLoop(model, balancing) : success(known);
  if (!plain.ok) return plain;
  if (assurance === null) return selected({ balanced: plain.value, worstCase: undefined }, question);
  const assured = assureLoop(model, { balanced: plain.value, balancing, assurance });
  if (!assured.ok) return assured;
  const { nominal, worstCase } = assured.value;
  return selected({ balanced: nominal, worstCase }, question);
}

function selected(
  { balanced, worstCase }: Omit<Choice, 'selection'>,
  { candidates, limits, running }: Question,
): Result<Choice, BalanceFailure> {
  const selection = solving(() =>
    select({ sampled: balanced.sampled, candidates, limits, running, worstCase }),
  );
  return selection.ok
    ? success({ balanced, worstCase, selection: selection.value })
    : failed(selection.failure);
}
