/** Ordinary least squares by Gram-Schmidt, each column made orthogonal twice. */

type Column = readonly number[];

const dot = (a: Column, b: Column): number => a.reduce((sum, value, row) => sum + value * (b[row] ?? 0), 0);
const lessMultiple = (a: Column, factor: number, b: Column): number[] =>
  a.map((value, row) => value - factor * (b[row] ?? 0));

export interface Fit {
  readonly coefficients: readonly number[];
  readonly residuals: readonly number[];
  readonly leverages: readonly number[];
}

/** Coefficients of the columns that come nearest to y, with residuals (y - fitted) and leverages. */
export function leastSquares(columns: readonly Column[], y: Column): Fit {
  const basis: Column[] = [];
  const upper: number[][] = [];
  for (const column of columns) {
    let rest = [...column];
    const parts = basis.map(() => 0);
    for (let pass = 0; pass < 2; pass += 1)
      for (const [index, direction] of basis.entries()) {
        const part = dot(direction, rest);
        parts[index] = (parts[index] ?? 0) + part;
        rest = lessMultiple(rest, part, direction);
      }
    const size = Math.sqrt(dot(rest, rest));
    if (size === 0) throw new Error('columns depend on each other');
    basis.push(rest.map((value) => value / size));
    upper.push([...parts, size]);
  }
  let residuals = [...y];
  const sides = basis.map((direction) => {
    const part = dot(direction, residuals);
    residuals = lessMultiple(residuals, part, direction);
    return part;
  });
  const coefficients = sides.map(() => 0);
  for (let index = sides.length - 1; index >= 0; index -= 1) {
    let side = sides[index] ?? 0;
    for (let later = index + 1; later < sides.length; later += 1)
      side -= (upper[later]?.[index] ?? 0) * (coefficients[later] ?? 0);
    coefficients[index] = side / (upper[index]?.[index] ?? 0);
  }
  const leverages = y.map((_, row) => basis.reduce((sum, direction) => sum + (direction[row] ?? 0) ** 2, 0));
  return { coefficients, residuals, leverages };
}

const SWEEPS = 60;

/** Ratio of the largest to the least singular value of the columns, by one-sided Jacobi rotations. */
export function conditionNumber(columns: readonly Column[]): number {
  const turned: Column[] = columns.map((column) => [...column]);
  for (let sweep = 0; sweep < SWEEPS; sweep += 1)
    for (let p = 0; p < turned.length; p += 1)
      for (let q = p + 1; q < turned.length; q += 1) {
        const a = turned[p] ?? [];
        const b = turned[q] ?? [];
        const skew = dot(a, b);
        if (skew === 0) continue;
        const angle = Math.atan2(2 * skew, dot(a, a) - dot(b, b)) / 2;
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        turned[p] = a.map((value, row) => c * value + s * (b[row] ?? 0));
        turned[q] = a.map((value, row) => c * (b[row] ?? 0) - s * value);
      }
  const sizes = turned.map((column) => Math.sqrt(dot(column, column)));
  return Math.max(...sizes) / Math.min(...sizes);
}
