/** Builds an orthonormal basis of the columns of a fit, for residuals and leverages of many fits on the same columns. */

/** What is left of a column below this share of its length is rounding: the column depends on those before it. */
const DEPENDENT = 1e-12;

/** The space of the columns of a fit. */
export interface ColumnSpace {
  /** Values [any] less their least-squares fit on the columns, one a row. */
  residualsOf(values: readonly number[]): readonly number[];
  /** Diagonal of the hat matrix [-], 0..1, one a row. */
  readonly leverages: readonly number[];
}

/**
 * The space spanned by the columns of `rows` [any], by the method of Gram and Schmidt with each column projected twice, which
 * keeps the basis orthogonal to rounding. Columns that depend on earlier ones add nothing.
 *
 * Source: Giraud, Langou and Rozloznik (2005), The loss of orthogonality in the Gram-Schmidt process, Comput. Math. Appl. 50.
 */
export function columnSpace(rows: readonly (readonly number[])[]): ColumnSpace {
  const basis: (readonly number[])[] = [];
  const less = (values: readonly number[]): readonly number[] =>
    basis.reduce((rest, unit) => {
      const share = dot(rest, unit);
      return rest.map((value, row) => value - share * (unit[row] ?? 0));
    }, values);
  for (let column = 0; column < (rows[0]?.length ?? 0); column++) {
    const entries = rows.map((row) => row[column] ?? 0);
    const rest = less(less(entries));
    const length = Math.sqrt(dot(rest));
    if (length > DEPENDENT * Math.sqrt(dot(entries))) basis.push(rest.map((value) => value / length));
  }
  return {
    residualsOf: (values) => less(less(values)),
    leverages: rows.map((_, row) => basis.reduce((sum, unit) => sum + (unit[row] ?? 0) ** 2, 0)),
  };
}

const dot = (a: readonly number[], b: readonly number[] = a): number =>
  a.reduce((sum, value, row) => sum + value * (b[row] ?? 0), 0);
