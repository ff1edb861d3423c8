/** Writes tables as CSV (RFC 4180). */
import { unitInForce } from '../units/convert.ts';
import type { UnitOfColumn } from '../units/quantity-of.ts';
import type { UnitSystem } from '../units/unit-system.ts';
import { plainDecimal } from '../wording/plain-decimal.ts';

export type Cell = string | number | boolean | null | undefined;

export interface Column {
  readonly name: string;
  readonly unit?: UnitOfColumn;
}

/** Numbers are already in the units in force. */
export interface Table {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
  /** Of its columns of money. */
  readonly currency?: string | undefined;
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

function headerOf({ name, unit }: Column, currency: string | undefined, system: UnitSystem): string {
  const shown = unit === undefined || unit === 'money' ? unit && currency : unitInForce(unit, system);
  return writeText(shown === undefined ? name : `${name} [${shown}]`);
}

/** Header `flow [L/h]` or `cost [EUR]`, then the rows; lines end in CRLF, the last one too; no byte order mark. */
export function writeCsv({ columns, rows, currency }: Table, system: UnitSystem): string {
  const header = columns.map((column) => headerOf(column, currency, system));
  const lines = [header, ...rows.map((row) => row.map(writeCell))];
  return lines.map((line) => `${line.join(',')}\r\n`).join('');
}
