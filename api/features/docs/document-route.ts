/** Answers with the service's own specification. */
import { z } from '@hono/zod-openapi';
import { success } from '../../../curves/result.ts';
import { writtenOnce } from '../../caches/written-once.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { openApiDocument } from './document.ts';

const specification = z
  .looseObject({})
  .openapi('Specification', { description: 'A document of OpenAPI 3.1.' });

export function specificationRoute(api: Api): void {
  const document = writtenOnce(() => ({ ...openApiDocument(api) }));
  defineRoute(
    api,
    {
      method: 'get',
      path: '/openapi.json',
      operationId: 'getSpecification',
      tag: 'service',
      summary: 'The OpenAPI document',
      description: 'Every operation, parameter and field of this service.',
      query: noQuery,
      body: noBody,
      answer: jsonAnswer({
        schema: () => specification,
        description: 'The document.',
        example: { openapi: '3.1.0', info: { title: 'Loopwright', version: '0.1.0' }, paths: {} },
      }),
    },
    async () => success({ body: document() }),
  );
}
