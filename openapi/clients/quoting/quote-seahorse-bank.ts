/** Quotes the demo's seahorse bank, three small pumps or one larger: `quote-seahorse-bank.ts <address> <folder>` writes both files. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { quotePage } from './page.ts';
import { type QuoteRequest, quote } from './quote.ts';
import { type Loop, type Pump, serviceAt } from './service.ts';
import { quoteTable } from './table.ts';

const EXAMPLES = new URL('../../examples/', import.meta.url);

const read = (file: string) => JSON.parse(readFileSync(new URL(file, EXAMPLES), 'utf8'));

/** What runs there now is the first offer. */
export function seahorseBank(): QuoteRequest {
  const loop: Loop = read('loop-seahorse-bank.json');
  const pump = (file: string): Pump => read(file);
  return {
    client: 'Skerry Point Marine Station',
    loop,
    offers: [
      { pump: pump('pump-inline-60.json'), count: 3, ageYears: 2 },
      { pump: pump('pump-canister-120.json'), count: 1, ageYears: 0 },
      { pump: pump('pump-canister-250.json'), count: 1, ageYears: 0 },
      { pump: pump('pump-canister-600.json'), count: 1, ageYears: 0 },
    ],
    terms: { years: 10, discountRate: 0.04, inflation: 0.02, energyInflation: 0.03, labourRate: 30 },
    price: 0.21,
    currency: 'EUR',
  };
}

const [, script, address = 'http://127.0.0.1:8080', folder = '.'] = process.argv;
if (script !== undefined && import.meta.url === pathToFileURL(script).href) {
  const quoted = await quote(serviceAt(address), seahorseBank());
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'quote.html'), quotePage(quoted));
  writeFileSync(join(folder, 'quote.csv'), quoteTable(quoted));
}
