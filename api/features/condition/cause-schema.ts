/** Documents a cause that could explain a change. */
import { z } from '@hono/zod-openapi';
import { FAULTS } from '../../../models/condition/metered-loop.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { countField, measureField, share, shareInterval, slipField } from './gauge-schema.ts';

export const CAUSES = [...FAULTS, 'meter-drift', 'unit-slip', 'pump-stopped'] as const;

export const causeField = (context: SchemaContext) =>
  described(context, z.enum(CAUSES), {
    description:
      '`clogged-intake`: before the suction gauge. `clogged-discharge`: behind the discharge gauge. `clogged-branch`: towards some outlets. `worn-pump`: less head. `speed-low`: less speed than the setting. `draws-more`: more power alone. `less-resistance`: an opened valve or a leak. `meter-drift`: one meter. `unit-slip`: one meter, by the factor of a unit. `pump-stopped`: fewer pumps run than are set to.',
    examples: ['clogged-intake'],
  });

export const causeSchema = perContext((context) =>
  named(
    context,
    'Cause',
    z.strictObject({
      cause: causeField(context),
      probability: share(context, 'Probability among all causes.', 0.4),
      magnitude: share(
        context,
        'Size: of a clog the fraction of the flow lost, of a clogged branch that of its outlets; of wear 1.5 times this fraction of the head; of the others the fraction of speed, power, friction or reading. Absent where the cause has none.',
        0.11,
      ).optional(),
      interval: shareInterval(context, { what: 'the magnitude', low: 0.08, high: 0.14 }).optional(),
      measure: measureField(context).optional(),
      outletNames: described(context, z.array(z.string()), {
        description: 'Outlets behind a clogged branch, or of the meter; absent otherwise.',
        examples: [['left', 'right']],
      }).optional(),
      slip: slipField(context).optional(),
      factor: share(context, 'What the meter shows of the true value; absent otherwise.', 0.264).optional(),
      pumpsRunning: countField(
        context,
        'How many pumps run, of a `pump-stopped`; absent otherwise.',
        1,
      ).optional(),
    }),
    { description: 'A cause with its probability.' },
  ),
);
