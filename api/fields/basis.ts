/** A computed answer names the versions that it follows from. */
import { z } from '@hono/zod-openapi';
import { MODEL_VERSION } from '../../models/model-version.ts';
import { described, named } from '../units/described.ts';
import { perContext } from '../units/per-context.ts';
import type { SchemaContext } from '../units/schema-context.ts';
import { nullable } from './nullable.ts';

const recordSchema = (context: SchemaContext, of: string) =>
  z.strictObject({
    id: described(context, nullable(z.string()), {
      description: `Id of the ${of}; null where it came with the request.`,
      examples: ['0198c0de-0000-7000-8000-000000000001'],
    }),
    version: described(context, nullable(z.int()), {
      description: 'Its version; null where it came with the request.',
      examples: [3],
    }),
  });

export const basisSchema = perContext((context) =>
  named(
    context,
    'Basis',
    z.strictObject({
      modelVersion: described(context, z.string(), {
        description: 'Version of the formulas; figures change only with it or with the records below.',
        examples: ['1'],
      }),
      loop: described(context, nullable(recordSchema(context, 'loop')), {
        description: 'The loop; null where none took part.',
        examples: [{ id: '0198c0de-0000-7000-8000-000000000001', version: 3 }],
      }),
      pumps: described(context, z.array(recordSchema(context, 'pump')), {
        description: 'The pumps, in the order of the candidates.',
        examples: [[{ id: '0198c0de-0000-7000-8000-000000000002', version: 1 }]],
      }),
    }),
    { description: 'The versions that the figures rest on.' },
  ),
);

export type Basis = z.output<ReturnType<typeof basisSchema>>;

/** Null where it came with the request. */
interface Versioned {
  readonly id: string | null;
  readonly version: number | null;
}

const versionOf = ({ id, version }: Versioned): Versioned => ({ id, version });

/** `loop`: null where none took part; `pumps`: in the order of the candidates. */
export const basisOf = ({
  loop,
  pumps,
}: {
  readonly loop: Versioned | null;
  readonly pumps: readonly Versioned[];
}): Basis => ({
  modelVersion: MODEL_VERSION,
  loop: loop === null ? null : versionOf(loop),
  pumps: pumps.map(versionOf),
});
