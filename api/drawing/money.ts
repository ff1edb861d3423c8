/** Writes sums of money as pages show them. */

/** With the decimals that the currency has; an unknown currency has two. Null: no price is set. */
export function money(sum: number | null, currency: string): string {
  if (sum === null) return 'no price is set';
  return new Intl.NumberFormat('en-GB', { style: 'currency', currency, currencyDisplay: 'code' })
    .format(sum)
    .replaceAll('\u00a0', ' ');
}
