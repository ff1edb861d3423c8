/** Names a problem as a value, which a handler returns where it cannot answer. */
import type { ProblemCode } from './problem-registry.ts';

/** One fault of a request: where it is, by exactly one of the three, and what is wrong. */
export interface ProblemError {
  readonly pointer?: string;
  readonly parameter?: string;
  readonly header?: string;
  readonly detail: string;
  /** The line of a CSV body. */
  readonly line?: number;
  readonly limit?: number;
  readonly actual?: number;
}

export interface UsedBy {
  readonly kind: string;
  readonly id: string;
  readonly key?: string;
  readonly name: string;
}

export interface ProblemFacts {
  readonly errors?: readonly ProblemError[];
  readonly limit?: number;
  readonly actual?: number;
  readonly usedBy?: readonly UsedBy[];
  readonly headers?: Readonly<Record<string, string>>;
}

export interface Problem extends ProblemFacts {
  readonly code: ProblemCode;
  readonly detail: string;
}

export const problem = (code: ProblemCode, detail: string, facts: ProblemFacts = {}): Problem => ({
  code,
  detail,
  ...facts,
});

/** A request that is wrong in the places that `errors` names. */
export function invalidRequest(errors: readonly ProblemError[]): Problem {
  const [first] = errors;
  const over = errors.find(({ limit }) => limit !== undefined);
  const where = first?.pointer ?? first?.parameter ?? first?.header ?? '';
  const detail = first === undefined ? 'The request is not valid.' : `${where} ${first.detail}`.trim();
  if (over?.limit !== undefined && over.actual !== undefined) {
    return problem('limit-exceeded', detail, { errors, limit: over.limit, actual: over.actual });
  }
  return problem('invalid-request', detail, { errors });
}

/** Where a request states something: in its body or in its query. */

export type Place = { readonly pointer: string } | { readonly parameter: string };
