/** A small resource that shows what every route does alike: a tank with an optional list of probes. */
import { z } from '@hono/zod-openapi';
import type { Api } from '../../../api/http/api.ts';
import { csvBody } from '../../../api/http/csv-body.ts';
import { defineRoute } from '../../../api/http/define-route.ts';
import { jsonAnswer } from '../../../api/http/json-answer.ts';
import { jsonBody } from '../../../api/http/json-body.ts';
import { noContent } from '../../../api/http/no-content.ts';
import { problem } from '../../../api/http/problem.ts';
import { noBody } from '../../../api/http/request-body.ts';
import { noQuery } from '../../../api/http/route.ts';
import { StoreFault } from '../../../api/store/store-fault.ts';
import { unitsField } from '../../../api/units/answer-units.ts';
import { computed, computedNumber } from '../../../api/units/computed.ts';
import { named } from '../../../api/units/described.ts';
import { entered } from '../../../api/units/entered.ts';
import type { SchemaContext } from '../../../api/units/schema-context.ts';
import { failed, success } from '../../../curves/result.ts';

const flowField = (context: SchemaContext) =>
  entered(context, 'flow', { description: 'Flow.', minimum: 0, maximum: 1, example: 1000 });

const diameterField = (context: SchemaContext) =>
  entered(context, 'diameter', {
    description: 'Bore.',
    minimum: 0,
    aboveMinimum: true,
    maximum: 1,
    example: 40,
  });

function probeOf(context: SchemaContext) {
  return z.union([
    z.strictObject({ pipe: z.union([z.string(), z.strictObject({ bore: diameterField(context) })]) }),
    z.strictObject({ fitting: z.string(), count: z.int().min(1).optional() }),
  ]);
}

const shape = (context: SchemaContext) => ({
  name: z.string().min(1),
  flow: flowField(context),
  probes: z.array(probeOf(context)).max(3).optional(),
});

export const tankBody = (context: SchemaContext) => named(context, 'Tank', z.strictObject(shape(context)));

const tankAnswer = (context: SchemaContext) =>
  named(context, 'Tank', z.strictObject({ ...shape(context), units: unitsField(context) }));

const tableAnswer = (context: SchemaContext) =>
  named(
    context,
    'TankTable',
    z.strictObject({
      summary: z.string(),
      best: z.union([z.strictObject({ setting: z.number() }), z.null()]),
      ratio: computedNumber(context, { description: 'Ratio.', example: 0.5 }),
      rows: z.array(
        z.strictObject({
          name: z.string(),
          flow: computed(context, 'flow', { description: 'Flow.', example: 1000 }),
        }),
      ),
      units: unitsField(context),
    }),
  );

const EXAMPLE = { name: 'display', flow: 1000 };

const words = (operationId: string) => ({
  operationId,
  summary: operationId,
  description: operationId,
  tag: 'service',
});

const probeQuery = (context: SchemaContext) =>
  z.strictObject({
    limit: z.string().regex(/^\d+$/, 'must be a whole number').optional(),
    flow: flowField(context).optional(),
  });

export function demonstrationRoutes(api: Api): void {
  const echo = jsonBody({ schema: tankBody, example: EXAMPLE });
  defineRoute(
    api,
    {
      ...words('createTank'),
      method: 'post',
      path: '/v1/tanks',
      query: noQuery,
      body: echo,
      answer: jsonAnswer({ schema: tankAnswer, description: 'The tank.', example: EXAMPLE, status: 201 }),
    },
    async ({ body }) => success({ body, location: '/v1/tanks/1', validator: { version: 1 } }),
  );
  defineRoute(
    api,
    {
      ...words('getTank'),
      method: 'get',
      path: '/v1/tanks/{tankId}',
      query: probeQuery,
      body: noBody,
      answer: jsonAnswer({ schema: tankAnswer, description: 'The tank.', example: EXAMPLE }),
    },
    async ({ params }) => {
      if (params.tankId === 'broken') throw new Error('secret of the inside');
      if (params.tankId === 'busy') throw new StoreFault('store-unavailable', 'secret');
      if (params.tankId === 'full') throw new StoreFault('store-full', 'secret');
      if (params.tankId === 'infinite')
        return success({ body: { name: 'x', flow: Number.POSITIVE_INFINITY } });
      if (params.tankId !== '1') return failed(problem('not-found', 'There is no such tank.'));
      return success({ body: { name: 'display', flow: 1 / 3600 }, validator: { version: 3 } });
    },
  );
  defineRoute(
    api,
    {
      ...words('replaceTank'),
      method: 'put',
      path: '/v1/tanks/{tankId}',
      conditional: true,
      query: noQuery,
      body: echo,
      answer: jsonAnswer({ schema: tankAnswer, description: 'The tank.', example: EXAMPLE }),
    },
    async ({ body, expectedVersion }) =>
      expectedVersion === 'any' || expectedVersion === 3
        ? success({ body, validator: { version: 4 } })
        : failed(problem('stale-version', 'The tank is at version 3.')),
  );
  defineRoute(
    api,
    {
      ...words('deleteTank'),
      method: 'delete',
      path: '/v1/tanks/{tankId}',
      conditional: true,
      query: noQuery,
      body: noBody,
      answer: noContent('It is gone.'),
    },
    async () => success({ body: null }),
  );
  defineRoute(
    api,
    {
      ...words('putRows'),
      method: 'put',
      path: '/v1/tanks/{tankId}/rows',
      query: noQuery,
      body: csvBody({
        columns: {
          flow: { quantity: 'flow', required: true },
          head: { quantity: 'head', required: false },
        },
        rowsMax: 3,
        rows: (context) => z.array(z.strictObject({ flow: flowField(context) })).max(3),
        description: 'Rows.',
        example: 'flow\r\n1000\r\n',
      }),
      answer: jsonAnswer({ schema: tableAnswer, description: 'Rows.', example: {} }),
    },
    async ({ body }) =>
      success({
        body: { summary: '', best: null, ratio: 0, rows: body.rows.map((row) => ({ name: 'row', ...row })) },
      }),
  );
  defineRoute(
    api,
    {
      ...words('getTable'),
      method: 'get',
      path: '/v1/table',
      query: probeQuery,
      body: noBody,
      answer: jsonAnswer({
        schema: tableAnswer,
        description: 'Rows.',
        example: {},
        table: ({ rows }) => ({
          columns: [{ name: 'name' }, { name: 'flow', unit: 'flow' }],
          rows: rows.map(({ name, flow }) => [name, flow]),
        }),
      }),
    },
    async () =>
      success({
        body: {
          summary: 'No pump serves it.',
          best: null,
          ratio: 1 / 3,
          rows: [
            { name: '=SUM(A1)', flow: 1 / 3600 / 3 },
            { name: 'a "b", c', flow: -0 },
          ],
        },
        validator: { basis: { modelVersion: '1' } },
      }),
  );
}
