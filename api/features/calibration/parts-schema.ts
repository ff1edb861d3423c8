/** Documents the parts that answers about calibrations share. */

import { z } from '@hono/zod-openapi';
import { nullable } from '../../fields/nullable.ts';
import { settingField } from '../../fields/setting-field.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const interval = (context: SchemaContext, example: { readonly low: number; readonly high: number }) =>
  z.strictObject({
    low: computedNumber(context, { description: 'Low end of the interval of 95 %.', example: example.low }),
    high: computedNumber(context, { description: 'High end of it.', example: example.high }),
  });

export const calibrationParameter = (context: SchemaContext) =>
  z.strictObject({
    name: described(context, z.enum(['friction', 'head', 'power', 'frictionOverHead']), {
      description: 'What it multiplies.',
      examples: ['frictionOverHead'],
    }),
    value: computedNumber(context, { description: 'The multiplier.', example: 1.32 }),
    standardError: computedNumber(context, { description: 'Its standard error.', example: 0.042 }),
    interval: interval(context, { low: 1.24, high: 1.41 }),
  });

export const marginUncertainty = (context: SchemaContext) =>
  z.strictObject({
    standardError: computedNumber(context, {
      description: 'Standard error of the margin; of the relative total flow where no outlet requires one.',
      example: 0.011,
    }),
    interval: described(context, nullable(interval(context, { low: 0.098, high: 0.142 })), {
      description: 'Of the margin; null without a requirement.',
    }),
  });

/** One of the three, by what is measured. */
const shownSchema = (context: SchemaContext) =>
  z.strictObject({
    flow: nullable(computed(context, 'flow', { description: 'Of a flow; null else.', example: 7350 })),
    head: nullable(computed(context, 'head', { description: 'Of a head; null else.', example: 1.9 })),
    power: nullable(computed(context, 'power', { description: 'Of a power; null else.', example: 122 })),
  });

const gaugeFields = (context: SchemaContext) => ({
  measure: described(context, z.enum(['flow', 'outletFlow', 'head', 'power']), {
    description:
      'What is measured: the total flow, the flow of an outlet, the head across the pump, its power.',
    examples: ['head'],
  }),
  setting: settingField(context, 'At this setting [%].', 80),
  outlet: described(context, nullable(z.string()), {
    description: 'Of an `outletFlow`; null else.',
    examples: [null],
  }),
  shut: described(context, z.array(z.string()), {
    description: 'Outlets closed meanwhile; entered with the reading as flows of 0.',
    examples: [[]],
  }),
  zeroFlow: described(context, z.boolean(), {
    description:
      'Whether a valve at the pump is closed for some seconds, no longer; entered as a flow of 0 beside the head.',
    examples: [true],
  }),
});

export const misfitSchema = (context: SchemaContext) =>
  z.strictObject({
    ...gaugeFields(context),
    measured: described(context, shownSchema(context), { description: 'The mean of these readings.' }),
    predicted: described(context, shownSchema(context), { description: 'What the factors give.' }),
    off: computedNumber(context, { description: 'measured/predicted - 1.', example: -0.18 }),
  });

export const nextReadingSchema = (context: SchemaContext) =>
  z.strictObject({
    ...gaugeFields(context),
    predicted: described(context, shownSchema(context), {
      description: 'What it would show, as far as is known.',
    }),
    margin: described(context, nullable(marginUncertainty(context)), {
      description: 'What it would leave open of the limiting margin; null where it says nothing about flows.',
    }),
    parameters: described(context, z.array(calibrationParameter(context)), {
      description: 'What would be found with it, if it shows what is predicted.',
    }),
  });
