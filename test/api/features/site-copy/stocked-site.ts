/** The demo's world in an application, with a tariff that the site goes by and a schedule. */
import { loadWorld } from '../../../../api/cli/demo/world.ts';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { example, jsonOf, sent } from '../../requests.ts';

export interface StockedSite extends AppUnderTest {
  readonly loopIds: readonly string[];
}

export async function stockedSite(): Promise<StockedSite> {
  const app = await appUnderTest();
  const call = async (path: string, init?: RequestInit) => {
    const response = await app.call(path, init);
    const body = await jsonOf(response);
    if (!response.ok) throw new Error(`${path}: ${JSON.stringify(body)}`);
    return body;
  };
  const loops = await loadWorld({
    get: (path) => call(path),
    send: (method, path, body) => call(path, sent(method, body, method === 'PUT' ? { 'If-Match': '*' } : {})),
  });
  const tariff = await call('/v1/tariffs', sent('POST', example('tariff.json')));
  const site = { ...(await call('/v1/site')), tariff: tariff.id };
  await call('/v1/site', sent('PUT', site, { 'If-Match': '*' }));
  const schedule = { ...example('schedule.json'), tariff: tariff.id };
  await call(`/v1/loops/${loops[0]?.id}/schedule`, sent('PUT', schedule));
  return { ...app, loopIds: loops.map(({ id }) => id) };
}

export const exported = async ({ call }: AppUnderTest, units = 'metric'): Promise<string> => {
  const response = await call(`/v1/export?units=${units}`);
  const text = await response.text();
  if (response.status !== 200) throw new Error(text);
  return text;
};

export const imported = ({ call }: AppUnderTest, text: string, units = 'metric'): Promise<Response> =>
  call(`/v1/import?units=${units}`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: text,
  });
