/** Finds the Jacobian of several functions of several parameters by central differences. */

/** Step as a share of the parameter's scale: a function solved for to 1e-12 keeps seven digits, a smooth one nine. */
const RELATIVE_STEP = 2e-5;

/**
 * The Jacobian J of functions f of parameters p: J_ij = (f_i(p_j + h_j) - f_i(p_j - h_j))/(2 h_j), h_j = 2e-5 of the
 * scale of p_j.
 *
 * @param evaluate gives all functions at once, always the same number of them, also a step outside of the parameters
 *   given.
 * @param at parameters p in their own units, and one scale for each [unit of p_j] above 0.
 * @returns one row a function, one entry a parameter [unit of f_i/unit of p_j].
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
