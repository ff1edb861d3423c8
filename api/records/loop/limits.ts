/** Documents what a caller may demand of the pumps of a loop, for once or as the default of the loop. */
import { z } from '@hono/zod-openapi';
import { DEFAULT_LIMITS, type StatedLimits } from '../../../models/loop/limits.ts';
import { nullable } from '../../fields/nullable.ts';
import { numberField } from '../../fields/number-field.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const { throughSlotVelocity, cloggedFraction, screenBasis, pipeVelocity, maximumEfficiency } = DEFAULT_LIMITS;

const slotVelocity = (context: SchemaContext) =>
  described(
    context,
    nullable(
      entered(context, 'velocity', {
        description: 'Highest velocity through the slots of the part-clogged screen.',
        minimum: 0,
        aboveMinimum: true,
        maximum: 100,
        example: throughSlotVelocity ?? 0,
      }),
    ),
    {
      description:
        'Highest velocity through the slots of the part-clogged screen; null: not judged. Default: 0.1524 m/s.',
    },
  );

const yesOrNo = (context: SchemaContext, description: string) =>
  described(context, z.boolean(), { description: `${description} Default: false.`, examples: [false] });

/** Each may be left out. */
export const limitMembers = (context: SchemaContext) =>
  z.strictObject({
    throughSlotVelocity: slotVelocity(context).optional(),
    cloggedFraction: numberField(context, {
      description: `Share of the slots taken as clogged. Default: ${cloggedFraction}.`,
      minimum: 0,
      maximum: 0.99,
      example: cloggedFraction,
    }).optional(),
    screenBasis: described(context, z.enum(['mean', 'peak']), {
      description: `Which velocity of a screen rejects: its mean, or that of its busiest slots. Default: ${screenBasis}.`,
      examples: [screenBasis],
    }).optional(),
    pipeVelocity: entered(context, 'velocity', {
      description: 'Velocity in a pipe above which a caution is given; it never rejects. Default: 1.5 m/s.',
      minimum: 0,
      aboveMinimum: true,
      maximum: 100,
      example: pipeVelocity,
    }).optional(),
    maximumEfficiency: numberField(context, {
      description: `Wire-to-water efficiency above which the entered points cannot be right. Default: ${maximumEfficiency}.`,
      minimum: 0,
      aboveMinimum: true,
      maximum: 1,
      example: maximumEfficiency,
    }).optional(),
    enforceNpsh: yesOrNo(
      context,
      'Whether a pump whose NPSH is not met is rejected, where it is cautioned otherwise. Of a pump without npshPoints it judges no more than that the water does not boil before the pump.',
    ).optional(),
    allowExtrapolation: yesOrNo(
      context,
      'Whether a duty beyond 1.1 times the largest entered flow is accepted.',
    ).optional(),
    allowReverseFlow: yesOrNo(
      context,
      'Whether a duty with water running backwards through an outlet is accepted.',
    ).optional(),
    gravity: described(context, z.enum(['report', 'reject']), {
      description:
        '`report`: a loop that gravity alone serves has the caution `gravity-suffices`. `reject`: every pump is then rejected for it. Default: report.',
      examples: ['report'],
    }).optional(),
  });

/** Members that are left out: in a request those of the loop, in a loop the defaults. */
export const limits = perContext(
  (context): z.ZodType<StatedLimits> =>
    named(context, 'Limits', limitMembers(context), {
      description: 'What a setting must keep to besides the flows of the outlets.',
    }),
);
