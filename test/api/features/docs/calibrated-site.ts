/** The demo's world with a calibration of its first loop in use. */

import { jsonOf, sent } from '../../requests.ts';
import { type StockedSite, stockedSite } from '../site-copy/stocked-site.ts';

export async function calibratedSite(): Promise<StockedSite> {
  const site = await stockedSite();
  const loop = `/v1/loops/${site.loopIds[0]}`;
  const reading = { time: '2026-01-10T08:00:00Z', setting: 80, flow: 7000 };
  await site.call(`${loop}/readings`, sent('POST', { readings: [reading] }));
  const applied = await site.call(`${loop}/calibration`, sent('POST', { apply: true }, { 'If-Match': '*' }));
  if (!applied.ok) throw new Error(JSON.stringify(await jsonOf(applied)));
  return site;
}
