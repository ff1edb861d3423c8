/** The price at which two options cost alike. */
import { lifeCycle } from './life-cycle.ts';
import type { OptionCosts } from './option-costs.ts';
import type { MoneyTerms } from './terms.ts';

export interface Rival {
  readonly option: OptionCosts;
  readonly reference: OptionCosts;
}

/** Zero of a straight line known at two places; null where it does not cross 0 at or above 0. */
function zeroOfLine(at: number, other: number, valueAt: (place: number) => number): number | null {
  const [first, second] = [valueAt(at), valueAt(other)];
  const slope = (second - first) / (other - at);
  if (slope === 0) return null;
  const zero = at - first / slope;
  return Number.isFinite(zero) && zero >= 0 ? zero : null;
}

/** Money per kWh at which the present values are equal, which are straight in it; null without such a price. */
export const breakEvenPrice = ({ option, reference }: Rival, terms: MoneyTerms): number | null =>
  zeroOfLine(0, 1, (energyPrice) => {
    const at = (one: OptionCosts) => lifeCycle({ ...one, energyPrice }, terms).presentValue;
    return at(reference) - at(option);
  });

/** Value at risk of both at which the present values are equal; null without such a value. */
export const breakEvenValueAtRisk = ({ option, reference }: Rival, terms: MoneyTerms): number | null =>
  zeroOfLine(0, 1, (valueAtRisk) => {
    const at = (one: OptionCosts) => lifeCycle({ ...one, valueAtRisk }, terms).presentValue;
    return at(reference) - at(option);
  });
