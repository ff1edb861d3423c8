/** Finds the price at which two options cost alike. */
import { lifeCycle } from './life-cycle.ts';
import type { OptionCosts } from './option-costs.ts';
import type { MoneyTerms } from './terms.ts';

export interface Rival {
  readonly option: OptionCosts;
  readonly reference: OptionCosts;
}

/** Of what both costs rise by: a difference this small is rounding. */
const EQUAL = 1e-9;

/** Where two straight costs meet, by their values at 0 and 1; null where they do not meet at or above 0. */
function meeting(
  { option, reference }: Rival,
  costAt: (one: OptionCosts, place: number) => number,
): number | null {
  const [own, other] = [costAt(option, 0), costAt(reference, 0)];
  const [ownRise, otherRise] = [costAt(option, 1) - own, costAt(reference, 1) - other];
  const slope = otherRise - ownRise;
  if (Math.abs(slope) <= EQUAL * (Math.abs(ownRise) + Math.abs(otherRise))) return null;
  const place = (own - other) / slope;
  return Number.isFinite(place) && place >= 0 ? place : null;
}

/**
 * The price of energy [money/kWh] at which the present values are equal, which are straight in it; null without such
 * a price.
 */
export const breakEvenPrice = (rival: Rival, terms: MoneyTerms): number | null =>
  meeting(rival, (one, energyPrice) => lifeCycle({ ...one, energyPrice }, terms).presentValue);

/** The value at risk of both [money] at which the present values are equal; null without such a value. */
export const breakEvenValueAtRisk = (rival: Rival, terms: MoneyTerms): number | null =>
  meeting(rival, (one, valueAtRisk) => lifeCycle({ ...one, valueAtRisk }, terms).presentValue);
