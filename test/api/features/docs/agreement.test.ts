/** What the document says of bodies against what the service takes and gives. */

import { z } from '@hono/zod-openapi';
import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { beforeAll, describe, expect, it } from 'vitest';
import { openApiDocument } from '../../../../api/features/docs/document.ts';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { example, jsonOf, sent } from '../../requests.ts';

let app: AppUnderTest;
let faultsOf: (component: string, value: unknown) => readonly string[];

beforeAll(async () => {
  app = await appUnderTest();
  const ajv = new Ajv2020({ strict: false, allErrors: true });
  addFormats.default(ajv);
  ajv.addSchema({ ...openApiDocument(app.api), $id: 'document' });
  faultsOf = (component, value) => {
    const validate = ajv.compile({ $ref: `document#/components/schemas/${component}` });
    return validate(value)
      ? []
      : (validate.errors ?? []).map((error) => `${error.instancePath} ${error.message}`);
  };
});

const DOCUMENTS = [
  ['Pump', '/v1/pumps', 'pump-canister-250.json', 'metric'],
  ['Pump', '/v1/pumps', 'pump-canister-600.json', 'metric'],
  ['Pump', '/v1/pumps', 'pump-canister-120-us.json', 'us'],
  ['Loop', '/v1/loops', 'loop-kelp-flume.json', 'metric'],
  ['Loop', '/v1/loops', 'loop-nursery-raceways.json', 'metric'],
  ['Loop', '/v1/loops', 'loop-system-curve.json', 'metric'],
  ['Loop', '/v1/loops', 'loop-seahorse-bank-text.json', 'metric'],
  ['Loop', '/v1/loops', 'loop-touch-pool-us.json', 'us'],
] as const;

describe('a document that the specification allows', () => {
  it.each(DOCUMENTS)(
    '%s at %s from %s is accepted, and the answer is as specified',
    async (name, path, file, system) => {
      const body = example(file);
      // The document's ranges are metric.
      if (system === 'metric') expect(faultsOf(`${name}Request`, body)).toEqual([]);
      const response = await app.call(`${path}?units=${system}`, sent('POST', body));
      expect(response.status).toBe(201);
      const answer = await jsonOf(response);
      expect(faultsOf(name, answer)).toEqual([]);
      if (system === 'metric') expect(faultsOf(`${name}Request`, answer)).toEqual([]);
      expect(faultsOf(`${name}List`, await jsonOf(await app.call(`${path}?units=${system}`)))).toEqual([]);
    },
  );

  it('may be the site', async () => {
    const answer = await jsonOf(await app.call('/v1/site'));
    expect(faultsOf('Site', answer)).toEqual([]);
    expect(faultsOf('SiteRequest', answer)).toEqual([]);
  });
});

describe('a document that the specification does not allow', () => {
  const run = (element: unknown) => ({ name: 'a', discharge: { run: [element], outlet: { name: 'x' } } });

  it.each<[string, string, unknown]>([
    ['PumpRequest', '/v1/pumps', { ...example('pump-canister-250.json'), colour: 'red' }],
    ['PumpRequest', '/v1/pumps', { ...example('pump-canister-250.json'), headPoints: [] }],
    ['PumpRequest', '/v1/pumps', { ...example('pump-canister-250.json'), standbyPower: -1 }],
    ['PumpRequest', '/v1/pumps', { ...example('pump-canister-250.json'), settings: { min: 0 } }],
    ['PumpRequest', '/v1/pumps', { ...example('pump-canister-250.json'), price: '780' }],
    ['LoopRequest', '/v1/loops', { name: 'a' }],
    ['LoopRequest', '/v1/loops', { ...example('loop-system-curve.json'), staticHead: 1 }],
    ['LoopRequest', '/v1/loops', run({})],
    ['LoopRequest', '/v1/loops', run({ pipe: 'sch40 1' })],
    ['LoopRequest', '/v1/loops', run({ pipe: 'sch40 1', length: 1, count: 1 })],
    ['LoopRequest', '/v1/loops', run({ valve: { kv: 1, cv: 1 } })],
    ['LoopRequest', '/v1/loops', run({ valve: 'ball', opening: 101 })],
  ])('is refused: %s at %s %j', async (component, path, body) => {
    expect(faultsOf(component, body)).not.toEqual([]);
    const response = await app.call(path, sent('POST', body));
    expect(response.status).toBe(422);
    expect(faultsOf('Problem', await jsonOf(response))).toEqual([]);
  });
});

describe('the examples of the document', () => {
  it.each([
    ['/v1/pumps', 'pump-canister-250.json'],
    ['/v1/loops', 'loop-kelp-flume.json'],
    ['/v1/recommendations', 'recommendation-kelp-flume.json'],
  ])('of POST %s is that of openapi/examples/%s', async (path, file) => {
    const document = z
      .record(z.string(), z.looseObject({ post: z.looseObject({ requestBody: z.unknown() }).optional() }))
      .parse((await jsonOf(await app.call('/openapi.json'))).paths);
    expect(JSON.stringify(document[path]?.post?.requestBody)).toContain(JSON.stringify(example(file)));
  });
});
