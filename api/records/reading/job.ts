/** The job of readings reads the text of a body into readings, or names what is wrong with them. */
import { failed, type Result, success } from '../../../curves/result.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { READINGS_MAX } from '../../fields/limits.ts';
import { withLine } from '../../http/csv-body.ts';
import { csvColumns } from '../../http/csv-columns.ts';
import { type CsvColumns, csvRows } from '../../http/csv-rows.ts';
import { bodyErrors } from '../../http/issue-errors.ts';
import { toPointer } from '../../http/json-pointer.ts';
import { parseJson } from '../../http/parse-json.ts';
import { invalidRequest, type Problem, type ProblemError } from '../../http/problem.ts';
import { plainJob } from '../../threads/job.ts';
import { type SchemaContext, schemaContext } from '../../units/schema-context.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import type { ReadingsText } from './body.ts';
import { type ReadingRules, readingFaults } from './faults.ts';
import { readingRows, readingSchema, readingsInput } from './schema.ts';

export interface ReadingsWork extends ReadingsText {
  readonly system: UnitSystem;
  /** Of the loop's water, for heads given as pressures. */
  readonly density: number;
  readonly rules: ReadingRules;
}

export type ReadingsRead = Result<readonly Reading[], Problem>;

const FIELDS = csvColumns(readingSchema, {
  time: { required: true, isText: true },
  setting: { required: true },
  power: { required: false },
  flow: { required: false },
  head: { required: false },
  suctionPressure: { required: false },
  dischargePressure: { required: false },
});

export const OUTLET_PREFIX = 'outletFlows/';

/** An outlet of the loop by its name, and by its name alone where no field is called so. */
const columnsOf = (outlets: readonly string[]): CsvColumns => {
  const column = { quantity: 'flow', required: false } as const;
  return {
    ...Object.fromEntries(outlets.map((name) => [name, { ...column, as: `${OUTLET_PREFIX}${name}` }])),
    ...Object.fromEntries(outlets.map((name) => [`${OUTLET_PREFIX}${name}`, column])),
    ...FIELDS,
  };
};

/** The flows of outlets gathered under one member. */
function nested(row: Readonly<Record<string, number | string>>): Record<string, unknown> {
  const entries = Object.entries(row);
  const outlets = entries.filter(([name]) => name.startsWith(OUTLET_PREFIX));
  const own = Object.fromEntries(entries.filter(([name]) => !name.startsWith(OUTLET_PREFIX)));
  if (outlets.length === 0) return own;
  const flows = outlets.map(([name, flow]) => [name.slice(OUTLET_PREFIX.length), flow]);
  return { ...own, outletFlows: Object.fromEntries(flows) };
}

function checked(
  readings: readonly Reading[],
  rules: ReadingRules,
  place: (error: ProblemError) => ProblemError,
): ReadingsRead {
  const faults = readingFaults(readings, rules);
  if (faults.length === 0) return success(readings);
  return failed(
    invalidRequest(faults.map(({ path, detail }) => place({ pointer: toPointer(path), detail }))),
  );
}

function readJson(text: string, context: SchemaContext, rules: ReadingRules): ReadingsRead {
  const raw = parseJson(text);
  if (!raw.ok) return raw;
  const decoded = readingsInput(context).safeParse(raw.value);
  if (!decoded.success) return failed(invalidRequest(bodyErrors(decoded.error.issues, raw.value)));
  return checked(decoded.data.readings, rules, (error) => ({
    ...error,
    pointer: `/readings${error.pointer}`,
  }));
}

function readCsv(text: string, context: SchemaContext, rules: ReadingRules): ReadingsRead {
  const read = csvRows(text, { columns: columnsOf(rules.outlets), rowsMax: READINGS_MAX });
  if (!read.ok) return read;
  const { lines } = read.value;
  const rows = read.value.rows.map(nested);
  const decoded = readingRows(context).safeParse(rows);
  if (decoded.success) return checked(decoded.data, rules, (error) => withLine(error, lines));
  return failed(
    invalidRequest(bodyErrors(decoded.error.issues, rows).map((error) => withLine(error, lines))),
  );
}

/** Faults are named at `/readings/2/flow` in JSON, at `/2/flow` with the line in CSV. */
function readReadings({ mediaType, text, system, density, rules }: ReadingsWork): ReadingsRead {
  const context = schemaContext({ system, side: 'request', density });
  return mediaType === 'text/csv' ? readCsv(text, context, rules) : readJson(text, context, rules);
}

/** Longer texts take over 50 ms to read. */
const LONG_TEXT = 100_000;

export const readingsJob = plainJob<ReadingsWork, ReadingsRead>({
  name: 'readings',
  isLong: ({ text }) => text.length > LONG_TEXT,
  compute: readReadings,
});
