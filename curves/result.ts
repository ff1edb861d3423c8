/** Carries the outcome of a computation that can fail in expected ways: a value, or a failure with a code and its numbers. */
export type Result<T, F> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly failure: F };

/** The outcome of a computation that gave a value. */
export const success = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });

/** The outcome of a computation that failed in an expected way. */
export const failed = <F>(failure: F): { readonly ok: false; readonly failure: F } => ({
  ok: false,
  failure,
});
