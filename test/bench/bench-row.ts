/** One line of the table: a ratio measured within one run, and the limit it must keep. */

export interface BenchRow {
  readonly name: string;
  readonly ratio: number;
  readonly limit: { readonly atMost: number } | { readonly atLeast: number };
  readonly holds: boolean;
  /** The figures behind the ratio. */
  readonly detail: string;
}

export function benchRow({ name, ratio, limit, detail }: Omit<BenchRow, 'holds'>): BenchRow {
  const holds = 'atMost' in limit ? ratio <= limit.atMost : ratio >= limit.atLeast;
  return { name, ratio, limit, holds, detail };
}
