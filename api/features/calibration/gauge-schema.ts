/** Documents readings that a calibration names, each with the quantity of its measure. */
import { z } from '@hono/zod-openapi';
import { computed } from '../../units/computed.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import type { Quantity } from '../../units/table.ts';

const gaugeFields = (context: SchemaContext) => ({
  setting: computed(context, 'setting', { description: 'At this setting.', example: 80 }),
  outlet: described(context, z.string(), {
    description: 'Of an `outletFlow`; absent otherwise.',
    examples: ['far end'],
  }).optional(),
  closedOutlets: described(context, z.array(z.string()), {
    description:
      'Outlets closed meanwhile, entered with the reading as flows of 0; absent where all are open.',
    examples: [['left']],
  }).optional(),
  valveClosed: described(context, z.boolean(), {
    description:
      'True where a valve at the pump is closed for a few seconds, no longer, entered as a flow of 0 with the head; absent otherwise.',
    examples: [true],
  }).optional(),
});

/** One object a quantity: what is measured, where, and what `figures` adds. */
export function byMeasure<Figures extends z.ZodRawShape>(
  context: SchemaContext,
  figures: (quantity: Quantity, example: number) => Figures,
) {
  const object = <const Measures extends readonly [string, ...string[]]>(measures: Measures, own: Figures) =>
    z.strictObject({
      measure: described(context, z.enum(measures), {
        description:
          'What is measured: the total flow, the flow of an outlet, the head across the pump, its power.',
        examples: [measures[0]],
      }),
      ...gaugeFields(context),
      ...own,
    });
  return z.union([
    object(['flow', 'outletFlow'], figures('flow', 7350)),
    object(['head'], figures('head', 1.9)),
    object(['power'], figures('power', 122)),
  ]);
}
