/** Documents a route as an operation of the OpenAPI document. */
import { z } from '@hono/zod-openapi';
import { documentedContext } from '../units/schema-context.ts';
import { UNIT_SYSTEMS } from '../units/unit-system.ts';
import type { Api } from './api.ts';
import { FORMATS, type SharedParameters } from './common-query.ts';
import { errorResponses } from './document-errors.ts';
import { mayHaveKey } from './record-names.ts';
import type { DocumentedBody } from './request-body.ts';
import type { Route } from './route.ts';
import { sharedParameters } from './shared-parameters.ts';

type AnyRoute = Route<string, z.ZodObject, unknown, unknown>;

const SHARED_SCHEMAS = {
  units: z
    .enum(UNIT_SYSTEMS)
    .optional()
    .openapi({
      description: 'The units of numbers, in and out; `metric` where it is not stated.',
      examples: ['metric'],
    }),
  format: z
    .enum(FORMATS)
    .optional()
    .openapi({
      description: 'The form of the answer; wins over the header Accept.',
      examples: ['csv'],
    }),
  pointer: z.string().optional().openapi({
    description:
      'JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare.',
  }),
} as const;

function sharedSchemas(known: SharedParameters): z.ZodRawShape {
  const shape: Record<string, z.ZodType> = {};
  if (known.units) shape.units = SHARED_SCHEMAS.units;
  if (known.format) shape.format = SHARED_SCHEMAS.format;
  if (known.pointer) shape.pointer = SHARED_SCHEMAS.pointer;
  return shape;
}

function pathSchema(path: string): z.ZodObject | undefined {
  const names = [...path.matchAll(/\{(\w+)\}/g)].flatMap(([, name]) => name ?? []);
  if (names.length === 0) return undefined;
  const entries = names.map((name) => {
    const noun = name.replace(/Id$/, '');
    const names = mayHaveKey(noun) ? 'id or key' : 'id';
    return [name, z.string().openapi({ description: `The ${names} of the ${noun}.` })];
  });
  return z.object(Object.fromEntries(entries));
}

const ifMatch = z.object({
  'If-Match': z.string().openapi({
    description: 'The ETag that was read, or `*`.',
    examples: ['"3-metric"'],
  }),
});

const ifNoneMatch = z.object({
  'If-None-Match': z
    .string()
    .optional()
    .openapi({
      description: '`*`: only where there is nothing yet.',
      examples: ['*'],
    }),
});

function documentedHeaders({ conditional = false, method }: AnyRoute): z.ZodObject | undefined {
  if (conditional === false) return undefined;
  if (conditional === true) return ifMatch;
  const optional = ifMatch.partial();
  return conditional === 'optional' && method === 'put' ? optional.extend(ifNoneMatch.shape) : optional;
}

function documentedContent({ other, ...first }: DocumentedBody) {
  const forms = other === undefined ? [first] : [first, other];
  return Object.fromEntries(
    forms.map(({ mediaType, schema, example }) => [
      mediaType,
      { schema, examples: { example: { value: example } } },
    ]),
  );
}

function documentedRequest(route: AnyRoute) {
  const shape = {
    ...route.query(documentedContext('request')).shape,
    ...sharedSchemas(sharedParameters(route)),
  };
  const params = pathSchema(route.path);
  const body = route.body.document();
  const headers = documentedHeaders(route);
  return {
    ...(params === undefined ? {} : { params }),
    ...(Object.keys(shape).length === 0 ? {} : { query: z.object(shape) }),
    ...(headers === undefined ? {} : { headers }),
    ...(body === undefined
      ? {}
      : {
          body: {
            required: true,
            content: documentedContent(body),
          },
        }),
  };
}

function documentedAnswer(route: AnyRoute) {
  const { description, schema, example } = route.answer.document();
  if (schema === undefined) return { description };
  const text = { schema: z.string() };
  const content = {
    [route.answer.mediaType]: { schema, examples: { example: { value: example } } },
    ...(route.answer.hasTable ? { 'text/csv': text } : {}),
    ...(sharedParameters(route).pointer ? { 'text/plain': text } : {}),
  };
  return { description, content };
}

export function documentRoute(api: Api, route: AnyRoute): void {
  const { method, path, operationId, summary, description, tag, problems = [], conditional = false } = route;
  const { status } = route.answer;
  api.app.openAPIRegistry.registerPath({
    method,
    path,
    operationId,
    summary,
    description,
    tags: [tag],
    request: documentedRequest(route),
    responses: {
      [status]: documentedAnswer(route),
      ...(conditional === 'optional' ? { 201: documentedAnswer(route) } : {}),
      ...errorResponses(api, {
        method,
        path,
        conditional: conditional !== false,
        problems,
        hasBody: route.body.document() !== undefined,
        hasContent: status !== 204,
      }),
    },
  });
}
