/** Answers with the tables that figures follow from, each row with its source. */
import { z } from '@hono/zod-openapi';
import { success } from '../../../curves/result.ts';
import { BORE_CHANGES, type BoreChange } from '../../../models/components/bore-change.ts';
import { FITTINGS } from '../../../models/components/fittings.ts';
import type { NamedLoss } from '../../../models/components/named-loss.ts';
import { PIPE_SIZES } from '../../../models/components/pipe-sizes.ts';
import { DEFAULT_ROUGHNESS } from '../../../models/components/roughness.ts';
import { VALVES } from '../../../models/components/valves.ts';
import { MODEL_VERSION } from '../../../models/model-version.ts';
import { vapourPressure } from '../../../models/physics/vapour-pressure.ts';
import { waterProperties } from '../../../models/physics/water.ts';
import { queryQuantity } from '../../fields/query-field.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { tableOf } from '../../http/table-of.ts';
import { DEFAULT_WATER, type SchemaContext } from '../../units/schema-context.ts';
import { fittingsSchema, pipesSchema, waterSchema } from './answer-schema.ts';
import { cautionsRoute } from './cautions-route.ts';

const table = { method: 'get', tag: 'reference', body: noBody } as const;
const validator = { basis: { modelVersion: MODEL_VERSION } };

const WATER_SOURCE =
  'Density: UNESCO EOS-80 at one atmosphere (Fofonoff and Millard 1983). Viscosity: Sharqawy, Lienhard and Zubair 2010, eq. 22-23. Vapour pressure: IAPWS, fresh water.';

const waterQuery = (context: SchemaContext) =>
  z.strictObject({
    temperature: queryQuantity(context, 'temperature', {
      description: 'Temperature of the water; 25 degC where it is left out.',
      minimum: 0,
      maximum: 45,
      example: 25,
    }).optional(),
    salinity: queryQuantity(context, 'salinity', {
      description: 'Salinity of the water; 35 g/kg where it is left out.',
      minimum: 0,
      maximum: 60,
      example: 35,
    }).optional(),
  });

function pipesRoute(api: Api): void {
  defineRoute(
    api,
    {
      ...table,
      path: '/v1/reference/pipes',
      operationId: 'getPipes',
      summary: 'The standard pipes',
      description: 'The sizes that a loop may name, with the mean bore that friction takes.',
      query: noQuery,
      answer: jsonAnswer({
        schema: pipesSchema,
        description: 'The table.',
        example: example('answers/pipes'),
        table: tableOf(pipesSchema, 'items', [
          'name',
          'standard',
          'insideDiameter',
          'outsideDiameter',
          'minimumWall',
          'source',
        ]),
      }),
    },
    async () => {
      const items = PIPE_SIZES.map((size) => ({ ...size, roughness: DEFAULT_ROUGHNESS }));
      return success({ body: { items }, validator });
    },
  );
}

const fittingRow = (row: NamedLoss | BoreChange) => ({
  name: row.name,
  kind: row.kind,
  method: row.method,
  value: row.method === 'two-bores' ? null : row.value,
  laminarValue: row.method === 'two-k' || row.method === 'three-k' ? row.laminarValue : null,
  sizeValue: row.method === 'three-k' ? row.sizeValue : null,
  angle: row.method === 'two-bores' ? row.angle : null,
  description: row.description,
  source: row.source,
  fromMemory: row.fromMemory,
});

function fittingsRoute(api: Api): void {
  defineRoute(
    api,
    {
      ...table,
      path: '/v1/reference/fittings',
      operationId: 'getFittings',
      summary: 'The fittings and valves',
      description:
        'The fittings and valves that a loop may name, how their loss is found, and on whose authority.',
      query: noQuery,
      answer: jsonAnswer({
        schema: fittingsSchema,
        description: 'The table.',
        example: example('answers/fittings'),
        table: tableOf(fittingsSchema, 'items', ['name', 'kind', 'method', 'value', 'source']),
      }),
    },
    async () => {
      const fittings = [...FITTINGS, ...BORE_CHANGES].map((row) => ({
        ...fittingRow(row),
        partOpenings: [],
        partOpeningSource: null,
      }));
      const valves = VALVES.map((row) => ({
        ...fittingRow(row),
        partOpenings: [...row.partOpenings],
        partOpeningSource: row.partOpeningSource,
      }));
      return success({ body: { items: [...fittings, ...valves] }, validator });
    },
  );
}

function waterRoute(api: Api): void {
  defineRoute(
    api,
    {
      ...table,
      path: '/v1/reference/water',
      operationId: 'getWater',
      summary: 'What water weighs and how it flows',
      description:
        'Density, viscosity and vapour pressure at a temperature and salinity, as every computation takes them.',
      query: waterQuery,
      answer: jsonAnswer({
        schema: waterSchema,
        description: 'The properties.',
        example: example('answers/water'),
      }),
    },
    async ({ query }) => {
      const { temperature = DEFAULT_WATER.temperature, salinity = DEFAULT_WATER.salinity } = query;
      const properties = waterProperties({ temperature, salinity });
      const body = {
        temperature,
        salinity,
        ...properties,
        vapourPressure: vapourPressure(temperature),
        source: WATER_SOURCE,
      };
      return success({ body, validator });
    },
  );
}

export function referenceRoutes(api: Api): void {
  pipesRoute(api);
  fittingsRoute(api);
  waterRoute(api);
  cautionsRoute(api);
}
