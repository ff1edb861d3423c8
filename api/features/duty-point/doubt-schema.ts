/** Between which figures a duty lies. */
import { z } from '@hono/zod-openapi';
import { GRADES } from '../../../models/pump/tolerance-grades.ts';
import { nullable } from '../../schemas/nullable.ts';
import { computed } from '../../units/computed.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import type { Quantity } from '../../units/table.ts';

const grades = z.enum(Object.keys(GRADES));

const range = (
  context: SchemaContext,
  quantity: Quantity,
  { what, low, high }: { readonly what: string; readonly low: number; readonly high: number },
) =>
  z.strictObject({
    low: computed(context, quantity, { description: `Least ${what}.`, example: low }),
    high: computed(context, quantity, { description: `Greatest ${what}.`, example: high }),
  });

const schema = (context: SchemaContext) =>
  z.strictObject({
    grade: described(context, nullable(grades), {
      description:
        'ISO 9906 grade taken: of the assurance asked for, else of the pump; null: the scatter of its points alone.',
      examples: ['2B'],
    }),
    flow: range(context, 'flow', { what: 'total flow', low: 7310, high: 7755 }),
    power: range(context, 'power', { what: 'power', low: 85.7, high: 92.6 }),
    annualEnergy: range(context, 'energy', { what: 'energy of a year', low: 750, high: 811 }),
  });

export const doubtField = (context: SchemaContext) =>
  described(context, nullable(schema(context)), {
    description:
      'The least and the most at this setting when the pump differs from its points as far as its grade and their scatter about the fit leave open (one-sided 95 %); null where it has no grade and its points no scatter to tell.',
    examples: [null],
  });
