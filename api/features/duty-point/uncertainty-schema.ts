/** Documents the intervals of the figures of a duty. */
import { z } from '@hono/zod-openapi';
import { GRADES } from '../../../models/pump/tolerance-grades.ts';
import { nullable } from '../../fields/nullable.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import type { Quantity } from '../../units/table.ts';

const grades = z.enum(Object.keys(GRADES));

const interval = (
  context: SchemaContext,
  quantity: Quantity,
  { what, low, high }: { readonly what: string; readonly low: number; readonly high: number },
) =>
  described(
    context,
    z.strictObject({
      low: computed(context, quantity, { description: `Least ${what}.`, example: low }),
      high: computed(context, quantity, { description: `Greatest ${what}.`, example: high }),
    }),
    { description: `Interval of ${what}.` },
  );

const laws = (context: SchemaContext) =>
  described(
    context,
    z.strictObject({
      power: interval(context, 'power', { what: 'power at the flow of the duty', low: 85.7, high: 85.7 }),
      annualEnergy: interval(context, 'energy', { what: 'annual energy at that power', low: 751, high: 751 }),
    }),
    {
      description:
        'Intervals by the two laws of power at the flow of the duty itself, without a grade. Two candidates whose intervals overlap are too close to call.',
    },
  );

const margin = (context: SchemaContext) =>
  described(
    context,
    z.strictObject({
      low: computedNumber(context, { description: 'Low end of the 95 % interval.', example: -0.012 }),
      high: computedNumber(context, { description: 'High end of that interval.', example: 0.034 }),
    }),
    {
      description:
        'On a calibrated loop: the margin of the limiting outlet, as far as the calibration leaves it open. Absent otherwise, and where no outlet requires a flow.',
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
      annualEnergy: interval(context, 'energy', { what: 'annual energy', low: 750, high: 811 }),
      laws: laws(context),
      margin: margin(context).optional(),
    }),
    {
      description:
        'The least and the most at this setting when the pump differs from its points as far as its grade and their scatter about the fit leave open (one-sided 95 %), and its power as far as the two laws of power do outside the entered speeds and flows. On a calibrated loop the flow is as wide as its calibration leaves open (95 %). The ends are equal where nothing is open.',
    },
  );
