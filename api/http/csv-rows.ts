/** Reads CSV text as rows of named fields. */
import { CsvError, parse } from 'csv-parse/sync';
import { failed, type Result, success } from '../../curves/result.ts';
import { acceptedUnits, type Quantity } from '../units/table.ts';
import { invalidRequest, type Problem, problem } from './problem.ts';

export interface CsvColumn {
  /** `number`: one without a unit; `ignored`: one whose cells are not read. */
  readonly quantity: Quantity | 'number' | 'text' | 'ignored';
  readonly required: boolean;
  /** The column that this is another name of. */
  readonly as?: string;
}

export type CsvColumns = Readonly<Record<string, CsvColumn>>;

const GIVEN = { quantity: 'ignored', required: false } as const;

/** What the service gives to everything it stores, so that a list can be sent back. */
export const GIVEN_COLUMNS = {
  id: GIVEN,
  version: GIVEN,
  createdAt: GIVEN,
  updatedAt: GIVEN,
} as const satisfies CsvColumns;

export interface CsvRows {
  readonly rows: readonly Readonly<Record<string, number | string>>[];
  /** The line of each row in the body, from 1. */
  readonly lines: readonly number[];
}

interface HeaderCell {
  readonly text: string;
  readonly name: string;
  /** Undefined where there is none of this name. */
  readonly column: CsvColumn | undefined;
  readonly unit: string | undefined;
  readonly isText: boolean;
}

const HEADER_CELL = /^(.+?)(?: ?\[([^[\]]{1,20})\])?$/;
const DECIMAL = /^-?\d*\.?\d+$/;
const ROW_BYTES_MAX = 10_000;
/** So many columns are named to a caller who named another. */
const NAMED_COLUMNS = 20;

/** Rows of unlike length come mostly from where the decimal mark is a comma. */
const UNEVEN: ReadonlySet<string> = new Set([
  'CSV_RECORD_INCONSISTENT_COLUMNS',
  'CSV_RECORD_INCONSISTENT_FIELDS_LENGTH',
]);
const UNEVEN_MEND = '; write decimals with a point, since a comma begins the next cell';

/** What spreadsheets write in place of a comma. */
const OTHER_SEPARATORS = [';', '\t'] as const;

interface ParsedRecord {
  readonly cells: readonly string[];
  readonly line: number;
}

function parseRecords(text: string, rowsMax: number): Result<readonly ParsedRecord[], Problem> {
  try {
    // The header, and one row more than allowed, which shows that there are too many.
    const to = rowsMax + 2;
    const lines: number[] = [];
    const records = parse(text, {
      skip_empty_lines: true,
      trim: true,
      max_record_size: ROW_BYTES_MAX,
      to,
      on_record: (record, { lines: line }) => {
        lines.push(line);
        return record;
      },
    });
    return success(records.map((cells, i) => ({ cells, line: lines[i] ?? 0 })));
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = Number(error.lines);
    const detail = `${error.message}${UNEVEN.has(error.code) ? UNEVEN_MEND : ''}`;
    const errors = [{ pointer: '', detail, ...(Number.isInteger(line) ? { line } : {}) }];
    return failed(problem('malformed-csv', `The body is not CSV: ${detail}`, { errors }));
  }
}

function separatorFault(text: string): Problem | null {
  const [header = ''] = text.split(/\r?\n/, 1);
  const mark = header.includes(',') ? undefined : OTHER_SEPARATORS.find((one) => header.includes(one));
  if (mark === undefined) return null;
  const detail = `cells are separated by commas, not by ${mark === ';' ? 'semicolons' : 'tabs'}; decimals have a point`;
  return problem('malformed-csv', `The body is not CSV: ${detail}.`, {
    errors: [{ pointer: '', detail, line: 1 }],
  });
}

/** A name in other capitals than the column's is the column's. */
function headerCells(texts: readonly string[], columns: CsvColumns): readonly HeaderCell[] {
  const byName = new Map(Object.keys(columns).map((name) => [name.toLowerCase(), name]));
  const found = (text: string) =>
    Object.hasOwn(columns, text) ? text : (byName.get(text.toLowerCase()) ?? text);
  return texts.map((text) => {
    const [, named = '', unit] = Object.hasOwn(columns, text) ? [text, text] : (HEADER_CELL.exec(text) ?? []);
    const entered = found(named);
    const column = Object.hasOwn(columns, entered) ? columns[entered] : undefined;
    return { text, name: column?.as ?? entered, unit, column, isText: column?.quantity === 'text' };
  });
}

function columnList(columns: CsvColumns): string {
  const names = Object.keys(columns).filter((name) => columns[name]?.quantity !== 'ignored');
  const more = names.length > NAMED_COLUMNS ? ` and ${names.length - NAMED_COLUMNS} more` : '';
  return `${names.slice(0, NAMED_COLUMNS).join(', ')}${more}`;
}

function headerFault({ text, name, unit, column }: HeaderCell, columns: CsvColumns): string | undefined {
  if (column === undefined) return `"${text}" is no column here; columns are ${columnList(columns)}`;
  if (unit === undefined) return undefined;
  const { quantity } = column;
  if (quantity === 'number' || quantity === 'text' || quantity === 'ignored')
    return `"${text}" has a unit; ${name} has none`;
  const accepted = acceptedUnits(quantity);
  if (accepted.includes(unit)) return undefined;
  return `"${text}" has the unit "${unit}"; accepted are ${accepted.join(', ')}`;
}

function readHeader(texts: readonly string[], columns: CsvColumns): Result<readonly HeaderCell[], Problem> {
  const header = headerCells(texts, columns);
  const names = header.map(({ name }) => name);
  const missing = Object.keys(columns).filter((name) => columns[name]?.required && !names.includes(name));
  const details = [
    ...header.flatMap((cell) => headerFault(cell, columns) ?? []),
    ...names
      .filter((name, i) => name !== '' && names.indexOf(name) !== i)
      .map((name) => `the column ${name} is there twice`),
    ...missing.map((name) => `the column ${name} is missing`),
  ];
  if (details.length === 0) return success(header);
  return failed(invalidRequest(details.map((detail) => ({ pointer: '', detail, line: 1 }))));
}

/** An empty cell is an absent field; a number takes the unit of its column, where the header names one. */
function rowOf(cells: readonly string[], header: readonly HeaderCell[]): Record<string, number | string> {
  const fields = cells.flatMap((cell, i): [string, number | string][] => {
    const column = header[i];
    if (cell === '' || column === undefined || column.column?.quantity === 'ignored') return [];
    if (column.isText || !DECIMAL.test(cell)) return [[column.name, cell]];
    return [[column.name, column.unit === undefined ? Number(cell) : `${cell} ${column.unit}`]];
  });
  return Object.fromEntries(fields);
}

/** The first line names the columns in any order, a unit in brackets behind a name: `flow [gal/h],head`. */
export function csvRows(
  text: string,
  { columns, rowsMax }: { columns: CsvColumns; rowsMax: number },
): Result<CsvRows, Problem> {
  const separated = separatorFault(text);
  if (separated !== null) return failed(separated);
  const records = parseRecords(text, rowsMax);
  if (!records.ok) return records;
  const [first, ...others] = records.value;
  if (first === undefined) return failed(problem('missing-body', 'The body needs a header line.'));
  const header = readHeader(first.cells, columns);
  if (!header.ok) return header;
  return success({
    rows: others.map(({ cells }) => rowOf(cells, header.value)),
    lines: others.map(({ line }) => line),
  });
}
