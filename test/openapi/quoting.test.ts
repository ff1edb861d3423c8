/** The quoting client against the live service, and its types against the document. */
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningServer, startServer } from '../../api/server.ts';
import { currentTypes, typesText } from '../../openapi/clients/quoting/emit-types.ts';
import { quotePage } from '../../openapi/clients/quoting/page.ts';
import { type Quote, quote } from '../../openapi/clients/quoting/quote.ts';
import { seahorseBank } from '../../openapi/clients/quoting/quote-seahorse-bank.ts';
import { Refused, serviceAt } from '../../openapi/clients/quoting/service.ts';
import { quoteTable } from '../../openapi/clients/quoting/table.ts';
import { type AppUnderTest, appUnderTest } from '../api/app-under-test.ts';
import { recommendationAnswer } from '../api/read-answers.ts';
import { sent } from '../api/requests.ts';

let app: AppUnderTest;
let server: RunningServer;
let quoted: Quote;

beforeAll(async () => {
  app = await appUnderTest();
  server = await startServer({ fetch: app.api.app.fetch, host: '127.0.0.1', port: 0 });
  quoted = await quote(serviceAt(server.url), seahorseBank());
});

afterAll(() => server.stop());

describe('the quote of the seahorse bank', () => {
  it('has the figures of the interface, the cheapest to run first', async () => {
    const { loop, offers, price, currency } = seahorseBank();
    const pumps = offers.map(({ pump, count }) => ({ pump, count }));
    const body = { loop, pumps, price, currency };
    const response = await app.call('/v1/recommendations', sent('POST', body));
    const { ranking, rejected } = recommendationAnswer.parse(await response.json());
    expect(quoted.lines.map(({ pump, setting, annualCost }) => [pump, setting, annualCost])).toEqual(
      ranking.map(({ pump, setting, annualCost }) => [pump.name, setting, annualCost]),
    );
    expect(quoted.leftOut.map(({ pump }) => pump)).toEqual(rejected.map(({ pump }) => pump.name));
    expect(quoted.lines.length + quoted.leftOut.length).toBe(offers.length);
    const costs = quoted.lines.map(({ annualCost }) => annualCost ?? Number.NaN);
    expect(costs).toEqual(costs.toSorted((a, b) => a - b));
  });

  it('has what each costs over the years, as the service keeps it', async () => {
    const list: { items: { id: string }[] } = JSON.parse(await (await app.call('/v1/comparisons')).text());
    const [kept] = list.items;
    const answer = await (await app.call(`/v1/comparisons/${kept?.id}`)).text();
    const { options }: { options: { presentValue: number }[] } = JSON.parse(answer);
    expect(quoted.lines.map(({ presentValue }) => presentValue).toSorted()).toEqual(
      options.map(({ presentValue }) => presentValue).toSorted(),
    );
  });

  it('names what the pumps cost to buy: nothing where they are there already', () => {
    expect(quoted.lines.find(({ pump }) => pump === 'Inline 60')?.purchase).toBe(0);
    expect(quoted.lines.find(({ pump }) => pump === 'Canister 250')?.purchase).toBe(780);
  });

  it('stores no pump and no loop', async () => {
    for (const path of ['/v1/pumps', '/v1/loops'])
      expect(JSON.parse(await (await app.call(path)).text()).items).toEqual([]);
  });
});

describe("the client's page", () => {
  it('shows every line, every reason and every caution, without a script', () => {
    const page = quotePage(quoted);
    for (const { pump } of [...quoted.lines, ...quoted.leftOut]) expect(page).toContain(pump);
    for (const { why } of quoted.leftOut) expect(page).toContain(why.replaceAll("'", '&#39;'));
    expect(page).toContain('licensed');
    expect(page).not.toMatch(/<script|https?:\/\//);
  });

  it('shows hostile names as text', () => {
    const hostile = '<img src=x onerror=alert(1)>"\'&';
    const page = quotePage({ ...quoted, client: hostile, loop: hostile });
    expect(page).not.toContain('<img');
    expect(page).toContain('&lt;img src=x onerror=alert(1)&gt;&quot;&#39;&amp;');
  });
});

describe('the table', () => {
  it('has a row a line, which a spreadsheet does not run', () => {
    const first = quoted.lines[0];
    if (first === undefined) throw new Error('no line');
    const rows: string[][] = parse(quoteTable({ ...quoted, lines: [{ ...first, pump: '=1+1,"x"' }] }));
    expect(rows[0]?.slice(0, 3)).toEqual(['pump', 'count', 'setting']);
    expect(rows[1]?.slice(0, 3)).toEqual(['\'=1+1,"x"', '1', String(first.setting)]);
  });
});

describe('the typed client', () => {
  it('is typed from the document as it stands', async () => {
    // Where it fails: `npm run openapi`.
    expect((await typesText()) === currentTypes()).toBe(true);
  });

  it('says what the service found wrong', async () => {
    const asked = seahorseBank();
    const wrong = quote(serviceAt(server.url), { ...asked, currency: 'euro' });
    await expect(wrong).rejects.toThrow(Refused);
    await expect(wrong).rejects.toThrow('/currency');
  });
});
