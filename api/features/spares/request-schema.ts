/** Documents the request for a number of spares. */
import { z } from '@hono/zod-openapi';
import { numberField, wholeNumber } from '../../fields/number-field.ts';
import { acceptedFields } from '../../fields/record-fields.ts';
import { failures } from '../../records/pump/schema.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';

const CONFIDENCE = 0.95;

export const sparesRequest = perContext((context) =>
  named(
    context,
    'SparesRequest',
    z.strictObject({
      pump: described(context, z.string().min(1).max(120), {
        description:
          'A stored pump. Its failure counts and its positions are taken where they are not stated.',
        examples: ['0198c0de-0000-7000-8000-000000000002'],
      }).optional(),
      failures: failures(context).optional(),
      positions: wholeNumber(context, {
        description:
          'Devices that share the spares; where it is not stated, those that stored loops state as installed.',
        minimum: 0,
        maximum: 1_000_000,
        example: 12,
      }).optional(),
      leadTimeDays: numberField(context, {
        description: 'Days from an order until the new device is on the shelf.',
        minimum: 0,
        maximum: 3650,
        example: 28,
      }),
      confidence: numberField(context, {
        description: 'How probable it must be that the spares last through one lead time.',
        minimum: 0,
        aboveMinimum: true,
        maximum: 0.999999,
        example: CONFIDENCE,
        default: CONFIDENCE,
      }),
      ...acceptedFields(context),
    }),
    { description: 'A model of device, where it is in use, and how long a new one takes to come.' },
  ),
);
