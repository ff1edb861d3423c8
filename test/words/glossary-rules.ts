/** Holds the fields of the OpenAPI document to the glossary: one JSON type a name, no retired name, a description each. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { packageFolder } from '../../api/http/examples.ts';
import type { Finding } from './word-rules.ts';

type Schema = { readonly [member: string]: unknown };

interface Field {
  readonly name: string;
  readonly where: string;
  readonly schema: Schema;
}

/** Names that hold more than one JSON type, each with its reason. */
export const TYPES_THAT_DIFFER: ReadonlyMap<string, string> = new Map([
  ['counts', 'an object of whole numbers; each answer counts other nouns'],
  ['uncertainty', 'an object of intervals; each answer holds other quantities'],
  ['units', 'an object in answers; one system of units in stored documents'],
  ['loop', 'an id or key in documents and requests, an object in answers'],
  ['pump', 'an id or key in documents and requests, an object in answers'],
  ['tariff', 'an id or key in documents and requests, an object in answers'],
  ['comparison', 'an id or key in documents and requests, an object in answers'],
  ['outlet', 'an object in a loop, elsewhere its name'],
  ['opening', 'a number of a valve, an object of a leak'],
]);

const isSchema = (value: unknown): value is Schema =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const documentOf = (): Schema =>
  JSON.parse(readFileSync(join(packageFolder(), 'openapi', 'openapi.json'), 'utf8'));

function fieldsIn(value: unknown, where: string): readonly Field[] {
  if (Array.isArray(value)) return value.flatMap((one, index) => fieldsIn(one, `${where}/${index}`));
  if (!isSchema(value)) return [];
  const properties = isSchema(value.properties) ? value.properties : {};
  const own = Object.entries(properties).flatMap(([name, schema]) =>
    isSchema(schema) ? [{ name, where: `${where}/properties/${name}`, schema }] : [],
  );
  const inner = Object.entries(value).flatMap(([name, one]) =>
    name === 'examples' || name === 'example' ? [] : fieldsIn(one, `${where}/${name}`),
  );
  return [...own, ...inner];
}

/** The JSON types of a schema, null left out; a quantity that may be a number or a string with its unit counts as one. */
function typesOf(schema: Schema, document: Schema): readonly string[] {
  const alternatives = [schema.anyOf, schema.oneOf, schema.allOf].flatMap((list) =>
    Array.isArray(list) ? list.filter(isSchema) : [],
  );
  if (alternatives.length > 0) {
    return quantityAsOne([...new Set(alternatives.flatMap((one) => typesOf(one, document)))].sort());
  }
  const reference = schema.$ref;
  if (typeof reference === 'string') return typesOf(resolved(reference, document), document);
  const type = schema.type;
  const types = (Array.isArray(type) ? type : type === undefined ? [] : [type]).map(String);
  const named = types.filter((one) => one !== 'null').map((one) => (one === 'integer' ? 'number' : one));
  return quantityAsOne([...new Set(named)].sort());
}

/** A quantity is a number, or a string with its unit. */
const quantityAsOne = (types: readonly string[]): readonly string[] =>
  types.join() === 'number,string' ? ['number'] : types;

function resolved(reference: string, document: Schema): Schema {
  let place: unknown = document;
  for (const token of reference.slice(2).split('/')) place = isSchema(place) ? place[token] : undefined;
  if (!isSchema(place)) throw new Error(`${reference} leads nowhere`);
  return place;
}

const isDescribed = ({ schema }: Field): boolean =>
  typeof schema.description === 'string' || typeof schema.$ref === 'string';

export function glossaryFindings(retired: ReadonlyMap<string, string>): readonly Finding[] {
  const document = documentOf();
  const fields = fieldsIn(document, 'openapi/openapi.json');
  const typesByName = new Map<string, Map<string, string>>();
  for (const { name, where, schema } of fields) {
    const types = typesByName.get(name) ?? new Map<string, string>();
    const type = typesOf(schema, document).join(' or ');
    if (type !== '') types.set(type, where);
    typesByName.set(name, types);
  }
  const mixed = [...typesByName].flatMap(([name, types]) =>
    types.size > 1 && !TYPES_THAT_DIFFER.has(name)
      ? [
          {
            where: [...types.values()].join(', '),
            rule: 'one JSON type a name',
            text: `${name}: ${[...types.keys()].join(' | ')}`,
          },
        ]
      : [],
  );
  const given = fields.flatMap(({ name, where }) => {
    const instead = retired.get(name);
    return instead === undefined
      ? []
      : [{ where, rule: 'a name that the glossary retires', text: `${name}: ${instead}` }];
  });
  const bare = fields
    .filter((field) => !isDescribed(field))
    .map(({ name, where }) => ({ where, rule: 'a field without a description', text: name }));
  return [...mixed, ...given, ...bare];
}
