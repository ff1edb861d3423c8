/** Walks and changes the JSON values of the OpenAPI document. */

/** A JSON object. */
export type Node = Readonly<Record<string, unknown>>;

export const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export const nodeAt = (value: unknown, ...path: readonly string[]): Node => {
  const found = path.reduce<unknown>((at, name) => (isNode(at) ? at[name] : undefined), value);
  return isNode(found) ? found : {};
};

/** Members that hold values of the service's own, which may look like schemas. */
const VALUES: ReadonlySet<string> = new Set(['example', 'examples', 'default', 'enum', 'const']);

/** The value with `change` applied to every string and object in it, innermost first; examples stay as they are. */
export function changedTree(value: unknown, change: (inner: unknown) => unknown): unknown {
  if (Array.isArray(value)) return value.map((item) => changedTree(item, change));
  if (!isNode(value)) return change(value);
  const members = Object.entries(value).map(([name, member]) => [
    name,
    VALUES.has(name) ? member : changedTree(member, change),
  ]);
  return change(Object.fromEntries(members));
}

const REFERENCE = '#/components/schemas/';

export const referenceTo = (name: string): string => `${REFERENCE}${name}`;

/** The component that a text refers to; undefined where it is no reference. */
export const referredName = (text: unknown): string | undefined =>
  typeof text === 'string' && text.startsWith(REFERENCE) ? text.slice(REFERENCE.length) : undefined;
