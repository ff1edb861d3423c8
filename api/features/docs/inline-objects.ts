/** Names every object of the OpenAPI document, so that clients made of it have a type for each. */
import { changedTree, isNode, type Node, nodeAt, referenceTo } from './json-tree.ts';
import { objectName } from './object-names.ts';

interface Inline {
  readonly name: string;
  readonly schema: Node;
}

const pascal = (text: string): string =>
  text.replace(/(?:^|[^a-zA-Z0-9]+)([a-zA-Z0-9])/g, (_all, first: string) => first.toUpperCase());

const singular = (text: string): string =>
  text.endsWith('ies') ? `${text.slice(0, -3)}y` : text.replace(/(?<!s)s$/, '');

const isObject = (schema: Node): boolean => isNode(schema.properties);

const hasInlineInside = (schema: Node): boolean =>
  Object.values(nodeAt(schema, 'properties')).some(holdsInline) || holdsInline(schema.additionalProperties);

function holdsInline(value: unknown): boolean {
  if (Array.isArray(value)) return value.some(holdsInline);
  if (!isNode(value)) return false;
  if (isObject(value)) return true;
  return ['items', 'anyOf', 'oneOf', 'allOf', 'additionalProperties'].some((name) =>
    holdsInline(value[name]),
  );
}

/** What sets an alternative apart: the value that its first member must have, else its first required member. */
function mark(alternative: Node): string {
  const [first, schema] = Object.entries(nodeAt(alternative, 'properties'))[0] ?? [];
  const allowed = isNode(schema) && Array.isArray(schema.enum) ? schema.enum : [];
  const value: unknown = allowed[0];
  return typeof value === 'string' ? pascal(value) : `By${pascal(first ?? '')}`;
}

/** Innermost objects without a name, each with the one that its place gives it. */
function innermost(value: unknown, name: string, isRoot: boolean): readonly Inline[] {
  if (!isNode(value)) return [];
  if (!isRoot && isObject(value) && !hasInlineInside(value)) return [{ name, schema: value }];
  const members = Object.entries(nodeAt(value, 'properties')).flatMap(([member, schema]) =>
    innermost(schema, `${name}${pascal(member)}`, false),
  );
  const alternatives = [value.anyOf, value.oneOf].flatMap((list: unknown) =>
    Array.isArray(list) ? list.filter(isNode) : [],
  );
  const objects = alternatives.filter(isObject);
  return [
    ...members,
    ...innermost(value.items, singular(name), false),
    ...innermost(value.additionalProperties, singular(name), false),
    ...alternatives.flatMap((one) =>
      innermost(one, objects.length > 1 && isObject(one) ? `${name}${mark(one)}` : name, false),
    ),
  ];
}

/** Two objects are one where all but their descriptions and examples is equal. */
const textOf = ({ description: _description, examples: _examples, ...schema }: Node): string =>
  JSON.stringify(schema);

const byLength = (one: string, other: string): number => one.length - other.length || (one < other ? -1 : 1);

/** The shortest name of those that an object has by its places, by its text. */
function namesByText(found: readonly Inline[], schemas: Node): ReadonlyMap<string, string> {
  const names = new Map<string, string>();
  for (const [name, schema] of Object.entries(schemas)) {
    if (isNode(schema) && isObject(schema)) names.set(textOf(schema), name);
  }
  const named = new Set(names.keys());
  for (const { name, schema } of found) {
    const text = textOf(schema);
    const known = names.get(text);
    if (known === undefined || (!named.has(text) && byLength(name, known) < 0)) names.set(text, name);
  }
  return new Map([...names].map(([text, name]) => [text, named.has(text) ? name : objectName(name)]));
}

const referring = (name: string, { description, examples }: Node): Node => ({
  $ref: referenceTo(name),
  ...(description === undefined ? {} : { description }),
  ...(examples === undefined ? {} : { examples }),
});

/** One round: objects that hold no other without a name get theirs. */
function named(schemas: Node): Node {
  const found = Object.entries(schemas).flatMap(([name, schema]) => innermost(schema, name, true));
  const names = namesByText(found, schemas);
  const inline = new Map(found.map(({ schema }) => [textOf(schema), schema]));
  const replaced = Object.entries(schemas).map(([root, schema]) => {
    const changed = changedTree(schema, (value) => {
      if (!isNode(value) || !isObject(value)) return value;
      const text = textOf(value);
      const name = names.get(text);
      return inline.has(text) && name !== undefined && name !== root ? referring(name, value) : value;
    });
    return [root, changed] as const;
  });
  const fresh = [...inline].map(([text, schema]) => [names.get(text) ?? '', schema] as const);
  const before = new Map<string, unknown>(replaced);
  for (const [name, schema] of fresh) {
    const taken = before.get(name);
    if (taken === undefined) before.set(name, schema);
    else if (!isNode(taken) || textOf(taken) !== textOf(schema)) {
      throw new Error(`invariant: two objects of the document would both be ${name}`);
    }
  }
  return Object.fromEntries(before);
}

/** The document in which every object is a component. */
export function withNamedObjects(document: Node): Node {
  let schemas = nodeAt(document, 'components', 'schemas');
  while (Object.entries(schemas).some(([name, schema]) => innermost(schema, name, true).length > 0)) {
    schemas = named(schemas);
  }
  return { ...document, components: { ...nodeAt(document, 'components'), schemas } };
}
