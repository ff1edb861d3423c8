/** Finds the quantities that the codecs inside a schema carry. */
import type { z } from '@hono/zod-openapi';
import type { Quantity } from './table.ts';

// Keyed by definition: naming or describing a schema copies the schema but keeps its definition.
const quantityByDefinition = new WeakMap<object, Quantity>();

/** Plain numbers whose unit is the same in both systems: answers do not state it, the headers of tables do. */
const columnByDefinition = new WeakMap<object, Quantity>();

export function markUnitOfColumn<S extends z.ZodType>(schema: S, quantity: Quantity): S {
  columnByDefinition.set(schema._zod.def, quantity);
  return schema;
}

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

/** Schemas of the member of a name, whatever stands around them; those of any name in a record. */
function members(schema: z.ZodType, name: string): readonly z.ZodType[] {
  const definition = schema._zod.def;
  if ('shape' in definition && typeof definition.shape === 'object' && definition.shape !== null) {
    const member: unknown = Object.entries(definition.shape).find(([key]) => key === name)?.[1];
    return isSchema(member) ? [member] : [];
  }
  return innerSchemas(definition).flatMap((inner) => members(inner, name));
}

/** The quantity at a path of members, within lists too; undefined where it is a plain value. A path to nothing throws. */
export function quantityAt(schema: z.ZodType, path: readonly string[]): Quantity | undefined {
  const found = path.reduce<readonly z.ZodType[]>(
    (at, name) => at.flatMap((one) => members(one, name)),
    [schema],
  );
  const quantities = found.flatMap((one) => columnByDefinition.get(one._zod.def) ?? quantitiesOf(one));
  const [quantity, ...others] = new Set(quantities);
  if (found.length > 0 && others.length === 0) return quantity;
  throw new Error(
    `invariant: /${path.join('/')} leads to ${found.length} members of an answer, no one quantity`,
  );
}
