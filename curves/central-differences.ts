/** The Jacobian of several functions of several parameters, by central differences. */

/** Step as a share of the parameter's scale: a function solved for to 1e-12 keeps seven digits, a smooth one nine. */
const RELATIVE_STEP = 2e-5;

/**
 * One row a function, one entry a parameter: d f_i/d p_j = (f_i(p_j + h) - f_i(p_j - h))/(2 h), h being 2e-5 of `scales` j.
 *
 * `evaluate` answers all functions at once, always the same number of them, also a step outside of the parameters given.
 */
export function centralDifferences(
  evaluate: (parameters: readonly number[]) => readonly number[],
  { parameters, scales }: { readonly parameters: readonly number[]; readonly scales: readonly number[] },
): readonly (readonly number[])[] {
  const columns = parameters.map((value, index) => {
    const step = RELATIVE_STEP * (scales[index] ?? 1);
    const above = evaluate(parameters.with(index, value + step));
    const below = evaluate(parameters.with(index, value - step));
    return above.map((high, row) => (high - (below[row] ?? Number.NaN)) / (2 * step));
  });
  return (columns[0] ?? []).map((_, row) => columns.map((column) => column[row] ?? Number.NaN));
}
