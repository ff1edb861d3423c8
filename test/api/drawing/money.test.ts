/** Sums of money as pages show them. */
import { expect, it } from 'vitest';
import { money } from '../../../api/drawing/money.ts';

it.each([
  [157.661, 'EUR', 'EUR 157.66'],
  [-3.5, 'USD', '-USD 3.50'],
  [1_234_567.891, 'EUR', 'EUR 1,234,567.89'],
  [1234.5, 'JPY', 'JPY 1,235'],
  [2, 'XYZ', 'XYZ 2.00'],
  [null, 'EUR', 'no price is set'],
])('%s %s reads %s', (sum, currency, text) => {
  expect(money(sum, currency)).toBe(text);
});
