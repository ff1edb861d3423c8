/** The outcome of a computation that can fail in expected ways: a value, or a failure that carries a code and numbers. */
export type Result<T, F> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly failure: F };

export const success = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });

export const failed = <F>(failure: F): { readonly ok: false; readonly failure: F } => ({
  ok: false,
  failure,
});
