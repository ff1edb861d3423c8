/** The catalogue of cautions, as answers carry it. */
import { z } from '@hono/zod-openapi';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const cautionRow = (context: SchemaContext) =>
  z.strictObject({
    code: described(context, z.string(), {
      description: 'Stable code by which answers name it.',
      examples: ['screen-uneven'],
    }),
    severity: described(context, z.enum(['note', 'warning', 'danger']), {
      description: 'How grave it is.',
      examples: ['warning'],
    }),
    sentence: described(context, z.string(), {
      description: 'What it says; answers add in brackets what it is about.',
      examples: ['Water runs faster than the velocity limit in a pipe.'],
    }),
    source: described(context, z.string(), {
      description: 'On whose authority.',
      examples: ['common practice'],
    }),
  });

export const cautionTableSchema = perContext((context) =>
  named(
    context,
    'CautionTable',
    z.strictObject({
      items: described(context, z.array(cautionRow(context)), { description: 'A row a code.' }),
    }),
    { description: 'Every caution that an answer can carry.' },
  ),
);
