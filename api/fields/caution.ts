/** Documents a caution in answers. */
import { z } from '@hono/zod-openapi';
import { CAUTION_QUANTITIES, type Figures } from '../../models/cautions/topic.ts';
import { computedNumber } from '../units/computed.ts';
import { decodeNumber, encodeNumber } from '../units/convert.ts';
import { described, named } from '../units/described.ts';
import { perContext } from '../units/per-context.ts';
import type { SchemaContext } from '../units/schema-context.ts';
import type { Quantity } from '../units/table.ts';

const figuresShape = (context: SchemaContext) => ({
  pointer: described(context, z.string(), {
    description: 'What it is about: a JSON pointer into the loop or the pump.',
    examples: ['/discharge/run/0'],
  }).optional(),
  value: computedNumber(context, { description: 'What was found.', example: 1.83 }).optional(),
  limit: computedNumber(context, { description: 'What it was compared with.', example: 1.5 }).optional(),
  quantity: described(context, z.enum(CAUTION_QUANTITIES), {
    description: 'The key of `units` in which value and limit are; absent for plain numbers.',
    examples: ['velocity'],
  }).optional(),
});

const wire = perContext((context) =>
  named(
    context,
    'Caution',
    z.strictObject({
      code: described(context, z.string(), {
        description: 'Stable code of the caution.',
        examples: ['screen-uneven'],
      }),
      severity: described(context, z.enum(['note', 'warning', 'danger']), {
        description: 'How grave it is.',
        examples: ['warning'],
      }),
      detail: described(context, z.string(), {
        description: 'What it says, and in brackets what it is about.',
        examples: ['Water runs faster than the velocity limit in a pipe. (/discharge/run/0)'],
      }),
      source: described(context, z.string(), {
        description: 'On whose authority.',
        examples: ['common practice'],
      }),
      ...figuresShape(context),
    }),
    { description: 'Something that the reader of the figures must know.' },
  ),
);

type Told = z.output<ReturnType<typeof wire>>;

/** Its figures leave in the units in force. */
export const cautionSchema = perContext((context): z.ZodType<Told, z.input<ReturnType<typeof wire>>> => {
  const schema = wire(context);
  if (context.documented) return schema;
  const { system } = context;
  return z.codec(schema, z.custom<Told>(isObject), {
    decode: (caution) => converted(caution, (value, quantity) => decodeNumber(value, quantity, system)),
    encode: (caution) => converted(caution, (value, quantity) => encodeNumber(value, quantity, system)),
  });
});

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null;

function converted(caution: Told, convert: (value: number, quantity: Quantity) => number): Told {
  const { value, limit, quantity } = caution;
  if (quantity === undefined) return caution;
  return {
    ...caution,
    ...(value === undefined ? {} : { value: convert(value, quantity) }),
    ...(limit === undefined ? {} : { limit: convert(limit, quantity) }),
  };
}

const isCaution = (value: object): value is Figures => 'severity' in value && 'quantity' in value;

/** The quantities of the cautions anywhere in a body, each once. */
export function quantitiesOfCautions(body: unknown): readonly Quantity[] {
  const found = new Set<Quantity>();
  const waiting: unknown[] = [body];
  while (waiting.length > 0) {
    const next = waiting.pop();
    if (!isObject(next)) continue;
    if (isCaution(next) && next.quantity !== undefined) found.add(next.quantity);
    for (const member of Object.values(next)) if (isObject(member)) waiting.push(member);
  }
  return [...found];
}
