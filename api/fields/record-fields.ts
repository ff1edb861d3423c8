/** Documents the fields that the service gives to everything it stores. */
import { z } from '@hono/zod-openapi';
import type { StoredRecord } from '../store/versions.ts';
import { unitInForce } from '../units/convert.ts';
import { described } from '../units/described.ts';
import type { SchemaContext } from '../units/schema-context.ts';
import { QUANTITIES, type Quantity } from '../units/table.ts';
import type { UnitSystem } from '../units/unit-system.ts';

const isQuantity = (name: string): name is Quantity => Object.hasOwn(QUANTITIES, name);

const ignored = (context: SchemaContext) =>
  described(
    context,
    z
      .unknown()
      .optional()
      .transform(() => undefined),
    { description: 'Accepted, so that an answer can be sent back, and ignored.', readOnly: true },
  );

function checkUnits(stated: unknown, system: UnitSystem, issues: z.RefinementCtx): void {
  if (stated === system) return;
  if (typeof stated !== 'object' || stated === null || Array.isArray(stated)) {
    issues.addIssue({ code: 'custom', message: `must be "${system}" or the units of an answer in it` });
    return;
  }
  for (const [name, unit] of Object.entries(stated)) {
    const expected = isQuantity(name) ? unitInForce(name, system) : undefined;
    if (unit === expected) continue;
    const message =
      expected === undefined
        ? 'is not a quantity'
        : `must be "${expected}", the unit in force with units=${system}`;
    issues.addIssue({ code: 'custom', message, path: [name] });
  }
}

/** A document that was read in one system and is sent back in the other is caught here. */
const unitsInForce = (context: SchemaContext) =>
  described(
    context,
    z
      .unknown()
      .superRefine((stated, issues) => {
        if (stated !== undefined) checkUnits(stated, context.system, issues);
      })
      .optional()
      .transform(() => undefined),
    { description: 'If present, must be the units in force, as an answer states them.' },
  );

/** In a request. */
export const acceptedFields = (context: SchemaContext) => ({
  id: ignored(context),
  version: ignored(context),
  createdAt: ignored(context),
  updatedAt: ignored(context),
  units: unitsInForce(context),
});

/** In a request for what answers of writes carry cautions about. */
export const acceptedCautions = (context: SchemaContext) => ({ cautions: ignored(context) });

/** In an answer. */
export const recordFields = (context: SchemaContext) => ({
  id: described(context, z.string(), { description: 'Given by the service.', examples: ['0198f1c2'] }),
  version: described(context, z.int(), { description: 'Counts the writes, from 1.', examples: [1] }),
  createdAt: described(context, z.iso.datetime(), {
    description: 'When it was created, in UTC.',
    examples: ['2026-01-15T12:00:00.000Z'],
  }),
  updatedAt: described(context, z.iso.datetime(), {
    description: 'When it was last written, in UTC.',
    examples: ['2026-01-15T12:00:00.000Z'],
  }),
});

const utc = (milliseconds: number): string => new Date(milliseconds).toISOString();

/** A stored record as the body of an answer. */
export const recordBody = <Document>({ document, ...record }: StoredRecord<Document>) => ({
  id: record.id,
  ...(record.key === undefined ? {} : { key: record.key }),
  version: record.version,
  createdAt: utc(record.createdAt),
  updatedAt: utc(record.updatedAt),
  ...document,
});
