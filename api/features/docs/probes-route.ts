/** Answers whether the process lives and whether it can serve. */
import { z } from '@hono/zod-openapi';
import { success } from '../../../curves/result.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';

const status = z
  .strictObject({
    status: z.literal('ok').openapi({ description: 'Always `ok`; anything else is a problem.' }),
    version: z.string().openapi({ description: 'The version that runs.', examples: ['0.1.0'] }),
  })
  .openapi('ProbeStatus', { description: 'The answer of a probe.' });

const probe = { tag: 'service', query: noQuery, body: noBody, method: 'get' } as const;

const answer = (description: string) =>
  jsonAnswer({ schema: () => status, description, example: { status: 'ok', version: '0.1.0' } });

export function probeRoutes(api: Api): void {
  const { store, version } = api.deps;
  defineRoute(
    api,
    {
      ...probe,
      path: '/healthz',
      operationId: 'getHealth',
      summary: 'Does the process live?',
      description: 'Answers as soon as the process takes requests; asks nothing of the database.',
      answer: answer('The process lives.'),
    },
    async () => success({ body: { status: 'ok', version } }),
  );
  defineRoute(
    api,
    {
      ...probe,
      path: '/readyz',
      operationId: 'getReadiness',
      summary: 'Can the service serve?',
      description: 'Asks the database; 503 while it does not answer.',
      answer: answer('The service serves.'),
    },
    async () => {
      await store.ping();
      return success({ body: { status: 'ok', version } });
    },
  );
}
