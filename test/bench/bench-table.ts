/** Rows of measurements as text in columns. */
import type { BenchRow } from './bench-row.ts';

const HEADER = ['case', 'ratio', 'limit', 'holds'];
const GAP = '  ';

const limitText = ({ limit }: BenchRow): string =>
  'atMost' in limit ? `<= ${limit.atMost}` : `>= ${limit.atLeast}`;

const cellsOf = (row: BenchRow): readonly string[] => [
  row.name,
  row.ratio.toPrecision(3),
  limitText(row),
  row.holds ? 'yes' : 'NO',
];

/** A header, a rule, and for each row its cells with the figures behind them below. */
export function benchTable(rows: readonly BenchRow[]): string {
  const table = rows.map(cellsOf);
  const widths = HEADER.map((title, column) =>
    Math.max(title.length, ...table.map((cells) => cells[column]?.length ?? 0)),
  );
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join(GAP)
      .trimEnd();
  const rule = widths.map((width) => '-'.repeat(width)).join(GAP);
  const body = rows.flatMap((row, place) => [line(table[place] ?? []), `${GAP}${row.detail}`]);
  return [line(HEADER), rule, ...body].join('\n');
}
