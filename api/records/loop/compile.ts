/** Compiles a loop, or names what does not make sense in it. */
import { failed, type Result } from '../../../curves/result.ts';
import type { Loop } from '../../../models/loop/loop.ts';
import { type CompiledLoop, compileLoop, type LoopFailure } from '../../../models/network/compiled-loop.ts';
import { type PathPart, toPointer } from '../../http/json-pointer.ts';
import { invalidRequest, type Problem } from '../../http/problem.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';

/** `at` is the place of the loop in the request's body. */
export function compileLoopOrProblem(
  loop: Loop,
  at: readonly PathPart[] = [],
): Result<CompiledLoop, Problem> {
  const model = compileLoop(loop);
  if (model.ok) return model;
  const { failure } = model;
  return failed(
    invalidRequest([{ pointer: toPointer([...at, ...failure.path]), detail: loopFailureDetail(failure) }]),
  );
}

const BORE_CHANGE_REMEDY = {
  narrower: 'an enlargement widens',
  wider: 'a reducer narrows',
} as const;

/** What is wrong with a place of a loop, and what is accepted there. */
export function loopFailureDetail(failure: LoopFailure): string {
  switch (failure.code) {
    case 'unknown-pipe':
      return `"${failure.name}" is no pipe of the table (see /v1/reference/pipes); state {"insideDiameter"} instead`;
    case 'unknown-fitting':
      return `"${failure.name}" is no fitting of the table (see /v1/reference/fittings); state {"lossCoefficient"} instead`;
    case 'unknown-valve':
      return `"${failure.name}" is no valve of the table (see /v1/reference/fittings); state {"kv"} instead`;
    case 'unknown-method':
      return failure.methods.length === 0
        ? `must be left out: the loss of ${failure.name} has no choice of methods`
        : `the table has no ${failure.method} of ${failure.name}; state ${failure.methods.join(' or ')}, or leave it out`;
    case 'opening-not-known':
      return `the loss of ${failure.name} at ${failure.opening} % is not known; use 0 or 100, or state {"lossCoefficient"}`;
    case 'roughness-too-large':
      return `must be at most a tenth of the bore, which is ${sayNumber(1000 * failure.bore)} mm`;
    case 'bores-not-known':
      return `takes its loss from two bores and there is no pipe ${failure.missing} it; enter one, of length 0 if need be`;
    case 'bores-do-not-fit':
      return `joins a bore of ${sayNumber(1000 * failure.before)} mm to one of ${sayNumber(1000 * failure.after)} mm, which is not ${failure.towards}; ${BORE_CHANGE_REMEDY[failure.towards]}`;
    case 'bore-change-overstated':
      return 'must be left out: the fitting takes its two bores from the pipes before and after it';
    case 'element-without-diameter':
      return 'has no diameter and no pipe near it to take one from; state "diameter", or enter a pipe';
    case 'no-positive-flow':
      return 'must have a point at a flow above 0';
    case 'system-curve-not-rising':
      return 'must rise with flow: the points give a head that does not';
  }
}

/** Loops were compiled before they became a job. */
export function compiled(loop: Loop): CompiledLoop {
  const model = compileLoop(loop);
  if (!model.ok) throw new Error(`invariant: a job's loop does not compile: ${model.failure.code}`);
  return model.value;
}
