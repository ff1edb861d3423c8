/** The reference page in a real browser. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningServer, startServer } from '../../api/server.ts';
import { stockedApp } from '../api/stocked-app.ts';
import { noChromium, seriousFaults, startChromium, watchedPage } from './chromium.ts';

if (noChromium !== undefined)
  process.stderr.write(`skipped: the reference page in a browser, ${noChromium}\n`);

describe.skipIf(noChromium !== undefined)('the reference page in a browser', () => {
  let server: RunningServer;
  let browser: Browser;

  beforeAll(async () => {
    const { api } = await stockedApp();
    server = await startServer({ fetch: api.app.fetch, host: '127.0.0.1', port: 0 });
    browser = await startChromium();
  });

  afterAll(async () => {
    await browser.close();
    await server.stop();
  });

  it('shows every operation, without an error or a request to anyone else', async () => {
    const { page, faults } = await watchedPage(browser, server.url);
    await page.goto(`${server.url}/docs`);
    await page.waitForSelector('.opblock');
    const shown = await page.locator('.opblock').count();
    const document: { paths: Record<string, Record<string, unknown>> } = JSON.parse(
      await (await fetch(`${server.url}/openapi.json`)).text(),
    );
    expect(shown).toBe(Object.values(document.paths).flatMap((item) => Object.keys(item)).length);
    expect(faults).toEqual([]);
    expect(await seriousFaults(page)).toEqual([]);
    await page.close();
  });

  // The second names a stored loop, the third has one in its address.
  it.each([
    { tag: 'Choose', operation: 'createPump', expected: '201' },
    { tag: 'Keep', operation: 'createMaintenanceTask', expected: '201' },
    { tag: 'Choose', operation: 'getLoop', expected: '200' },
  ])(
    'sends the example of $operation as it stands, and shows the answer',
    async ({ tag, operation: id, expected }) => {
      const { page, faults } = await watchedPage(browser, server.url);
      await page.goto(`${server.url}/docs#/${tag}/${id}`);
      const operation = page.locator(`#operations-${tag}-${id}`);
      await operation.locator('.try-out__btn').click();
      await operation.locator('.execute').click();
      const status = operation.locator('.live-responses-table .response-col_status').last();
      await status.waitFor();
      expect(await status.textContent()).toContain(expected);
      expect(faults).toEqual([]);
      expect(await seriousFaults(page)).toEqual([]);
      await page.close();
    },
  );
});
