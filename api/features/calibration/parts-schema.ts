/** Documents the parts of a calibration that answers share. */
import { z } from '@hono/zod-openapi';
import { SLIPS } from '../../../models/readings/slip.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { byMeasure } from './gauge-schema.ts';

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
    interval: described(context, interval(context, { low: 0.098, high: 0.142 }), {
      description: 'Of the margin; absent without a requirement.',
    }).optional(),
  });

export const misfitSchema = (context: SchemaContext) =>
  byMeasure(context, (quantity, example) => ({
    time: described(context, z.iso.datetime(), {
      description: 'Of the reading.',
      examples: ['2026-01-10T10:00:00.000Z'],
    }),
    measured: computed(context, quantity, { description: 'What was read.', example }),
    predicted: computed(context, quantity, { description: 'By the model with these factors.', example }),
    residual: computedNumber(context, { description: 'measured/predicted - 1.', example: -0.18 }),
    slip: described(context, z.enum(SLIPS), {
      description: 'Probable mix-up of units; absent where no known factor is near.',
      examples: ['gallons-and-litres'],
    }).optional(),
  }));

export const nextReadingSchema = (context: SchemaContext) =>
  byMeasure(context, (quantity, example) => ({
    predicted: computed(context, quantity, {
      description: 'What it would show, as far as is known.',
      example,
    }),
    remainingUncertainty: described(context, marginUncertainty(context), {
      description:
        'Uncertainty that it would leave in the smallest margin; absent where it says nothing about flows.',
    }).optional(),
    expectedParameters: described(context, z.array(calibrationParameter(context)), {
      description: 'What would be determined with it, were it to show what is predicted.',
    }),
  }));
