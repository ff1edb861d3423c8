/** Writes tables as CSV (RFC 4180). */
import { unitInForce } from '../units/convert.ts';
import type { Quantity } from '../units/table.ts';
import type { UnitSystem } from '../units/unit-system.ts';
import { plainDecimal } from '../wording/plain-decimal.ts';

export type Cell = string | number | boolean | null | undefined;

export interface Column {
  readonly name: string;
  readonly quantity?: Quantity;
}

/** Numbers are already in the units in force. */
export interface Table {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
}

const NEEDS_QUOTES = /[",\r\n]/;
// A spreadsheet runs a text that starts like this as a formula.
const LOOKS_LIKE_FORMULA = /^[=+\-@\t\r]/;

function writeText(text: string): string {
  const harmless = LOOKS_LIKE_FORMULA.test(text) ? `'${text}` : text;
  return NEEDS_QUOTES.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

function writeCell(cell: Cell): string {
  if (cell === null || cell === undefined) return '';
  if (typeof cell === 'number') return plainDecimal(cell);
  return typeof cell === 'string' ? writeText(cell) : String(cell);
}

/** Header `flow [L/h]`, then the rows; lines end in CRLF, the last one too; no byte order mark. */
export function writeCsv({ columns, rows }: Table, system: UnitSystem): string {
  const header = columns.map(({ name, quantity }) =>
    writeText(quantity === undefined ? name : `${name} [${unitInForce(quantity, system)}]`),
  );
  const lines = [header, ...rows.map((row) => row.map(writeCell))];
  return lines.map((line) => `${line.join(',')}\r\n`).join('');
}
