/** How each kind of record stands in the copy of a site: the list that every new kind joins. */
import type { z } from '@hono/zod-openapi';
import type { KindsOfRecords, RecordKind } from '../store/site-contents-contract.ts';
import type { SchemaContext } from '../units/schema-context.ts';
import type { UnitSystem } from '../units/unit-system.ts';
import { loopInput, loopItem } from './loop.ts';
import { pumpInput, pumpItem } from './pump.ts';
import { scheduleInput } from './schedule.ts';
import { scheduleItem } from './schedule-item.ts';
import { tariffInput, tariffItem } from './tariff.ts';
import { statedDensity } from './water.ts';

export type DocumentOf<Kind extends RecordKind> = KindsOfRecords[Kind]['document'];

interface CopiedKind<Document> {
  readonly description: string;
  /** As a list shows it. */
  readonly item: (context: SchemaContext) => z.ZodType;
  /** As it is entered. */
  readonly input: (context: SchemaContext) => z.ZodType<Document>;
  /** Of the water that heads in units of pressure refer to, where the document states one. */
  readonly density?: (raw: unknown, system: UnitSystem) => number;
}

export const COPIED_KINDS: { readonly [Kind in RecordKind]: CopiedKind<DocumentOf<Kind>> } = {
  tariffs: { description: 'Every tariff.', item: tariffItem, input: tariffInput },
  pumps: { description: 'Every pump.', item: pumpItem, input: pumpInput },
  loops: { description: 'Every loop.', item: loopItem, input: loopInput, density: statedDensity },
  schedules: {
    description: 'The schedules of loops, each under the id of its loop.',
    item: scheduleItem,
    input: scheduleInput,
  },
};
