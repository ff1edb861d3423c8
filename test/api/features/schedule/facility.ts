/** A facility with one pump installed on one loop, for the tests of its phases. */
import type { AppDependencies } from '../../../../api/http/api.ts';
import { exampleJson } from '../../../openapi/read-example.ts';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';

/** A response whose JSON a test may look into. */
export type Sent = Omit<Response, 'json'> & { json(): Promise<ReturnType<JSON['parse']>> };

export interface Facility extends AppUnderTest {
  readonly loop: string;
  readonly pump: string;
  send(method: string, path: string, body?: unknown, headers?: Record<string, string>): Promise<Sent>;
}

export const JSON_TYPE = { 'content-type': 'application/json' };

export async function facility({
  zone = 'Europe/Lisbon',
  change,
}: {
  zone?: string;
  change?: Partial<AppDependencies>;
} = {}): Promise<Facility> {
  const app = await appUnderTest(change === undefined ? {} : { change });
  const send: Facility['send'] = (method, path, body, headers = {}) =>
    app.call(path, {
      method,
      headers: { ...JSON_TYPE, ...headers },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
  const made = async (path: string, body: unknown): Promise<string> => {
    const response = await send('POST', path, body);
    if (response.status !== 201) throw new Error(await response.text());
    return (await response.json()).id;
  };
  const site = { name: 'Lab', timeZone: zone, currency: 'EUR', elevation: 10, price: 0.21, labourRate: 30 };
  await send('PUT', '/v1/site', site, { 'if-match': '*' });
  const pump = await made('/v1/pumps', exampleJson('pump-canister-250.json'));
  const loop = await made('/v1/loops', {
    ...exampleJson('loop-kelp-flume.json'),
    installed: { pump, count: 1, setting: 80 },
  });
  return { ...app, send, loop, pump };
}
