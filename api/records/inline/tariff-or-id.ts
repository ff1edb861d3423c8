/** Documents a tariff in a request, by the id or key of a stored one or sent along. */
import { z } from '@hono/zod-openapi';
import type { Tariff } from '../../../models/tariff/tariff.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { tariffInput } from '../tariff/schema.ts';
import { idOf } from './stored-or-inline.ts';

export const tariffOrId = (context: SchemaContext): z.ZodType<string | Tariff> =>
  described(
    context,
    z.union([idOf(context, 'tariff'), tariffInput(context)], {
      error: 'must be the id or key of a tariff, or a tariff',
    }),
    {
      description:
        "Prices by time, in place of `price`; the site's tariff, else its price, where both are left out.",
    },
  );
