/** Makes money of several years comparable. */

/** How money of several years is compared. */
export interface MoneyTerms {
  /** Whole years 1.. that costs are looked at for [years]. */
  readonly years: number;
  /** What money earns elsewhere [1/year], above -1. */
  readonly discountRate: number;
  /** Rise of the prices of everything but energy [1/year], above -1. */
  readonly inflation: number;
  /** Rise of the price of energy [1/year], above -1. */
  readonly energyInflation: number;
}

/**
 * What one unit of today's money, paid at the end of a year, is worth now: ((1+p)/(1+i))^n [-].
 *
 * @param of year n [years] from 0, which is now; rise p and discountRate i [1/year] above -1.
 * Source: Hydraulic Institute and Europump, Pump Life Cycle Costs: A Guide to LCC Analysis (2001); summary
 *   DOE/GO-102001-1190.
 */
export const presentFactor = ({
  year,
  rise,
  discountRate,
}: {
  readonly year: number;
  readonly rise: number;
  readonly discountRate: number;
}): number => ((1 + rise) / (1 + discountRate)) ** year;

/** The present value [-] of one unit of today's money at the end of each of the years 1..N [years]. */
export function annuity({
  years,
  rise,
  discountRate,
}: {
  readonly years: number;
  readonly rise: number;
  readonly discountRate: number;
}): number {
  let sum = 0;
  for (let year = 1; year <= years; year += 1) sum += presentFactor({ year, rise, discountRate });
  return sum;
}
