/** Moves the description of what may be null up to the field, where generators of clients look for it. */

type Schema = Record<string, unknown>;

const isSchema = (value: unknown): value is Schema =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isNull = (value: unknown): boolean => isSchema(value) && value.type === 'null';

/** Of a schema, or of the component that it refers to. */
function descriptionOf(schema: Schema, components: Schema): unknown {
  if (typeof schema.$ref !== 'string') return schema.description;
  const named = components[schema.$ref.slice(schema.$ref.lastIndexOf('/') + 1)];
  return isSchema(named) ? named.description : undefined;
}

function describe(field: Schema, components: Schema): void {
  if (field.description !== undefined || !Array.isArray(field.anyOf)) return;
  const [only, ...others] = field.anyOf.filter((one) => !isNull(one));
  if (!isSchema(only) || others.length > 0) return;
  const description = descriptionOf(only, components);
  if (typeof description !== 'string') return;
  field.description = description;
  delete only.description;
}

/** Changes the document itself, which is made for each reader. */
export function describeNullables(document: unknown, components: Schema): void {
  if (Array.isArray(document)) for (const one of document) describeNullables(one, components);
  if (!isSchema(document)) return;
  if (isSchema(document.properties)) {
    for (const field of Object.values(document.properties)) if (isSchema(field)) describe(field, components);
  }
  for (const inner of Object.values(document)) describeNullables(inner, components);
}
