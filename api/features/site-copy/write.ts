/** Writes all that a site holds as one document. */
import { z } from '@hono/zod-openapi';
import { failed, success } from '../../../curves/result.ts';
import { recordBody } from '../../fields/record-fields.ts';
import { type Problem, problem } from '../../http/problem.ts';
import { siteItem } from '../../records/site/schema.ts';
import type { StoredRecord } from '../../store/versions.ts';
import { pauseAfter } from '../../threads/pause.ts';
import { schemaContext } from '../../units/schema-context.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import type { SiteContents } from './contract.ts';
import type { RecordKind } from './kinds.ts';
import { COPIED_KINDS } from './kinds-schema.ts';
import { SITE_COPY_FORMAT, SITE_COPY_VERSION } from './schema.ts';

/** Of the body of an import, and so of an export: what goes out can come in again. */
export const SITE_COPY_BYTES_MAX = 64 * 1024 * 1024;

const exactly = (system: UnitSystem) => schemaContext({ system, side: 'answer', exact: true });

/** Characters of the records of all kinds so far. */
interface Size {
  characters: number;
}

async function writeKind(
  kind: RecordKind,
  { records }: SiteContents,
  { system, size }: { readonly system: UnitSystem; readonly size: Size },
): Promise<readonly unknown[]> {
  const { item: itemOf, body = recordBody } = COPIED_KINDS[kind];
  const schema = itemOf(exactly(system));
  const written: unknown[] = [];
  const kept: readonly (() => StoredRecord<object>)[] = records[kind];
  for (const record of kept) {
    const item = z.encode(schema, body(record()));
    size.characters += JSON.stringify(item).length;
    if (size.characters > SITE_COPY_BYTES_MAX) break;
    written.push(item);
    await pauseAfter(written.length);
  }
  return written;
}

/** The body of the answer; a problem where it is larger than what can come in again. */
export async function writeSiteCopy(contents: SiteContents, system: UnitSystem) {
  const size = { characters: 0 };
  const written = (kind: RecordKind) => writeKind(kind, contents, { system, size });
  const lists = {
    tariffs: await written('tariffs'),
    pumps: await written('pumps'),
    loops: await written('loops'),
    schedules: await written('schedules'),
    comparisons: await written('comparisons'),
    upgradePlans: await written('upgradePlans'),
    maintenanceTasks: await written('maintenanceTasks'),
    completions: await written('completions'),
    calibrations: await written('calibrations'),
    readings: await written('readings'),
  };
  if (size.characters > SITE_COPY_BYTES_MAX) return failed(tooLarge(size.characters));
  const site = z.encode(siteItem(exactly(system)), recordBody(contents.site));
  return success({ format: SITE_COPY_FORMAT, formatVersion: SITE_COPY_VERSION, site, ...lists } as const);
}

function tooLarge(actual: number): Problem {
  const detail = `The site makes a document of more than ${SITE_COPY_BYTES_MAX} bytes.`;
  return problem('limit-exceeded', detail, { limit: SITE_COPY_BYTES_MAX, actual });
}
