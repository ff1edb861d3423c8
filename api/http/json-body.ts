/** Reads a JSON body through a schema. */
import type { z } from '@hono/zod-openapi';
import { failed, type Result, success } from '../../curves/result.ts';
import { enteredKey } from '../fields/key-field.ts';
import {
  DEFAULT_DENSITY,
  documentedContext,
  type SchemaContext,
  schemaContext,
} from '../units/schema-context.ts';
import { bodyText } from './body-text.ts';
import { bodyErrors } from './issue-errors.ts';
import { parseJson } from './parse-json.ts';
import { invalidRequest, type Problem } from './problem.ts';
import { bodyWithIds } from './record-names.ts';
import type { BodyReading, RequestBody } from './request-body.ts';

const MEDIA_TYPE = 'application/json';

interface JsonBody<Body> {
  readonly schema: (context: SchemaContext) => z.ZodType<Body>;
  /** The density of the water that heads in units of pressure refer to [kg/m3], from the body before it is decoded. */
  readonly density?: (raw: unknown, reading: BodyReading) => number | Promise<number>;
  /** In metric units. */
  readonly example: unknown;
}

/** A document, and what is said of the key of its record. */
export interface Keyed<Document> {
  readonly document: Document;
  /** Undefined where nothing is said. */
  readonly key: string | null | undefined;
}

async function readJson<Body>(
  { schema, density }: JsonBody<Body>,
  request: Request,
  reading: BodyReading,
): Promise<Result<Keyed<Body>, Problem>> {
  const text = await bodyText(request, MEDIA_TYPE);
  if (!text.ok) return text;
  const sent = parseJson(text.value);
  if (!sent.ok) return sent;
  const raw = await bodyWithIds(sent.value, reading.store);
  const waterDensity = (await density?.(raw, reading)) ?? DEFAULT_DENSITY;
  const context = schemaContext({ system: reading.system, side: 'request', density: waterDensity });
  const decoded = schema(context).safeParse(raw);
  return decoded.success
    ? success({ document: decoded.data, key: enteredKey(raw) })
    : failed(invalidRequest(bodyErrors(decoded.error.issues, raw)));
}

const documentJson = <Body>({ schema, example }: JsonBody<Body>) => ({
  mediaType: MEDIA_TYPE,
  schema: schema(documentedContext('request')),
  example,
});

export const jsonBody = <Body>(form: JsonBody<Body>): RequestBody<Body> => ({
  async read(request, reading) {
    const read = await readJson(form, request, reading);
    return read.ok ? success(read.value.document) : read;
  },
  document: () => documentJson(form),
});

/** Of a record that may have a key, the schema of which judges it. */
export const keyedBody = <Body>(form: JsonBody<Body>): RequestBody<Keyed<Body>> => ({
  read: (request, reading) => readJson(form, request, reading),
  document: () => documentJson(form),
});
