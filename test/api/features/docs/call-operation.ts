/** Calls an operation of the document as its examples show it. */
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { jsonOf } from '../../requests.ts';
import { type Operation, operationsOf, type Parameter } from './operations.ts';

export const operations = operationsOf(await jsonOf(await (await appUnderTest()).call('/openapi.json')));

/** A record of the collection before a parameter of the path: `/v1/loops` for `{loopId}`, its first or a new one. */
async function idIn(site: AppUnderTest, collection: string): Promise<string> {
  const { items } = await jsonOf(await site.call(collection));
  const [first] = Array.isArray(items) ? items : [];
  return first === undefined ? await madeIn(site, collection) : String(first.id);
}

/** A new record of a collection, by the example of its POST. */
async function madeIn(site: AppUnderTest, collection: string): Promise<string> {
  const post = operations.find(({ path, method }) => path === pattern(collection) && method === 'post');
  const [body] = post?.bodies ?? [];
  if (body === undefined) throw new Error(`${collection} has no POST with an example`);
  const answer = await jsonOf(await site.call(collection, await request(site, 'post', body)));
  if (answer.id === undefined) throw new Error(`${collection}: ${JSON.stringify(answer)}`);
  return String(answer.id);
}

/** The path of the document that a called path is an instance of. */
function pattern(called: string): string {
  const others = called.split('/');
  const found = operations.find(({ path }) => {
    const parts = path.split('/');
    return (
      parts.length === others.length && parts.every((part, i) => part.startsWith('{') || part === others[i])
    );
  });
  return found?.path ?? called;
}

/** The path with ids of what is stored; what a DELETE takes away is made for it. */
export async function calledPath(site: AppUnderTest, { path, method }: Operation): Promise<string> {
  let called = '';
  const parts = path.split('/').slice(1);
  for (const [place, part] of parts.entries()) {
    const isTaken = method === 'delete' && place === parts.length - 1;
    called += `/${part.startsWith('{') ? await (isTaken ? madeIn : idIn)(site, called) : part}`;
  }
  return called;
}

/** Members and parameters that name stored records: their ids are never the same twice, so that an example's is none. */
const RECORDS: Readonly<Record<string, string>> = {
  pump: '/v1/pumps',
  loop: '/v1/loops',
  tariff: '/v1/tariffs',
};

async function withRecords(site: AppUnderTest, value: unknown): Promise<unknown> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  const members = Object.entries(value).map(async ([name, member]) => {
    const collection = typeof member === 'string' ? RECORDS[name] : undefined;
    return [name, collection === undefined ? member : await idIn(site, collection)];
  });
  return Object.fromEntries(await Promise.all(members));
}

async function request(
  site: AppUnderTest,
  method: string,
  body?: { readonly mediaType: string; readonly value: unknown },
): Promise<RequestInit> {
  const headers = { ...(method === 'put' || method === 'delete' ? { 'If-Match': '*' } : {}) };
  if (body === undefined) return { method: method.toUpperCase(), headers };
  return {
    method: method.toUpperCase(),
    headers: { ...headers, 'Content-Type': body.mediaType },
    body: typeof body.value === 'string' ? body.value : JSON.stringify(await withRecords(site, body.value)),
  };
}

/** A value for a parameter of the query; undefined where the document shows none. */
export async function shownValue(
  site: AppUnderTest,
  { name, schema }: Parameter,
): Promise<string | undefined> {
  const collection = RECORDS[name];
  if (collection !== undefined) return await idIn(site, collection);
  // What a page before has answered, a form, a part: not a value of its own.
  if (['cursor', 'pointer', 'format'].includes(name)) return undefined;
  const [shown] = schema.examples ?? [];
  return shown === undefined ? undefined : String(shown);
}

export async function requiredQuery(
  site: AppUnderTest,
  { parameters }: Operation,
): Promise<Record<string, string>> {
  const query: Record<string, string> = {};
  for (const parameter of parameters.filter((one) => one.in === 'query' && one.required === true))
    query[parameter.name] = (await shownValue(site, parameter)) ?? '';
  return query;
}

/** One response for each example of its body. */
export async function callAsShown(
  operation: Operation,
  siteFor: (operation: Operation) => Promise<AppUnderTest>,
): Promise<readonly Response[]> {
  const { method, bodies } = operation;
  const responses: Response[] = [];
  for (const body of bodies.length === 0 ? [undefined] : bodies) {
    const site = await siteFor(operation);
    const query = new URLSearchParams(await requiredQuery(site, operation));
    const called = `${await calledPath(site, operation)}${query.size > 0 ? `?${query}` : ''}`;
    responses.push(await site.call(called, await request(site, method, body)));
  }
  return responses;
}
