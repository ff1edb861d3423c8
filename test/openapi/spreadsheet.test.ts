/** The sample sheet recalculated by LibreOffice Calc against the live service, every cell compared with the interface. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningServer, startServer } from '../../api/server.ts';
import { sheetOf } from '../../openapi/clients/spreadsheet/make-sheet.ts';
import { type StockedSite, stockedSite } from '../api/features/site-copy/stocked-site.ts';
import { recommendationAnswer } from '../api/read-answers.ts';
import { expectClose } from '../expect-close.ts';
import { noCalc, recalculated } from './spreadsheet-program.ts';

if (noCalc !== undefined) process.stderr.write(`skipped: the spreadsheet, ${noCalc}\n`);

const HEADER_ROWS = 3;

describe.skipIf(noCalc !== undefined)('the cells of the sample sheet', () => {
  let site: StockedSite;
  let server: RunningServer;
  let folder: string;
  let cells: readonly (readonly string[])[];

  beforeAll(async () => {
    site = await stockedSite();
    server = await startServer({ fetch: site.api.app.fetch, host: '127.0.0.1', port: 0 });
    folder = mkdtempSync(join(tmpdir(), 'loopwright-calc-'));
    const sheet = join(folder, 'loops.fods');
    writeFileSync(sheet, await sheetOf(server.url));
    const read: string[][] = parse(await recalculated(sheet, folder));
    cells = read;
  }, 180_000);

  afterAll(async () => {
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  });

  it('equal the figures of the interface to 1e-9, and say "no value" where it has none', async () => {
    const rows = cells.slice(HEADER_ROWS);
    let numbers = 0;
    for (const [loop, pump, outlet, setting, energy, cost, flow, power] of rows) {
      const response = await site.call(`/v1/loops/${loop}/recommendation?pump=${pump}`);
      const { best } = recommendationAnswer.parse(await response.json());
      const figures = [
        [setting, best?.setting],
        [energy, best?.annualEnergy],
        [cost, best?.annualCost],
        [flow, best?.outlets.find(({ name }) => name === outlet)?.flow],
        [power, best?.power],
      ] as const;
      for (const [cell, figure] of figures) {
        if (figure === undefined || figure === null) expect(cell).toBe('no value');
        else {
          expectClose(Number(cell), figure, { relative: 1e-9 });
          numbers += 1;
        }
      }
    }
    expect(numbers).toBeGreaterThan(40);
    // Counted by the spreadsheet: numbers, not texts that look like them.
    expect(cells[0]?.[9]).toBe(String(numbers));
  });

  it('stand for every outlet of every loop, with and without a value', () => {
    const rows = cells.slice(HEADER_ROWS);
    expect(new Set(rows.map(([loop]) => loop))).toEqual(
      new Set(['kelp-flume', 'nursery-raceways', 'touch-pool', 'seahorse-bank']),
    );
    expect(rows.some((row) => row[3] === 'no value')).toBe(true);
    expect(rows.filter(([loop]) => loop === 'kelp-flume').map((row) => row[2])).toEqual(
      expect.arrayContaining(['far end', 'left', 'right']),
    );
  });
});
