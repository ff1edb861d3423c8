/** Documents why no setting is feasible, and how the one that is given was chosen. */
import { z } from '@hono/zod-openapi';
import { type Feasibility, INFEASIBLE_REASONS } from '../../../models/schedule/phase-duty.ts';
import { CRITERION_REASONS } from '../../../models/selection/criterion.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

export const feasibleField = (context: SchemaContext) =>
  described(context, z.boolean(), {
    description: 'Whether every condition holds at the setting. False: `step` states how it was chosen.',
    examples: [true],
  });

/** Absent where a setting is feasible. */
export const infeasibleShape = (context: SchemaContext) => ({
  reason: described(context, z.enum(INFEASIBLE_REASONS), {
    description:
      'Where infeasible: the first reason of a recommendation; `not-enough-head` too where a volume is out of reach.',
    examples: ['not-enough-head'],
  }).optional(),
  step: described(context, z.int().min(1).max(4), {
    description:
      'Where infeasible: 1, the lowest setting with all required flows within the upper limits; 2, the highest within them; 3, the lowest with all required flows within the limits of the animals; 4, the highest within these, else the lowest that moves water. Upper limits: `outlet-above-maximum`, `screen-velocity` and `reverse-flow`, of the animals; `pump-above-maximum` and `npsh`, of the pump.',
    examples: [2],
  }).optional(),
  limitedBy: described(context, z.array(z.enum(CRITERION_REASONS)), {
    description: 'Where infeasible: upper limits that do not hold at the next higher setting.',
    examples: [['screen-velocity']],
  }).optional(),
});

/** The same fields of an answer. */
export function infeasibleAnswer(one: Feasibility) {
  if (one.feasible) return {};
  const { reason, step, limitedBy } = one;
  return { reason, step, limitedBy: [...limitedBy] };
}
