/** Documents the intervals of the figures of a duty. */
import { z } from '@hono/zod-openapi';
import { GRADES } from '../../../models/pump/tolerance-grades.ts';
import { nullable } from '../../fields/nullable.ts';
import { computed } from '../../units/computed.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import type { Quantity } from '../../units/table.ts';

const grades = z.enum(Object.keys(GRADES));

const interval = (
  context: SchemaContext,
  quantity: Quantity,
  { what, low, high }: { readonly what: string; readonly low: number; readonly high: number },
) =>
  z.strictObject({
    low: computed(context, quantity, { description: `Least ${what}.`, example: low }),
    high: computed(context, quantity, { description: `Greatest ${what}.`, example: high }),
  });

const laws = (context: SchemaContext) =>
  described(
    context,
    z.strictObject({
      power: interval(context, 'power', { what: 'power at the flow of the duty', low: 85.7, high: 85.7 }),
      annualEnergy: interval(context, 'energy', { what: 'energy of a year by it', low: 751, high: 751 }),
    }),
    {
      description:
        'What the two laws of power leave open at the flow of the duty itself, a grade left out. Two candidates whose intervals overlap are too close to call.',
    },
  );

export const uncertaintyField = (context: SchemaContext) =>
  described(
    context,
    z.strictObject({
      grade: described(context, nullable(grades), {
        description:
          'ISO 9906 grade taken: of the assurance asked for, else of the pump; null: the scatter of its points alone.',
        examples: ['2B'],
      }),
      flow: interval(context, 'flow', { what: 'total flow', low: 7310, high: 7755 }),
      power: interval(context, 'power', { what: 'power', low: 85.7, high: 92.6 }),
      annualEnergy: interval(context, 'energy', { what: 'energy of a year', low: 750, high: 811 }),
      laws: laws(context),
    }),
    {
      description:
        'The least and the most at this setting when the pump differs from its points as far as its grade and their scatter about the fit leave open (one-sided 95 %), and its power as far as the two laws of power do outside the entered speeds and flows. The ends are equal where nothing is open.',
    },
  );
