/** Finds the quantities that the codecs inside a schema carry. */
import type { z } from '@hono/zod-openapi';
import type { Quantity } from './table.ts';

// Keyed by definition: naming or describing a schema copies the schema but keeps its definition.
const quantityByDefinition = new WeakMap<object, Quantity>();

export function markQuantity<S extends z.ZodType>(schema: S, quantity: Quantity): S {
  quantityByDefinition.set(schema._zod.def, quantity);
  return schema;
}

const isSchema = (value: unknown): value is z.ZodType =>
  typeof value === 'object' && value !== null && '_zod' in value;

/** Schemas directly inside a definition, wherever the definition keeps them: shape, element, options, innerType, .. */
function innerSchemas(definition: object): readonly z.ZodType[] {
  return Object.values(definition).flatMap((part: unknown): readonly z.ZodType[] => {
    if (isSchema(part)) return [part];
    if (Array.isArray(part)) return part.filter(isSchema);
    if (typeof part === 'function' && 'type' in definition && definition.type === 'lazy') {
      const inner: unknown = part();
      return isSchema(inner) ? [inner] : [];
    }
    if (typeof part === 'object' && part !== null) return Object.values(part).filter(isSchema);
    return [];
  });
}

/** Sorted, each once. */
export function quantitiesOf(schema: z.ZodType): readonly Quantity[] {
  const seen = new Set<object>();
  const found = new Set<Quantity>();
  const waiting: z.ZodType[] = [schema];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const definition = next._zod.def;
    if (seen.has(definition)) continue;
    seen.add(definition);
    const quantity = quantityByDefinition.get(definition);
    if (quantity === undefined) waiting.push(...innerSchemas(definition));
    else found.add(quantity);
  }
  return [...found].sort();
}
