/** Answers with the catalogue of cautions. */

import { z } from '@hono/zod-openapi';
import { success } from '../../../curves/result.ts';
import { CAUTION_TABLE } from '../../../models/cautions/catalogue.ts';
import { MODEL_VERSION } from '../../../models/model-version.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { tableOf } from '../../http/table-of.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const cautionRow = (context: SchemaContext) =>
  z.strictObject({
    code: described(context, z.string(), {
      description: 'Stable code by which answers name it.',
      examples: ['screen-uneven'],
    }),
    severity: described(context, z.enum(['note', 'warning', 'danger']), {
      description: 'How grave it is.',
      examples: ['warning'],
    }),
    sentence: described(context, z.string(), {
      description: 'What it says; answers add in brackets what it is about.',
      examples: ['Water runs faster than the velocity limit in a pipe.'],
    }),
    source: described(context, z.string(), {
      description: 'On whose authority.',
      examples: ['common practice'],
    }),
  });

const cautionTableSchema = perContext((context) =>
  named(
    context,
    'CautionTable',
    z.strictObject({
      items: described(context, z.array(cautionRow(context)), { description: 'A row a code.' }),
    }),
    { description: 'Every caution that an answer can carry.' },
  ),
);

export function cautionsRoute(api: Api): void {
  defineRoute(
    api,
    {
      method: 'get',
      path: '/v1/reference/cautions',
      operationId: 'getCautions',
      summary: 'The cautions',
      description:
        'Every caution that an answer can carry, by its code: how grave it is, what it says and on whose authority.',
      tag: 'reference',
      query: noQuery,
      body: noBody,
      answer: jsonAnswer({
        schema: cautionTableSchema,
        description: 'The catalogue.',
        example: { items: CAUTION_TABLE.slice(0, 2) },
        table: tableOf(cautionTableSchema, 'items', ['code', 'severity', 'sentence', 'source']),
      }),
    },
    async () =>
      success({ body: { items: CAUTION_TABLE }, validator: { basis: { modelVersion: MODEL_VERSION } } }),
  );
}
