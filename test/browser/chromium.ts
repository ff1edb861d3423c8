/** A real browser with a page open, and all that went wrong on it. */
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type Browser, chromium, type Page } from 'playwright-core';

const CHROMIUM = '/usr/bin/chromium';

/** Why there is no browser here; undefined where there is one. */
export const noChromium: string | undefined = existsSync(CHROMIUM)
  ? undefined
  : `${CHROMIUM} is not there (Debian: apt-get install chromium)`;

export const startChromium = (): Promise<Browser> =>
  chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox', '--disable-gpu'] });

export interface WatchedPage {
  readonly page: Page;
  /** Console errors, uncaught errors, failed requests, answers that are errors, requests to other hosts. */
  readonly faults: readonly string[];
}

/** Nothing has been opened on it yet; requests outside of `origin` are faults, and go nowhere. */
export async function watchedPage(browser: Browser, origin: string): Promise<WatchedPage> {
  const page = await browser.newPage();
  const faults: string[] = [];
  await page.route('**/*', (route) => {
    const url = route.request().url();
    if (url.startsWith(`${origin}/`) || url.startsWith('data:') || url.startsWith('blob:'))
      return route.continue();
    faults.push(`outside request: ${url}`);
    return route.abort();
  });
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning')
      faults.push(`console ${message.type()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => faults.push(`uncaught: ${error.message}`));
  page.on('requestfailed', (request) =>
    faults.push(`failed: ${request.url()} ${request.failure()?.errorText}`),
  );
  page.on('response', (response) => {
    if (response.status() >= 400) faults.push(`${response.status()}: ${response.url()}`);
  });
  return { page, faults };
}

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe-core calls serious or critical, a line each with the places. */
export async function seriousFaults(page: Page): Promise<readonly string[]> {
  // Evaluated by the browser's debugger, so that the page's own policy stands as it is.
  await page.evaluate(AXE);
  const found: unknown = await page.evaluate(
    `axe.run(document).then(({ violations }) => violations
      .filter(({ impact }) => impact === 'serious' || impact === 'critical')
      .map(({ id, impact, nodes }) => id + ' (' + impact + '): ' + nodes.slice(0, 5).map(({ html, target }) => target + ' ' + html.slice(0, 150)).join(' | ')))`,
  );
  return Array.isArray(found) ? found.map(String) : [String(found)];
}
