/** Reads a JSON body through a schema. */
import type { z } from '@hono/zod-openapi';
import { failed, success } from '../../curves/result.ts';
import {
  DEFAULT_DENSITY,
  documentedContext,
  type SchemaContext,
  schemaContext,
} from '../units/schema-context.ts';
import { bodyText } from './body-text.ts';
import { bodyErrors } from './issue-errors.ts';
import { parseJson } from './parse-json.ts';
import { invalidRequest } from './problem.ts';
import type { BodyReading, RequestBody } from './request-body.ts';

const MEDIA_TYPE = 'application/json';

interface JsonBody<Body> {
  readonly schema: (context: SchemaContext) => z.ZodType<Body>;
  /** The density of the water that heads in units of pressure refer to [kg/m3], from the body before it is decoded. */
  readonly density?: (raw: unknown, reading: BodyReading) => number | Promise<number>;
  /** In metric units. */
  readonly example: unknown;
}

export const jsonBody = <Body>({ schema, density, example }: JsonBody<Body>): RequestBody<Body> => ({
  async read(request, reading) {
    const text = await bodyText(request, MEDIA_TYPE);
    if (!text.ok) return text;
    const raw = parseJson(text.value);
    if (!raw.ok) return raw;
    const waterDensity = (await density?.(raw.value, reading)) ?? DEFAULT_DENSITY;
    const context = schemaContext({ system: reading.system, side: 'request', density: waterDensity });
    const decoded = schema(context).safeParse(raw.value);
    return decoded.success
      ? success(decoded.data)
      : failed(invalidRequest(bodyErrors(decoded.error.issues, raw.value)));
  },
  document: () => ({
    mediaType: MEDIA_TYPE,
    schema: schema(documentedContext('request')),
    example,
  }),
});
