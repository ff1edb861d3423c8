/** The quote as a table in CSV (RFC 4180). */
import type { Quote } from './quote.ts';

// A spreadsheet runs a text that starts like this as a formula.
const FORMULA = /^[=+\-@\t\r]/;

function cell(value: string | number | null): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const harmless = FORMULA.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

const HEADER = [
  ...['pump', 'count', 'setting', 'power', 'annualEnergy'],
  ...['annualCost', 'purchase', 'presentValue', 'payback', 'currency'],
];

/** A row a line of the quote, cheapest first. */
export function quoteTable({ lines, currency }: Quote): string {
  const rows = lines.map((line) => [
    ...[line.pump, line.count, line.setting, line.power, line.annualEnergy],
    ...[line.annualCost, line.purchase, line.presentValue, line.payback, currency],
  ]);
  return [HEADER, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}
