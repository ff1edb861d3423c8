/** Names the components of the document: one schema a resource, and one of its request only where that differs. */

const REFERENCE = '#/components/schemas/';
const REQUEST_SIDE = /Input$/;
const IN_A_LIST = /Item$/;

type Names = ReadonlyMap<string, string>;
type Schemas = Record<string, object>;

const lists = (value: object, member: string): readonly unknown[] => {
  const list: unknown = Reflect.get(value, member);
  return Array.isArray(list) ? list : [];
};

/** Leads each reference within a value to the name that its component is given; the value itself is changed. */
function lead(value: unknown, names: Names): void {
  if (typeof value !== 'object' || value === null) return;
  for (const [member, inner] of Object.entries(value)) {
    if (typeof inner !== 'string') lead(inner, names);
    else if (inner.startsWith(REFERENCE)) {
      const name = inner.slice(REFERENCE.length);
      Reflect.set(value, member, `${REFERENCE}${names.get(name) ?? name}`);
    }
  }
}

function textUnder(names: Names, schema: object): string {
  const copy = structuredClone(schema);
  lead(copy, names);
  return JSON.stringify(copy);
}

/** A record in a list is without what the list states once: those members may be absent from the one schema. */
function mergeItems(schemas: Schemas): Names {
  const names = new Map<string, string>();
  for (const [item, listed] of Object.entries(schemas)) {
    const name = item.replace(IN_A_LIST, '');
    const whole = name === item ? undefined : schemas[name];
    if (whole === undefined) continue;
    const always = lists(listed, 'required');
    const required = lists(whole, 'required').filter((member) => always.includes(member));
    if (Object.hasOwn(whole, 'required')) Reflect.set(whole, 'required', required);
    names.set(item, name);
    delete schemas[item];
  }
  return names;
}

/** Requests whose schema is that of the answer; those that refer to one another are equal together or not at all. */
function equalRequests(schemas: Readonly<Schemas>): Names {
  const requests = Object.keys(schemas).filter((name) => REQUEST_SIDE.test(name));
  const equal = new Map(requests.map((name) => [name, name.replace(REQUEST_SIDE, '')]));
  for (let before = -1; before !== equal.size; ) {
    before = equal.size;
    const differing = [...equal].filter(([request, answer]) => {
      const [one, other] = [schemas[request], schemas[answer]];
      if (one === undefined || other === undefined) return false;
      return textUnder(equal, one) !== textUnder(equal, other);
    });
    for (const [request] of differing) equal.delete(request);
  }
  return equal;
}

function rename(schemas: Schemas, names: Names): void {
  const entries = Object.entries(schemas);
  for (const [name] of entries) delete schemas[name];
  for (const [name, schema] of entries) schemas[names.get(name) ?? name] ??= schema;
}

/**
 * While schemas are made, `XInput` is the request's side of `X`, and `XItem` an `X` in a list. The document shows `X`, and
 * `XRequest` where a request differs.
 */
export function namedComponents<
  Document extends { components?: { schemas?: Record<string, object> | undefined } | undefined },
>(made: Document): Document {
  const document = structuredClone(made);
  const schemas = document.components?.schemas;
  if (schemas === undefined) return document;
  lead(document, mergeItems(schemas));
  const equal = equalRequests(schemas);
  const requests = Object.keys(schemas).filter((name) => REQUEST_SIDE.test(name));
  const names = new Map(
    requests.map((name) => [name, equal.get(name) ?? name.replace(REQUEST_SIDE, 'Request')]),
  );
  rename(schemas, names);
  lead(document, names);
  return document;
}
