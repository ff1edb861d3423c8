/** Documents what a meter measures, in answers about the condition of a loop. */
import { z } from '@hono/zod-openapi';
import { MEASURES } from '../../../models/loop/meter.ts';
import { SLIPS } from '../../../models/readings/slip.ts';
import { computedNumber } from '../../units/computed.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

export const measureField = (context: SchemaContext) =>
  described(context, z.enum(MEASURES), { description: 'What is measured.', examples: ['flow'] });

export const outletField = (context: SchemaContext) =>
  described(context, z.string(), {
    description: 'The outlet of an `outletFlow`; absent for the other measures.',
    examples: ['far end'],
  }).optional();

export const slipField = (context: SchemaContext) =>
  described(context, z.enum(SLIPS), {
    description: 'Units that were probably mixed up, either way.',
    examples: ['gallons-and-litres'],
  });

export const share = (context: SchemaContext, description: string, example: number) =>
  computedNumber(context, { description, example });

export const shareInterval = (
  context: SchemaContext,
  { what, low, high }: { readonly what: string; readonly low: number; readonly high: number },
) =>
  z.strictObject({
    low: share(context, `Low end of the 95 % interval of ${what}.`, low),
    high: share(context, 'High end of that interval.', high),
  });

export const instantField = (context: SchemaContext, description: string, example: string) =>
  described(context, z.iso.datetime(), { description, examples: [example] });

export const countField = (context: SchemaContext, description: string, example: number) =>
  described(context, z.int(), { description, examples: [example] });
