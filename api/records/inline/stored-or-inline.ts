/** Documents loops and pumps in a request, by the id or key of a stored one or sent along. */
import { z } from '@hono/zod-openapi';
import type { Loop } from '../../../models/loop/loop.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { idField } from '../../fields/id-field.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { loopInput } from '../loop/schema.ts';
import { pumpInput } from '../pump/schema.ts';

export const idOf = (context: SchemaContext, of: string) =>
  idField(context, { description: `Id or key of a stored ${of}.`, example: '0198c0de' });

export const loopOrId = (context: SchemaContext): z.ZodType<string | Loop> =>
  z.union([idOf(context, 'loop'), loopInput(context)], {
    error: 'must be the id or key of a loop, or a loop',
  });

export const pumpOrId = (context: SchemaContext): z.ZodType<string | Pump> =>
  z.union([idOf(context, 'pump'), pumpInput(context)], {
    error: 'must be the id or key of a pump, or a pump',
  });
