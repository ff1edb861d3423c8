/** Documents each kind of record in the copy of a site, in a list that every new kind joins. */
import type { z } from '@hono/zod-openapi';
import type { MaintenanceTask } from '../../../models/maintenance/task.ts';
import { recordBody } from '../../fields/record-fields.ts';
import { loopInput, loopItem } from '../../records/loop/schema.ts';
import { statedDensity } from '../../records/loop/water.ts';
import { pumpInput, pumpItem } from '../../records/pump/schema.ts';
import { scheduleItem } from '../../records/schedule/copy-schema.ts';
import { scheduleInput } from '../../records/schedule/schema.ts';
import { tariffInput, tariffItem } from '../../records/tariff/schema.ts';
import type { StoredRecord } from '../../store/versions.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { calibrationCopyInput, calibrationCopyItem, type UnfittedCalibration } from './calibration-schema.ts';
import {
  completionCopyInput,
  completionCopyItem,
  computedCopyInput,
  computedCopyItem,
  readingsCopyInput,
  readingsCopyItem,
  taskCopyInput,
  taskCopyItem,
} from './items-schema.ts';
import type { KindsOfRecords, RecordKind } from './kinds.ts';

/** What was computed once, as it came: it may be anything. */
export interface UnseenDocument {
  readonly document: Readonly<Record<string, unknown>>;
}

/** What is read of each kind; where more is to be checked than a schema can, not yet what is stored. */
export interface CopiedDocuments extends Omit<Documents, 'comparisons' | 'upgradePlans' | 'calibrations'> {
  readonly maintenanceTasks: MaintenanceTask;
  readonly comparisons: UnseenDocument;
  readonly upgradePlans: UnseenDocument;
  readonly calibrations: UnfittedCalibration;
}

type Documents = { readonly [Kind in RecordKind]: KindsOfRecords[Kind]['document'] };

interface CopiedKind<Document> {
  readonly description: string;
  /** As a list shows it. */
  readonly item: (context: SchemaContext) => z.ZodType;
  /** As it is entered. */
  readonly input: (context: SchemaContext) => z.ZodType<Document>;
  /** What is written of a record; the fields of its document where it is left out. */
  readonly body?: (record: StoredRecord<object>) => object;
  /** Of the water that heads in units of pressure refer to, where the document states one. */
  readonly density?: (raw: unknown, reading: { readonly system: UnitSystem }) => number;
}

const COMPUTED = {
  item: computedCopyItem,
  input: computedCopyInput,
  body: ({ document, ...record }: StoredRecord<object>) => recordBody({ ...record, document: { document } }),
} as const;

export const COPIED_KINDS: { readonly [Kind in RecordKind]: CopiedKind<CopiedDocuments[Kind]> } = {
  tariffs: { description: 'Every tariff.', item: tariffItem, input: tariffInput },
  pumps: { description: 'Every pump.', item: pumpItem, input: pumpInput },
  loops: { description: 'Every loop.', item: loopItem, input: loopInput, density: statedDensity },
  schedules: {
    description: 'The schedules of loops, each under the id of its loop.',
    item: scheduleItem,
    input: scheduleInput,
  },
  comparisons: { description: 'Every comparison, as it was made.', ...COMPUTED },
  upgradePlans: { description: 'Every upgrade plan, as it was made.', ...COMPUTED },
  maintenanceTasks: { description: 'Every routine check.', item: taskCopyItem, input: taskCopyInput },
  completions: {
    description: 'Every time that a check was done.',
    item: completionCopyItem,
    input: completionCopyInput,
  },
  calibrations: {
    description: 'Every calibration that was applied to a loop.',
    item: calibrationCopyItem,
    input: calibrationCopyInput,
  },
  readings: {
    description: 'The readings of loops, some together.',
    item: readingsCopyItem,
    input: readingsCopyInput,
  },
};
