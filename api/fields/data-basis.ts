/** Documents whether figures follow from what was entered or from a calibration. */
import { z } from '@hono/zod-openapi';
import { described } from '../units/described.ts';
import type { SchemaContext } from '../units/schema-context.ts';

export const dataBasisField = (context: SchemaContext) =>
  described(context, z.enum(['entered', 'calibrated']), {
    description:
      'What the figures rest on: points and pipework as entered, or multiplied besides by the factors of the calibration that is in use.',
    examples: ['entered'],
  });
