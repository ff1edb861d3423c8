/** Reads a CSV body through the schema of its rows. */
import { z } from '@hono/zod-openapi';
import { failed, success } from '../../curves/result.ts';
import { type SchemaContext, schemaContext } from '../units/schema-context.ts';
import { bodyText } from './body-text.ts';
import { type CsvColumns, csvRows } from './csv-rows.ts';
import { bodyErrors } from './issue-errors.ts';
import { invalidRequest, type ProblemError } from './problem.ts';
import type { RequestBody } from './request-body.ts';

const MEDIA_TYPE = 'text/csv';

interface CsvBody<Rows> {
  readonly columns: CsvColumns;
  readonly rowsMax: number;
  /** Of the array of rows, each an object with a number or a string for each column that is filled. */
  readonly rows: (context: SchemaContext) => z.ZodType<Rows>;
  readonly description: string;
  readonly example: string;
}

/** Adds the line of the row that a pointer begins with. */
export function withLine(error: ProblemError, lines: readonly number[]): ProblemError {
  const line = lines[Number(error.pointer?.split('/')[1])];
  return line === undefined ? error : { ...error, line };
}

export interface CsvTable<Rows> {
  readonly rows: Rows;
  /** The line of each row in the body, from 1. */
  readonly lines: readonly number[];
}

export const csvBody = <Rows>(csv: CsvBody<Rows>): RequestBody<CsvTable<Rows>> => ({
  async read(request, { system }) {
    const text = await bodyText(request, MEDIA_TYPE);
    if (!text.ok) return text;
    const read = csvRows(text.value, csv);
    if (!read.ok) return read;
    const { rows, lines } = read.value;
    const decoded = csv.rows(schemaContext({ system, side: 'request' })).safeParse(rows);
    if (decoded.success) return success({ rows: decoded.data, lines });
    const errors = bodyErrors(decoded.error.issues, rows).map((error) => withLine(error, lines));
    return failed(invalidRequest(errors));
  },
  document: () => ({
    mediaType: MEDIA_TYPE,
    schema: z.string().openapi({ description: csv.description }),
    example: csv.example,
  }),
});
