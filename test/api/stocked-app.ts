/** An app that has the kelp flume and its pump at 0.21 EUR per kWh, and questions to it. */
import { expect } from 'vitest';
import type { z } from 'zod';
import type { AppDependencies } from '../../api/http/api.ts';
import { type AppUnderTest, appUnderTest } from './app-under-test.ts';
import { problemAnswer } from './read-answers.ts';
import { created, example, type Json, sent } from './requests.ts';

export interface StockedApp extends AppUnderTest {
  readonly pumpId: string;
  readonly loopId: string;
  /** Path of the stored flume. */
  readonly loop: string;
}

export async function stockedApp(change: Partial<AppDependencies> = {}): Promise<StockedApp> {
  const app = await appUnderTest({ change });
  const site = await app.call('/v1/site', sent('PUT', example('site.json'), { 'If-Match': '*' }));
  expect(site.status).toBe(200);
  const pumpId = await created(app, '/v1/pumps', example('pump-canister-250.json'));
  const loopId = await created(app, '/v1/loops', example('loop-kelp-flume.json'));
  return { ...app, pumpId, loopId, loop: `/v1/loops/${loopId}` };
}

/** A JSON answer that must be a 200, read by a schema. */
export async function answered<T>(schema: z.ZodType<T>, response: Response): Promise<T> {
  const text = await response.text();
  expect(response.status, text).toBe(200);
  return schema.parse(JSON.parse(text));
}

/** An error that must have the one form of errors. */
export async function refused(response: Response) {
  const text = await response.text();
  expect(response.headers.get('content-type'), text).toBe('application/problem+json');
  const problem = problemAnswer.parse(JSON.parse(text));
  expect(problem.status).toBe(response.status);
  expect(problem.type).toBe(`urn:loopwright:problem:${problem.code}`);
  return problem;
}

/** Everything that is stored, to see that nothing changed. */
export async function storeOf({ call }: AppUnderTest): Promise<readonly string[]> {
  const paths = ['/v1/site', '/v1/pumps?limit=200', '/v1/loops?limit=200'];
  return Promise.all(paths.map(async (path) => (await call(path)).text()));
}

export const recommend = ({ call }: AppUnderTest, body: Json, query = ''): Promise<Response> =>
  call(`/v1/recommendations${query}`, sent('POST', body));
