/** Documents the outlets of a loop. */
import { z } from '@hono/zod-openapi';
import type { Outlet, ShareOutlet } from '../../../models/loop/loop.ts';
import { bore, extent } from '../../fields/lengths.ts';
import { numberField, wholeNumber } from '../../fields/number-field.ts';
import { nameField } from '../../fields/text-field.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const requirements = (context: SchemaContext) => ({
  requiredFlow: entered(context, 'flow', {
    description: 'The least flow for the outlet; 0: it is closed when flows are trimmed.',
    minimum: 0,
    maximum: 10,
    example: 3000,
  }).optional(),
  maximumFlow: entered(context, 'flow', {
    description: 'The flow that the outlet may get at most.',
    minimum: 0,
    aboveMinimum: true,
    maximum: 10,
    example: 6000,
  }).optional(),
});

interface Bounds {
  readonly requiredFlow?: number | undefined;
  readonly maximumFlow?: number | undefined;
}

const maximumServes = ({ requiredFlow, maximumFlow }: Bounds): boolean =>
  requiredFlow === undefined || maximumFlow === undefined || requiredFlow <= maximumFlow;

const MAXIMUM_TOO_LOW = { path: ['maximumFlow'], message: 'must not be below requiredFlow' };

const reach = perContext((context) =>
  named(
    context,
    'Reach',
    z.strictObject({
      distance: extent(context, 'distance', {
        description: "How far away, on the jet's axis.",
        example: 2.5,
      }),
      velocity: entered(context, 'velocity', {
        description: 'How fast the water must still move there.',
        minimum: 0,
        aboveMinimum: true,
        maximum: 30,
        example: 0.1,
      }),
    }),
    { description: 'What the stream of an outlet must still do far away.' },
  ),
);

/** Readings carry the flows of outlets under their names; no member of a document can be called this. */
const NOT_A_MEMBER = '__proto__';

const outletName = (context: SchemaContext) =>
  nameField(context, { description: 'Names the outlet within its loop.', example: 'far end' }).refine(
    (name) => name !== NOT_A_MEMBER,
    'must be another name',
  );

export const outlet = perContext(
  (context): z.ZodType<Outlet> =>
    named(
      context,
      'Outlet',
      z
        .strictObject({
          name: outletName(context),
          ...requirements(context),
          reach: reach(context).optional(),
          nozzleDiameter: bore(context, {
            description: 'The bore of a nozzle at the end; without it that of the last pipe.',
            example: 15,
          }).optional(),
          nozzleCount: wholeNumber(context, {
            description: 'How many equal nozzles share the flow; 1 where it is not stated.',
            minimum: 1,
            maximum: 10_000,
            example: 1,
          }).optional(),
          lossCoefficient: numberField(context, {
            description: 'K of the whole exit loss on the nozzle or the last pipe; 1 where it is not stated.',
            minimum: 0,
            maximum: 1e6,
            example: 1,
          }).optional(),
          staticHead: entered(context, 'head', {
            description: "Rise to this outlet's surface above that of the loop.",
            minimum: -1000,
            maximum: 1000,
            example: 0.2,
          }).optional(),
          exit: described(context, z.enum(['submerged', 'free']), {
            description:
              '`submerged`: the water leaves below a surface, from which it may be drawn back. `free`: it leaves into air, and never runs back. Default: `free` if staticHead is above 0, else `submerged`.',
            examples: ['submerged'],
          }).optional(),
        })
        .refine(maximumServes, MAXIMUM_TOO_LOW),
      { description: 'Where water leaves a loop of pipework.' },
    ),
);

export const shareOutlet = perContext(
  (context): z.ZodType<ShareOutlet> =>
    named(
      context,
      'ShareOutlet',
      z
        .strictObject({
          name: outletName(context),
          share: numberField(context, {
            description: 'The fraction of the total flow that it gets.',
            minimum: 1e-9,
            maximum: 1,
            example: 0.4,
          }),
          ...requirements(context),
        })
        .refine(maximumServes, MAXIMUM_TOO_LOW),
      { description: 'Where a fixed share of the flow leaves a loop known by its system curve.' },
    ),
);
