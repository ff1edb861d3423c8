/** What is kept is never stale: after every write the service answers as one does that has kept nothing. */
import { beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { buildApp } from '../../api/app.ts';
import type { AppUnderTest } from './app-under-test.ts';
import { calibratedSite } from './features/docs/calibrated-site.ts';
import { callAsShown, operations } from './features/docs/call-operation.ts';
import { exported, imported, type StockedSite, stockedSite } from './features/site-copy/stocked-site.ts';
import { jsonOf, sent } from './requests.ts';

/** Those whose answers rest on what is kept. */
const questionsOf = ({ loopIds }: StockedSite): readonly string[] => [
  ...loopIds.slice(0, 2).flatMap((id) => [`/v1/loops/${id}/recommendation`, `/v1/loops/${id}/setpoint`]),
  `/v1/loops/${loopIds[0]}/recommendation?units=us`,
  `/v1/loops/${loopIds[0]}/duty-point`,
  `/v1/loops/${loopIds[0]}/schedule`,
  '/v1/summary',
  '/v1/summary?units=us',
];

type Ask = (path: string) => Promise<Response>;

async function answersOf(ask: Ask, paths: readonly string[]): Promise<Record<string, unknown>> {
  const answers: Record<string, unknown> = {};
  for (const path of paths) {
    const response = await ask(path);
    // A problem repeats the id of its request.
    const { requestId: _, instance: __, ...body } = await jsonOf(response);
    answers[path] = { status: response.status, body };
  }
  return answers;
}

/** The same store behind an application that was built just now. */
function newlyBuilt({ api }: AppUnderTest): Ask {
  const app = buildApp(api.deps);
  return async (path) => app.request(`http://localhost${path}`);
}

const copied = z.looseObject({ loops: z.array(z.looseObject({})), pumps: z.array(z.looseObject({})) });

async function idsOf({ call }: AppUnderTest, collection: string): Promise<readonly string[]> {
  const { items } = await jsonOf(await call(`${collection}?limit=200`));
  return Array.isArray(items) ? items.map(({ id }) => String(id)) : [];
}

/** In an order in which nothing is deleted that others name. */
async function removeAll(site: AppUnderTest): Promise<void> {
  const headers = { 'If-Match': '*' };
  const { tariff: _, ...rest } = await jsonOf(await site.call('/v1/site'));
  await site.call('/v1/site', sent('PUT', { ...rest, tariff: null }, headers));
  const loops = await idsOf(site, '/v1/loops');
  const taken = loops.map((id) => `/v1/loops/${id}/schedule`);
  for (const collection of ['/v1/maintenance-tasks', '/v1/loops', '/v1/tariffs', '/v1/pumps']) {
    taken.push(...(await idsOf(site, collection)).map((id) => `${collection}/${id}`));
  }
  for (const path of taken) await site.call(path, { method: 'DELETE', headers });
}

/** An import needs a site without records; undoing needs a calibration, which a shared site has no more once it is undone. */
const writes = operations.filter(({ method, id }) => method !== 'get' && id !== 'importSite');

describe('after', () => {
  let site: StockedSite;
  beforeAll(async () => {
    site = await calibratedSite();
  });

  it.each(writes)('$id, answers are those of a service that has kept nothing', async (operation) => {
    const paths = questionsOf(site);
    await answersOf(site.call, paths);
    const responses = await callAsShown(operation, async () => site);
    for (const response of responses) expect(response.status).toBeLessThan(500);
    expect(await answersOf(site.call, paths)).toEqual(await answersOf(newlyBuilt(site), paths));
  });

  it('an import that brings records back changed under their ids and versions, likewise', async () => {
    const source = await stockedSite();
    const paths = questionsOf(source);
    const before = await answersOf(source.call, paths);
    const copy = await exported(source);
    await removeAll(source);
    const { loops, pumps } = copied.parse(JSON.parse(copy));
    const changed = {
      ...JSON.parse(copy),
      loops: loops.map((loop) => ({ ...loop, frictionMultiplier: 1.5 })),
      pumps: pumps.map((pump) => ({ ...pump, standbyPower: 7 })),
    };
    const response = await imported(source, JSON.stringify(changed));
    expect(response.ok, await response.clone().text()).toBe(true);
    const after = await answersOf(source.call, paths);
    expect(after).not.toEqual(before);
    expect(after).toEqual(await answersOf(newlyBuilt(source), paths));
  });
});
