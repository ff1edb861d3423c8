/** The reports in a real browser. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningServer, startServer } from '../../api/server.ts';
import { created, example, type Json, sent } from '../api/requests.ts';
import { type StockedApp, stockedApp } from '../api/stocked-app.ts';
import { noChromium, seriousFaults, startChromium, watchedPage } from './chromium.ts';

if (noChromium !== undefined) process.stderr.write(`skipped: the reports in a browser, ${noChromium}\n`);

const HOSTILE = '"><script>document.title = "taken"</script><img src=x onerror=alert(1)>';
const RIGHT_TO_LEFT = '\u202Eحوض الشعاب المرجانية 12';
const LONG = 'Wassertiefenströmungsbeckenanlage'.repeat(4).slice(0, 120);

/** The flume with its outlets and itself renamed. */
function renamed(name: string): Json {
  const loop = structuredClone(example('loop-kelp-flume.json'));
  const text = JSON.stringify({ ...loop, name }).replaceAll('"far end"', JSON.stringify(name));
  return JSON.parse(text);
}

/** How many pages a PDF has: each names itself, and the tree of pages says how many there are. */
const pagesOf = (pdf: Buffer): number =>
  Number(/\/Type \/Pages[^>]*?\/Count (\d+)/s.exec(pdf.toString('latin1'))?.[1]);

describe.skipIf(noChromium !== undefined)('the report in a browser', () => {
  let app: StockedApp;
  let server: RunningServer;
  let browser: Browser;
  const loops = new Map<string, string>();
  const comparisons = new Map<string, string>();

  beforeAll(async () => {
    app = await stockedApp();
    for (const name of ['canister-600', 'canister-120', 'inline-60']) {
      await created(app, '/v1/pumps', example(`pump-${name}.json`));
    }
    const installed = { pump: app.pumpId, count: 1, setting: 80, checkValves: true };
    const scheduled = await created(app, '/v1/loops', { ...example('loop-kelp-flume.json'), installed });
    const put = await app.call(`/v1/loops/${scheduled}/schedule`, sent('PUT', example('schedule.json')));
    expect(put.status).toBe(201);
    loops.set('with a schedule', scheduled);
    loops.set(
      'that no pump serves',
      await created(app, '/v1/loops', { ...example('loop-kelp-flume.json'), staticHead: 40 }),
    );
    loops.set('known by a curve', await created(app, '/v1/loops', example('loop-system-curve.json')));
    for (const [kind, name] of [
      ['hostile', HOSTILE],
      ['right-to-left', RIGHT_TO_LEFT],
      ['long', LONG],
    ] as const) {
      loops.set(`with a ${kind} name`, await created(app, '/v1/loops', renamed(name)));
    }
    const outlets = Array.from({ length: 60 }, (_, place) => ({
      name: `${place} bay at the far end of the long flume, upper row`,
      share: 1 / 60,
      requiredFlow: 60,
    }));
    const many = { ...example('loop-system-curve.json'), name: LONG, outlets, installed };
    const crowded = await created(app, '/v1/loops', many);
    await app.call(`/v1/loops/${crowded}/schedule`, sent('PUT', example('schedule.json')));
    loops.set('with sixty outlets', crowded);
    const question = example('comparison-seahorse-bank.json');
    comparisons.set('as the example has it', await created(app, '/v1/comparisons', question));
    const hostile = JSON.stringify(question).replaceAll('"One Canister 250"', JSON.stringify(HOSTILE));
    comparisons.set('with a hostile name', await created(app, '/v1/comparisons', JSON.parse(hostile)));
    server = await startServer({ fetch: app.api.app.fetch, host: '127.0.0.1', port: 0 });
    browser = await startChromium();
  });

  afterAll(async () => {
    await browser.close();
    await server.stop();
  });

  const isSound = async (path: string): Promise<void> => {
    const { page, faults } = await watchedPage(browser, server.url);
    await page.goto(`${server.url}${path}`, { waitUntil: 'load' });
    expect(await page.title()).not.toBe('taken');
    expect(await page.locator('script, img, iframe, object').count()).toBe(0);
    expect(await page.locator('h1').count()).toBe(1);
    expect(await seriousFaults(page)).toEqual([]);
    const beyond = 'document.documentElement.scrollWidth - document.documentElement.clientWidth';
    expect(await page.evaluate(beyond)).toBe(0);
    const pages = pagesOf(await page.pdf({ preferCSSPageSize: true }));
    expect(pages).toBeGreaterThanOrEqual(1);
    expect(pages).toBeLessThanOrEqual(3);
    expect(faults).toEqual([]);
    await page.close();
  };

  it.each([
    'with a schedule',
    'that no pump serves',
    'known by a curve',
    'with a hostile name',
    'with a right-to-left name',
    'with a long name',
    'with sixty outlets',
  ])('of a loop is without fault, and prints on one to three pages: %s', async (kind) => {
    await isSound(`/v1/loops/${loops.get(kind)}/report`);
  });

  it.each(['as the example has it', 'with a hostile name'])(
    'of a comparison is without fault, and prints on one to three pages: %s',
    async (kind) => {
      await isSound(`/v1/comparisons/${comparisons.get(kind)}/report`);
      await isSound(`/v1/comparisons/${comparisons.get(kind)}/report?units=us`);
    },
  );

  it('prints on A4 in metric units, on Letter in US units', async () => {
    const { page, faults } = await watchedPage(browser, server.url);
    const size = async (units: string) => {
      await page.goto(`${server.url}/v1/loops/${loops.get('with a schedule')}/report?units=${units}`);
      const pdf = await page.pdf({ preferCSSPageSize: true });
      expect(pagesOf(pdf)).toBeLessThanOrEqual(3);
      return /\/MediaBox \[([\d. ]+)\]/
        .exec(pdf.toString('latin1'))?.[1]
        ?.split(' ')
        .map(Number)
        .map(Math.round);
    };
    // ISO 216 A4 is 210 x 297 mm, Letter 8.5 x 11 in; in points of 1/72 in.
    expect(await size('metric')).toEqual([0, 0, 595, 842]);
    expect(await size('us')).toEqual([0, 0, 612, 792]);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('shows its pictures as files of their own, without fault', async () => {
    const { page, faults } = await watchedPage(browser, server.url);
    const loop = loops.get('with a schedule');
    for (const path of [
      `pumps/${app.pumpId}/chart.svg`,
      `loops/${loop}/chart.svg`,
      `loops/${loop}/schedule/chart.svg`,
      `comparisons/${comparisons.get('as the example has it')}/chart.svg`,
    ]) {
      await page.goto(`${server.url}/v1/${path}`);
      expect(await page.locator('svg').first().getAttribute('role')).toBe('img');
    }
    expect(faults).toEqual([]);
    await page.close();
  });

  it('keeps right-to-left names from turning the figures beside them', async () => {
    const { page } = await watchedPage(browser, server.url);
    await page.goto(`${server.url}/v1/loops/${loops.get('with a right-to-left name')}/report`);
    const row = page.locator('tbody tr', { has: page.locator('bdi') }).first();
    expect(await row.locator('td').first().textContent()).toMatch(/^[\d.]+ L\/h$/);
    expect(
      await page.locator('h1').evaluate((heading: { textContent: string | null }) => heading.textContent),
    ).toMatch(/: pump report$/);
    await page.close();
  });
});
