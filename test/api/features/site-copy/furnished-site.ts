/** The demo's world with one of everything that a site can hold. */
import { z } from 'zod';
import type { AppUnderTest } from '../../app-under-test.ts';
import { created, example, type Json, jsonOf, sent } from '../../requests.ts';
import { type StockedSite, stockedSite } from './stocked-site.ts';

async function posted({ call }: AppUnderTest, path: string, body: unknown, headers = {}): Promise<Json> {
  const response = await call(path, sent('POST', body, headers));
  const answer = await jsonOf(response);
  if (!response.ok) throw new Error(`${path}: ${JSON.stringify(answer)}`);
  return answer;
}

const outlets = z.looseObject({ outlets: z.array(z.looseObject({ name: z.string(), flow: z.number() })) });

const farEndOf = (duty: Json): number =>
  outlets.parse(duty).outlets.find(({ name }) => name === 'far end')?.flow ?? Number.NaN;

/** As if the loop had more friction than was entered: a little less flow at each setting. */
async function measured(site: AppUnderTest, loop: string): Promise<readonly Json[]> {
  const readings: Json[] = [];
  for (const [day, setting] of [50, 60, 70, 80, 90, 55, 65, 75, 85].entries()) {
    const duty = await jsonOf(await site.call(`/v1/loops/${loop}/duty-point?setting=${setting}`));
    readings.push({
      time: `2026-01-0${day + 1}T10:00:00Z`,
      setting,
      flow: Number(duty.flow) * (0.95 + 0.002 * (day % 3)),
      power: Number(duty.power) * (1.03 + 0.004 * (day % 2)),
      head: Number(duty.head) * (0.99 + 0.003 * (day % 3)),
      outletFlows: { 'far end': farEndOf(duty) * (0.95 + 0.002 * (day % 3)) },
    });
  }
  return readings;
}

export async function furnishedSite(): Promise<StockedSite> {
  const site = await stockedSite();
  const [loop = ''] = site.loopIds;
  await posted(site, `/v1/loops/${loop}/readings`, { readings: await measured(site, loop) });
  const range = { from: '2026-01-01T00:00:00Z', to: '2026-02-01T00:00:00Z' };
  const path = `/v1/loops/${loop}/calibration`;
  const { applied } = await posted(site, path, { ...range, apply: true }, { 'If-Match': '*' });
  if (applied !== true) throw new Error('nothing was calibrated');
  await posted(site, `/v1/loops/${loop}/baseline`, { from: '2026-01-02T00:00:00Z' });
  const task = await created(site, '/v1/maintenance-tasks', { ...example('maintenance-task.json'), loop });
  await posted(site, `/v1/maintenance-tasks/${task}/completions`, example('completion.json'));
  await posted(site, '/v1/comparisons', example('comparison-seahorse-bank.json'));
  await posted(site, '/v1/upgrade-plans', example('upgrade-plan.json'));
  return site;
}
