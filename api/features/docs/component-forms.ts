/** Brings the forms of a resource together: one component where what comes in and what goes out are equal, else two. */
import { changedTree, isNode, type Node, nodeAt, referenceTo, referredName } from './json-tree.ts';

const METHODS = ['get', 'post', 'put', 'delete'] as const;

type Schemas = ReadonlyMap<string, Node>;

/** `Pump` is an answer, `Pump.request` what comes in; a form beside those has members of one of the two. */
const FORMS = { answer: ['listed'], request: ['request', 'imported', 'exported'] } as const;

const baseOf = (name: string): string => name.replace(/\..*$/, '');

/** All members of both; required are those that both require. */
function merged(first: Node | undefined, second: Node | undefined): Node | undefined {
  if (first === undefined || second === undefined) return first ?? second;
  const [one, other] = [first, second].map(({ required }) => (Array.isArray(required) ? required : []));
  if (first.properties === undefined) return first;
  return {
    ...first,
    properties: { ...nodeAt(second, 'properties'), ...nodeAt(first, 'properties') },
    required: (one ?? []).filter((name: unknown) => other?.includes(name)),
  };
}

const requestOf = (schemas: Schemas, base: string) =>
  FORMS.request.reduce<Node | undefined>(
    (found, form) => merged(found, schemas.get(`${base}.${form}`)),
    undefined,
  );

const answerOf = (schemas: Schemas, base: string) =>
  FORMS.answer.reduce<Node | undefined>(
    (found, form) => merged(found, schemas.get(`${base}.${form}`)),
    schemas.get(base),
  );

/** The text of a schema in which components of `alike` go by one name, whatever their form. */
function comparable(schema: Node | undefined, alike: ReadonlySet<string>): string {
  const renamed = changedTree(schema, (value) => {
    const name = referredName(value);
    return name !== undefined && alike.has(baseOf(name)) ? referenceTo(baseOf(name)) : value;
  });
  return JSON.stringify(isNode(renamed) ? { ...renamed, description: undefined } : renamed);
}

/** Those whose request and answer are equal, all that they refer to included. */
function alikeBases(schemas: Schemas, bases: ReadonlySet<string>): ReadonlySet<string> {
  let alike = new Set(
    [...bases].filter(
      (base) => answerOf(schemas, base) !== undefined && requestOf(schemas, base) !== undefined,
    ),
  );
  for (;;) {
    const still = new Set(
      [...alike].filter(
        (base) => comparable(answerOf(schemas, base), alike) === comparable(requestOf(schemas, base), alike),
      ),
    );
    if (still.size === alike.size) return still;
    alike = still;
  }
}

/** The components that are bodies of requests. */
function bodiesOf(document: Node): ReadonlySet<string> {
  const found = new Set<string>();
  for (const path of Object.keys(nodeAt(document, 'paths'))) {
    for (const method of METHODS) {
      const content = nodeAt(document, 'paths', path, method, 'requestBody', 'content');
      for (const form of Object.values(content)) {
        const name = referredName(nodeAt(form, 'schema').$ref);
        if (name !== undefined) found.add(name);
      }
    }
  }
  return found;
}

/** The document with its components named: `X` goes out, `XRequest` comes in where it differs or is a body of its own. */
export function withFormsTogether(document: Node): Node {
  const schemas: Schemas = new Map(
    Object.entries(nodeAt(document, 'components', 'schemas')).flatMap(([name, schema]) =>
      isNode(schema) ? [[name, schema] as const] : [],
    ),
  );
  const bases = new Set([...schemas.keys()].map(baseOf));
  const alike = alikeBases(schemas, bases);
  const bodies = bodiesOf(document);
  const isRequest = (name: string) => FORMS.request.some((form) => name.endsWith(`.${form}`));
  const nameOf = (name: string): string => {
    const base = baseOf(name);
    if (!isRequest(name) || alike.has(base)) return base;
    return schemas.has(base) || bodies.has(`${base}.request`) ? `${base}Request` : base;
  };
  const settled = new Map<string, Node>();
  for (const name of schemas.keys()) {
    const base = baseOf(name);
    const schema = isRequest(name) && !alike.has(base) ? requestOf(schemas, base) : answerOf(schemas, base);
    if (schema !== undefined) settled.set(nameOf(name), schema);
  }
  const components = { ...nodeAt(document, 'components'), schemas: Object.fromEntries(settled) };
  const renamed = changedTree({ ...document, components }, (value) => {
    const name = referredName(value);
    return name === undefined ? value : referenceTo(nameOf(name));
  });
  return isNode(renamed) ? renamed : document;
}
