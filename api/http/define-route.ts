/** Mounts a route on the application, where it is documented and guarded like every other. */
import type { z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { failed, type Result, success } from '../../curves/result.ts';
import { type Store, storeOfSite } from '../store/store.ts';
import { perContext } from '../units/per-context.ts';
import { schemaContext } from '../units/schema-context.ts';
import type { Answer, MediaType, Validator } from './answer-form.ts';
import { answerProblem } from './answer-problem.ts';
import type { Api, RequestVariables } from './api.ts';
import { type CommonQuery, commonQuery } from './common-query.ts';
import { documentRoute } from './document-route.ts';
import { derivedEtag, expectedVersion, matchesAny, versionEtag } from './etag.ts';
import { queryErrors } from './issue-errors.ts';
import { type Parameters, parseQuery } from './parse-query.ts';
import { invalidRequest, type Problem } from './problem.ts';
import { pathWithIds, queryWithIds } from './record-names.ts';
import type { PathParameters, Route, RouteHandler } from './route.ts';
import { namesOf, sharedParameters } from './shared-parameters.ts';

type Ctx = Context<RequestVariables>;

/** What a request asks for, its body aside. */
interface Asked<Query> {
  readonly parameters: Parameters;
  readonly common: CommonQuery;
  readonly query: Query;
  readonly mediaType: MediaType;
}

function readAsked<P extends string, Q extends z.ZodObject, B, O>(
  c: Ctx,
  route: Route<P, Q, B, O>,
): Result<Asked<z.output<Q>>, Problem> {
  const parameters = parseQuery(c.req.url);
  if (!parameters.ok) return parameters;
  const shared = sharedParameters(route);
  const common = commonQuery(parameters.value, shared);
  if (!common.ok) return common;
  const { system, rest } = common.value;
  const schema = route.query(schemaContext({ system, side: 'request' }));
  const query = schema.safeParse(rest);
  if (!query.success) {
    const known = [...Object.keys(schema.shape), ...namesOf(shared)];
    return failed(invalidRequest(queryErrors(query.error.issues, rest, known)));
  }
  const mediaType = route.answer.chooseMediaType(common.value, c.req.header('accept'));
  if (!mediaType.ok) return mediaType;
  return success({
    parameters: parameters.value,
    common: common.value,
    query: query.data,
    mediaType: mediaType.value,
  });
}

function etagOf(
  validator: Validator,
  path: string,
  { parameters, common, mediaType }: Asked<unknown>,
): string {
  const { system } = common;
  if ('version' in validator) return versionEtag(validator.version, system);
  return derivedEtag({ path, query: parameters, system, mediaType, basis: validator.basis });
}

function answerWith<O>(
  c: Ctx,
  { method, answer: form }: { method: string; answer: Route<string, z.ZodObject, unknown, O>['answer'] },
  asked: Asked<unknown>,
  { body, validator, location, status }: Answer<O>,
): Result<Response, Problem> {
  const headers = new Headers();
  if (location !== undefined) headers.set('Location', location);
  if (form.hasTable) headers.set('Vary', 'Accept');
  if (validator !== undefined) {
    const etag = etagOf(validator, c.req.path, asked);
    headers.set('ETag', etag);
    const mayHold = !('version' in validator && validator.derived);
    if (method === 'get' && mayHold && matchesAny(c.req.header('if-none-match'), etag)) {
      return success(new Response(null, { status: 304, headers }));
    }
  }
  const written = form.write(body, asked.common, asked.mediaType);
  if (!written.ok) return written;
  const { text, contentType } = written.value;
  if (contentType !== null) headers.set('Content-Type', contentType);
  return success(new Response(text, { status: status ?? form.status, headers }));
}

/** The router gives a value to every name of a path that it matched. */
function hasParameters<P extends string>(
  found: Readonly<Record<string, string>>,
  path: P,
): found is PathParameters<P> {
  return [...path.matchAll(/\{(\w+)\}/g)].every(([, name]) => name !== undefined && name in found);
}

async function serve<P extends string, Q extends z.ZodObject, B, O>(
  c: Ctx,
  allSites: Store,
  route: Route<P, Q, B, O>,
  handler: RouteHandler<P, z.output<Q>, B, O>,
): Promise<Result<Response, Problem>> {
  const asked = readAsked(c, route);
  if (!asked.ok) return asked;
  const ifMatch = c.req.header('if-match');
  const { conditional = false } = route;
  const demands = conditional === true || (conditional !== false && ifMatch !== undefined);
  const expected = demands ? expectedVersion(ifMatch) : success('any' as const);
  if (!expected.ok) return expected;
  const { common } = asked.value;
  const store = storeOfSite(allSites, c.get('siteId'));
  const query = await queryWithIds(asked.value.query, store);
  if (!query.ok) return query;
  const body = await route.body.read(c.req.raw, { system: common.system, store });
  if (!body.ok) return body;
  const sentParams = c.req.param();
  const params = await pathWithIds(sentParams, store);
  if (!hasParameters(params, route.path) || !hasParameters(sentParams, route.path))
    throw new Error(`invariant: no parameters of ${route.path}`);
  const answer = await handler({
    params,
    sentParams,
    query: query.value,
    body: body.value,
    system: common.system,
    expectedVersion: expected.value,
    isConditional: ifMatch !== undefined,
    mustBeNew: c.req.header('if-none-match')?.trim() === '*',
    store,
    requestId: c.get('requestId'),
  });
  return answer.ok ? answerWith(c, route, asked.value, answer.value) : answer;
}

/** A GET is also answered as HEAD. */
export function defineRoute<const P extends string, Q extends z.ZodObject, B, O>(
  api: Api,
  route: Route<P, Q, B, O>,
  handler: RouteHandler<P, z.output<Q>, B, O>,
): void {
  documentRoute(api, route);
  // Built once: a schema costs more to make than to use.
  const kept = { ...route, query: perContext(route.query) };
  const method = route.method.toUpperCase();
  const path = route.path.replaceAll(/\{(\w+)\}/g, ':$1');
  api.app.on(method, path, async (c: Ctx) => {
    const response = await serve(c, api.deps.store, kept, handler);
    return response.ok ? response.value : answerProblem(c, response.failure);
  });
}
