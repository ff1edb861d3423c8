/** Documents what an assurance costs a year, and the worst case behind it. */

import { z } from '@hono/zod-openapi';
import { nullable } from '../../fields/nullable.ts';
import { settingField } from '../../fields/setting-field.ts';
import { pumpRefSchema } from '../../records/pump/reference.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const withoutSchema = (context: SchemaContext) =>
  z.strictObject({
    candidate: described(context, z.int(), {
      description: 'Place of the best candidate without the assurance, from 0.',
      examples: [0],
    }),
    pump: pumpRefSchema(context),
    count: described(context, z.int(), { description: 'Equal pumps in parallel.', examples: [1] }),
    setting: settingField(context, 'Its smallest setting that serves as entered [% of full].', 70),
    annualEnergy: computed(context, 'energy', { description: 'Energy of a year.', example: 750.769 }),
    annualCost: nullable(
      computedNumber(context, { description: 'Its cost; null without a price.', example: 157.661 }),
    ),
  });

const outletSchema = (context: SchemaContext) =>
  z.strictObject({
    name: described(context, z.string(), { description: 'Name of the outlet.', examples: ['far end'] }),
    flow: computed(context, 'flow', { description: 'What it gets there.', example: 3004 }),
    requiredFlow: nullable(
      computed(context, 'flow', {
        description: 'What it shall get there, a margin included; null where nothing is required.',
        example: 3000,
      }),
    ),
  });

const worstCaseSchema = (context: SchemaContext) =>
  z.strictObject({
    flow: computed(context, 'flow', { description: 'Total flow.', example: 7470 }),
    head: computed(context, 'head', { description: 'Head of the pump.', example: 1.545 }),
    power: computed(context, 'power', { description: 'Power, that of the grade included.', example: 100.4 }),
    outlets: described(context, z.array(outletSchema(context)), { description: 'What each outlet gets.' }),
  });

const schema = (context: SchemaContext) =>
  z.strictObject({
    without: described(context, nullable(withoutSchema(context)), {
      description: 'The best of the same request without the assurance; null where there is none.',
    }),
    extraEnergy: nullable(
      computed(context, 'energy', {
        description: 'Energy that the assurance costs a year; null where one of the two has no best.',
        example: 64.1,
      }),
    ),
    extraCost: nullable(
      computedNumber(context, {
        description: 'Money that it costs a year; null likewise, and without a price.',
        example: 13.46,
      }),
    ),
    badEnd: described(context, nullable(worstCaseSchema(context)), {
      description: 'What `best` does in the worst case that it is assured against; null without a best.',
    }),
  });

export const assuranceField = (context: SchemaContext) =>
  described(context, nullable(schema(context)), {
    description: 'What the assurance asked for costs a year; null where none is asked for.',
    examples: [null],
  });
