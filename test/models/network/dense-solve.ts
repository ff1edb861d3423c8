/** Solves a square system of linear equations by elimination with row exchange: the plainest algorithm there is. */

export function denseSolve(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] {
  const rows = matrix.map((row, i) => [...row, right[i] ?? Number.NaN]);
  const size = rows.length;
  for (let column = 0; column < size; column += 1) {
    let pivot = column;
    for (let i = column + 1; i < size; i += 1) {
      if (Math.abs(rows[i]?.[column] ?? 0) > Math.abs(rows[pivot]?.[column] ?? 0)) pivot = i;
    }
    const [above, below] = [rows[column] ?? [], rows[pivot] ?? []];
    [rows[column], rows[pivot]] = [below, above];
    for (let i = column + 1; i < size; i += 1) {
      const row = rows[i] ?? [];
      const factor = (row[column] ?? 0) / (below[column] ?? Number.NaN);
      for (let j = column; j <= size; j += 1) row[j] = (row[j] ?? 0) - factor * (below[j] ?? 0);
    }
  }
  const found = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i -= 1) {
    const row = rows[i] ?? [];
    let sum = row[size] ?? Number.NaN;
    for (let j = i + 1; j < size; j += 1) sum -= (row[j] ?? 0) * (found[j] ?? 0);
    found[i] = sum / (row[i] ?? Number.NaN);
  }
  return found;
}
