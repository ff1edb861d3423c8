/** Finds when a device is bought, bought again, and what is left of it at the end. */

/** Equal devices that an option owns. */
export interface Ownership {
  /** Of all of them, of today [money]. */
  readonly price: number;
  /** Whole life [years], above 0; null: not known, taken to last. */
  readonly lifeYears: number | null;
  readonly isNew: boolean;
  /** Of devices that are there already [years]; 0 of new ones. */
  readonly ageYears: number;
}

/** A payment for devices. */
export interface Purchase {
  /** At the end of this year [years]; 0 is now. */
  readonly year: number;
  /** Of today's money [money]; negative: what is left of a device at the end. */
  readonly cost: number;
}

/** Lives under a tenth of a year would be bought without end. */
const LIFE_MIN = 0.1;
/** What floating point makes of a whole number of years is that number. */
const SLIVER = 1e-12;

/**
 * The purchases of N years [years] in today's money [money]: a new device now, each next one when the life of the one
 * before is over, at L, 2 L, .. < N; a device that is there is not bought, and has the life L - age left, or where
 * that is over the first year. What is unused of the last one at N comes back pro rata, unless it was there already.
 *
 * A purchase inside a year is paid at its end.
 */
export function purchasesOf(
  { price, lifeYears, isNew, ageYears }: Ownership,
  years: number,
): readonly Purchase[] {
  const first: Purchase[] = isNew ? [{ year: 0, cost: price }] : [];
  if (lifeYears === null) return first;
  const life = Math.max(lifeYears, LIFE_MIN);
  const purchases = [...first];
  let boughtAt = isNew ? 0 : null;
  const left = life - ageYears;
  const firstEnd = isNew ? life : left > 0 ? left : 1;
  for (let n = 0; firstEnd + n * life < years * (1 - SLIVER); n += 1) {
    boughtAt = firstEnd + n * life;
    purchases.push({ year: Math.ceil(boughtAt * (1 - SLIVER)), cost: price });
  }
  if (boughtAt === null) return purchases;
  const unused = (boughtAt + life - years) / life;
  return unused > SLIVER ? [...purchases, { year: years, cost: -price * unused }] : purchases;
}
