/** Makes a list in an answer a table whose columns are members of its rows, in the units of the answer's schema. */
import type { z } from '@hono/zod-openapi';
import { writtenOnce } from '../caches/written-once.ts';
import { quantityAt } from '../units/quantity-of.ts';
import { documentedContext, type SchemaContext } from '../units/schema-context.ts';
import type { Cell, Column, Table } from './csv.ts';

type Plain = readonly unknown[] | string | number | boolean | null | undefined;

/** The names of the members of a row, of each form that it has. */
type MemberOf<Row> = Row extends Plain ? never : keyof Row & string;

type ValueOf<Row, Name extends string> = Row extends { readonly [Member in Name]?: infer Value }
  ? Value
  : never;

/** A member, or `member.member`. */
type PathOf<Row> = {
  [Name in MemberOf<Row>]: Name | `${Name}.${MemberOf<ValueOf<Row, Name>>}`;
}[MemberOf<Row>];

/** A column that no one member holds; `unitOf` names the member whose unit it has, below that of the rows. */
export interface ComputedColumn<Row, Wire> {
  readonly name: string;
  readonly of: (row: Row, wire: Wire, place: number) => Cell;
  readonly unitOf?: readonly string[];
}

/** A member of the row under its own name or under another, or what is computed of it. */
type ColumnOf<Row, Wire> =
  | PathOf<Row>
  | { readonly name: string; readonly at: PathOf<Row> }
  | ComputedColumn<Row, Wire>;

type RowOf<Wire, List extends keyof Wire> = Wire[List] extends readonly (infer Row)[] ? Row : never;

const memberOf = (value: unknown, name: string): unknown =>
  typeof value === 'object' && value !== null ? Reflect.get(value, name) : undefined;

function cellAt(row: unknown, path: readonly string[]): Cell {
  const value = path.reduce(memberOf, row);
  if (value === null || value === undefined) return value;
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') return value;
  throw new Error(`invariant: ${path.join('.')} of a row is no cell of a table`);
}

interface ReadyColumn extends Column {
  readonly cell: (row: unknown, wire: unknown, place: number) => Cell;
}

/** A column of rows of any schema. */
type AnyColumn = string | { readonly name: string; readonly at: string } | ComputedColumn<unknown, unknown>;

function readyColumn(column: AnyColumn, unitOf: (path: readonly string[]) => Partial<Column>): ReadyColumn {
  if (typeof column === 'object' && 'of' in column) {
    const { name, of, unitOf: path } = column;
    return { name, cell: of, ...(path === undefined ? {} : unitOf(path)) };
  }
  const { name, at } = typeof column === 'object' ? column : { name: column, at: column };
  const path = at.split('.');
  return { name, cell: (row) => cellAt(row, path), ...unitOf(path) };
}

type ColumnsOf<Row, Wire> = readonly ColumnOf<Row, Wire>[] | ((wire: Wire) => readonly ColumnOf<Row, Wire>[]);

/**
 * `list` names the member that holds the rows. Columns are a function where they follow from the answer, as those of outlets do.
 * A column has the unit that the schema gives its member, so that none is stated here.
 */
export function tableOf<Schema extends z.ZodType, const List extends keyof z.input<Schema> & string>(
  schema: (context: SchemaContext) => Schema,
  list: List,
  columns: ColumnsOf<RowOf<z.input<Schema>, List>, z.input<Schema>>,
): (wire: z.input<Schema>) => Table;
export function tableOf(
  schema: (context: SchemaContext) => z.ZodType,
  list: string,
  columns: readonly AnyColumn[] | ((wire: unknown) => readonly AnyColumn[]),
): (wire: unknown) => Table {
  const unitOf = (path: readonly string[]) => {
    const quantity = quantityAt(schema(documentedContext('answer')), [list, ...path]);
    return quantity === undefined ? {} : { quantity };
  };
  const ready = (all: readonly AnyColumn[]) => all.map((column) => readyColumn(column, unitOf));
  const columnsOf =
    typeof columns === 'function'
      ? (wire: unknown) => ready(columns(wire))
      : writtenOnce(() => ready(columns));
  return (wire) => {
    const rows = memberOf(wire, list);
    if (!Array.isArray(rows)) throw new Error(`invariant: /${list} of an answer is no list`);
    const shown = columnsOf(wire);
    return {
      columns: shown,
      rows: rows.map((row, place) => shown.map(({ cell }) => cell(row, wire, place))),
    };
  };
}
