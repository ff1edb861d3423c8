/** Takes a body of readings, in JSON or CSV, as text, since its fields depend on the loop. */
import { z } from '@hono/zod-openapi';
import { type Result, success } from '../../../curves/result.ts';
import { bodyText } from '../../http/body-text.ts';
import { example, exampleText } from '../../http/examples.ts';
import type { Problem } from '../../http/problem.ts';
import type { RequestBody } from '../../http/request-body.ts';
import { documentedContext } from '../../units/schema-context.ts';
import { readingsInput } from './schema.ts';

/** Of this body alone. */
const READINGS_BODY_MAX = 8 * 1024 * 1024;

const JSON_TYPE = 'application/json';
const CSV_TYPE = 'text/csv';

export interface ReadingsText {
  readonly mediaType: typeof JSON_TYPE | typeof CSV_TYPE;
  readonly text: string;
}

export const readingsBody: RequestBody<ReadingsText> = {
  async read(request): Promise<Result<ReadingsText, Problem>> {
    const stated = request.headers.get('content-type')?.split(';', 1)[0]?.trim().toLowerCase();
    const mediaType = stated === CSV_TYPE ? CSV_TYPE : JSON_TYPE;
    const text = await bodyText(request, mediaType, READINGS_BODY_MAX);
    return text.ok ? success({ mediaType, text: text.value }) : text;
  },
  document: () => ({
    mediaType: JSON_TYPE,
    schema: readingsInput(documentedContext('request')),
    example: example('readings'),
    other: {
      mediaType: CSV_TYPE,
      schema: z.string().openapi({
        description:
          'Columns time and setting and, of power, flow, head, suctionPressure, dischargePressure and `outletFlows/<name of the outlet>` (or the name alone), those that were measured; in any order, in the unit in force or that of the header.',
      }),
      example: exampleText('readings.csv'),
    },
  }),
};
