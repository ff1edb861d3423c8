/** Documents a site as one document. */
import { z } from '@hono/zod-openapi';
import { wholeNumber } from '../../fields/number-field.ts';
import { acceptedFields } from '../../fields/record-fields.ts';
import { COMPLETIONS_MAX } from '../../records/completion/contract.ts';
import { READINGS_OF_A_SITE_MAX } from '../../records/reading/contract.ts';
import { siteInput, siteItem } from '../../records/site/schema.ts';
import { RECORDS_OF_A_KIND_MAX } from '../../store/exported-kind.ts';
import { unitsField } from '../../units/answer-units.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import type { RecordKind } from './kinds.ts';
import { COPIED_KINDS } from './kinds-schema.ts';

export const SITE_COPY_FORMAT = 'loopwright-site';
/** Rises with a change that an older reader would misread; a further kind of record is none. */
export const SITE_COPY_VERSION = 1;

const heading = (context: SchemaContext) => ({
  format: described(context, z.literal(SITE_COPY_FORMAT), {
    description: 'What the document is.',
    examples: [SITE_COPY_FORMAT],
  }),
  formatVersion: described(context, z.literal(SITE_COPY_VERSION), {
    description: 'The version of its form.',
    examples: [SITE_COPY_VERSION],
  }),
});

/** How many items of a kind a document may hold. */
const most = (kind: RecordKind): number => {
  if (kind === 'completions') return COMPLETIONS_MAX;
  return kind === 'readings' ? READINGS_OF_A_SITE_MAX : RECORDS_OF_A_KIND_MAX;
};

/** One member a kind. */
export const members = <Member>(
  member: (kind: RecordKind) => Member,
): Readonly<Record<RecordKind, Member>> => ({
  tariffs: member('tariffs'),
  pumps: member('pumps'),
  loops: member('loops'),
  schedules: member('schedules'),
  comparisons: member('comparisons'),
  upgradePlans: member('upgradePlans'),
  maintenanceTasks: member('maintenanceTasks'),
  completions: member('completions'),
  calibrations: member('calibrations'),
  readings: member('readings'),
});

/** What is in it was written before, record by record, so that a large site holds nobody up. */
const writtenList = (context: SchemaContext) => (kind: RecordKind) => {
  const list: z.ZodType = context.documented ? z.array(COPIED_KINDS[kind].item(context)) : z.unknown();
  return described(context, list, { description: COPIED_KINDS[kind].description });
};

/** All that a site holds, as it leaves. */
export const siteCopyAnswer = perContext((context) =>
  named(
    context,
    'SiteCopy',
    z.strictObject({
      ...heading(context),
      site: context.documented ? siteItem(context) : z.unknown(),
      ...members(writtenList(context)),
      units: unitsField(context),
    }),
    { description: 'A site with all that it holds, in the units in force.' },
  ),
);

/** The records in it are read one by one. */
const unreadList = (context: SchemaContext) => (kind: RecordKind) => {
  const item: z.ZodType = context.documented ? COPIED_KINDS[kind].input(context) : z.unknown();
  return described(context, z.array(item).max(most(kind)).default([]), {
    description: `${COPIED_KINDS[kind].description} Ids, versions and times are kept where they are stated.`,
  });
};

/** All that a site holds, as it comes in; its records are still to be read. */
export const siteCopyInput = perContext((context) =>
  named(
    context,
    'SiteCopy',
    z.strictObject({
      ...heading(context),
      site: context.documented ? siteInput(context) : z.unknown(),
      ...members(unreadList(context)),
      units: acceptedFields(context).units,
    }),
    { description: 'A site with all that it holds, as an export gives it.' },
  ),
);

const count = (context: SchemaContext) => (kind: RecordKind) =>
  wholeNumber(context, {
    description: `How many items of ${kind} were stored.`,
    minimum: 0,
    maximum: most(kind),
    example: 4,
  });

/** How much an import has stored. */
export const siteCopyCounts = perContext((context) =>
  named(context, 'SiteCopyCounts', z.strictObject(members(count(context))), {
    description: 'How many records of each kind were stored.',
  }),
);
