/** Reads the copy of a site from a document, record by record. */

import { z } from '@hono/zod-openapi';
import { failed, type Result, success } from '../../../curves/result.ts';
import { enteredKey } from '../../fields/key-field.ts';
import { FAULTS_MAX } from '../../fields/limits.ts';
import { bodyErrors } from '../../http/issue-errors.ts';
import { invalidRequest, type Problem, type ProblemError } from '../../http/problem.ts';
import type { Site } from '../../records/site/kind.ts';
import { siteInput } from '../../records/site/schema.ts';
import { pauseAfter } from '../../threads/pause.ts';
import { schemaContext } from '../../units/schema-context.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import type { RecordKind } from './kinds.ts';
import { COPIED_KINDS, type CopiedDocuments } from './kinds-schema.ts';
import { siteCopyInput } from './schema.ts';

const VERSION_MAX = 2 ** 31 - 1;

const instant = z.iso.datetime({ offset: true }).transform((text) => Date.parse(text));

/** What the service gave to a record when it was stored. */
const stampSchema = z.looseObject({
  id: z
    .string()
    .regex(/^[\w-]{1,64}$/, 'must be 1 to 64 letters, digits, "-" or "_"')
    .optional(),
  version: z.int().min(1).max(VERSION_MAX).default(1),
  createdAt: instant.optional(),
  updatedAt: instant.optional(),
});

export interface CopiedRecord<Document> {
  readonly id: string | undefined;
  readonly key: string | null | undefined;
  readonly version: number;
  readonly createdAt: number | undefined;
  readonly updatedAt: number | undefined;
  readonly document: Document;
}

export interface SiteCopy {
  readonly site: CopiedRecord<Site>;
  readonly records: { readonly [Kind in RecordKind]: readonly CopiedRecord<CopiedDocuments[Kind]>[] };
}

interface Reading {
  /** The whole document as it came. */
  readonly raw: unknown;
  readonly system: UnitSystem;
  readonly errors: ProblemError[];
}

function readRecord<Document>(
  value: unknown,
  input: z.ZodType<Document>,
  { raw, errors, at }: Reading & { readonly at: readonly (string | number)[] },
): CopiedRecord<Document> | undefined {
  const stamp = stampSchema.safeParse(value);
  const document = input.safeParse(value);
  if (stamp.success && document.success) {
    const { id, version, createdAt, updatedAt } = stamp.data;
    return { id, key: enteredKey(value), version, createdAt, updatedAt, document: document.data };
  }
  // What is no object at all is named once, by its document.
  const faulty = [...(document.error?.issues ?? []), ...(stamp.error?.issues ?? [])].filter(
    ({ path }, place, all) => path.length > 0 || place === 0 || all.length === 1,
  );
  errors.push(
    ...bodyErrors(
      faulty.map((issue) => ({ ...issue, path: [...at, ...issue.path] })),
      raw,
    ),
  );
  return undefined;
}

async function readKind<Kind extends RecordKind>(
  kind: Kind,
  values: readonly unknown[],
  reading: Reading,
): Promise<readonly CopiedRecord<CopiedDocuments[Kind]>[]> {
  const { input, density } = COPIED_KINDS[kind];
  const { system, errors } = reading;
  const records: CopiedRecord<CopiedDocuments[Kind]>[] = [];
  for (const [place, value] of values.entries()) {
    if (errors.length >= FAULTS_MAX) break;
    const water = density === undefined ? {} : { density: density(value, { system }) };
    const context = schemaContext({ system, side: 'request', ...water });
    const record = readRecord(value, input(context), { ...reading, at: [kind, place] });
    if (record !== undefined) records.push(record);
    await pauseAfter(place + 1);
  }
  return records;
}

/** `raw` is the document as it came, in the units of the system. */
export async function readSiteCopy(raw: unknown, system: UnitSystem): Promise<Result<SiteCopy, Problem>> {
  const context = schemaContext({ system, side: 'request' });
  const heading = siteCopyInput(context).safeParse(raw);
  if (!heading.success) return failed(invalidRequest(bodyErrors(heading.error.issues, raw)));
  const copy = heading.data;
  const reading = { raw, system, errors: [] };
  const site = readRecord(copy.site, siteInput(context), { ...reading, at: ['site'] });
  const records = {
    tariffs: await readKind('tariffs', copy.tariffs, reading),
    pumps: await readKind('pumps', copy.pumps, reading),
    loops: await readKind('loops', copy.loops, reading),
    schedules: await readKind('schedules', copy.schedules, reading),
    comparisons: await readKind('comparisons', copy.comparisons, reading),
    upgradePlans: await readKind('upgradePlans', copy.upgradePlans, reading),
    maintenanceTasks: await readKind('maintenanceTasks', copy.maintenanceTasks, reading),
    completions: await readKind('completions', copy.completions, reading),
    calibrations: await readKind('calibrations', copy.calibrations, reading),
    readings: await readKind('readings', copy.readings, reading),
  };
  if (site === undefined || reading.errors.length > 0) return failed(invalidRequest(reading.errors));
  return success({ site, records });
}
