/** Finds the present value of an upgrade made in a year of a plan. */
import type { PlanQuestion, Upgrade } from './upgrade.ts';

/**
 * Present value, at the start of year 1, of an upgrade made in year y of a plan of N years at a discount rate i:
 * V = -C (1+i)^-(y-1) + S sum_{n=y..N} (1+i)^-n + C u/L (1+i)^-N, with the unused life u = max(0, L - (N - y + 1)).
 *
 * Paid at the start of its year, saves at the ends of years y..N, worth its unused share of its cost at the end of year N.
 * Life that ends before the plan does not end the savings: what replaces it then is not part of a plan.
 *
 * @param upgrade cost C [money, 0 or more], yearlySaving S [money a year], lifeYears L [above 0]
 * @param year y, 1..N
 * @returns money; positive where it pays
 * @example cost 1000, saving 200, life 10, year 1 of 5, no discount: -1000 + 5 x 200 + 1000 x 5/10 = 500.
 */
export function upgradeValue(
  { cost, yearlySaving, lifeYears }: Upgrade,
  year: number,
  { years, discountRate }: Pick<PlanQuestion, 'years' | 'discountRate'>,
): number {
  const discounted = (money: number, end: number) => money * (1 + discountRate) ** -end;
  let saved = 0;
  for (let end = year; end <= years; end++) saved += discounted(yearlySaving, end);
  const unused = Math.max(0, lifeYears - (years - year + 1));
  return saved + discounted((cost * unused) / lifeYears, years) - discounted(cost, year - 1);
}
