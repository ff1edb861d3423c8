/** Writes an amount of money. */

/**
 * The code first, then the amount with the decimals of the currency: `EUR 4289.29`; an unknown currency has two.
 * Grouped, thousands are set apart by commas, as pages show them.
 */
export function sayMoney(amount: number, currency: string, useGrouping = false): string {
  return (
    new Intl.NumberFormat('en-GB', { style: 'currency', currency, currencyDisplay: 'code', useGrouping })
      .format(amount)
      // Intl separates the code by a space at which no line breaks.
      .replaceAll('\u00a0', ' ')
  );
}
