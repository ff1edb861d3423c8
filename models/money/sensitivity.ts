/** Finds which inputs decide a comparison. */
import type { Rival } from './break-even.ts';
import { lifeCycle } from './life-cycle.ts';
import type { OptionCosts } from './option-costs.ts';
import type { MoneyTerms } from './terms.ts';

/** Inputs are changed by this fraction, one at a time, in both options. */
export const SENSITIVITY_CHANGE = 0.2;

export const SENSITIVE_INPUTS = [
  'energy-price',
  'energy-of-option',
  'purchase-prices',
  'labour-rate',
  'attention',
  'failures',
  'value-at-risk',
  'discount-rate',
  'inflation',
  'energy-inflation',
] as const;

export type SensitiveInput = (typeof SENSITIVE_INPUTS)[number];

export interface Sensitivity {
  readonly input: SensitiveInput;
  /** Present value that the option saves against the reference [money], with the input 20 % lower. */
  readonly low: number;
  /** The same with the input 20 % higher [money]. */
  readonly high: number;
  /** The larger change of the saving [money]. */
  readonly effect: number;
  /** Whether the cheaper of the two changes. */
  readonly flips: boolean;
}

interface Changed {
  readonly option: OptionCosts;
  readonly reference: OptionCosts;
  readonly terms: MoneyTerms;
}

/** Prices fall to nothing at most. */
const risen = (times: number, rate: number): number => Math.max(-1, times * rate);

function changed({ option, reference, terms }: Changed, input: SensitiveInput, times: number): Changed {
  const both = (change: (one: OptionCosts) => OptionCosts): Changed => ({
    option: change(option),
    reference: change(reference),
    terms,
  });
  switch (input) {
    case 'energy-price':
      return both((one) => ({ ...one, energyPrice: times * one.energyPrice }));
    case 'energy-of-option':
      return { reference, terms, option: { ...option, energy: times * option.energy } };
    case 'purchase-prices':
      return both((one) => ({
        ...one,
        devices: one.devices.map((devices) => ({ ...devices, price: times * devices.price })),
        extras: one.extras.map((extra) =>
          extra.element === 'purchase' ? { ...extra, cost: times * extra.cost } : extra,
        ),
      }));
    case 'labour-rate':
      return both((one) => ({ ...one, labourRate: times * one.labourRate }));
    case 'attention':
      return both((one) => ({ ...one, attentionHours: times * one.attentionHours }));
    case 'failures':
      return both((one) => ({
        ...one,
        lossesPerYear: times * one.lossesPerYear,
        attentionHours: one.attentionHours + (times - 1) * one.failureHours,
      }));
    case 'value-at-risk':
      return both((one) => ({ ...one, valueAtRisk: times * one.valueAtRisk }));
    case 'discount-rate':
      return { option, reference, terms: { ...terms, discountRate: times * terms.discountRate } };
    case 'inflation':
      return { option, reference, terms: { ...terms, inflation: risen(times, terms.inflation) } };
    case 'energy-inflation':
      return {
        option,
        reference,
        terms: { ...terms, energyInflation: risen(times, terms.energyInflation) },
      };
  }
}

/** Of both present values: an effect this small is rounding. */
const NO_EFFECT = 1e-9;

const saving = ({ option, reference, terms }: Changed): number =>
  lifeCycle(reference, terms).presentValue - lifeCycle(option, terms).presentValue;

/** The inputs that change the saving of the option, the strongest first; equals in the order of the list. */
export function sensitivity(rival: Rival, terms: MoneyTerms): readonly Sensitivity[] {
  const asStated = { ...rival, terms };
  const now = saving(asStated);
  const least =
    NO_EFFECT *
    [rival.option, rival.reference].reduce(
      (sum, one) => sum + Math.abs(lifeCycle(one, terms).presentValue),
      0,
    );
  return SENSITIVE_INPUTS.map((input) => {
    const low = saving(changed(asStated, input, 1 - SENSITIVITY_CHANGE));
    const high = saving(changed(asStated, input, 1 + SENSITIVITY_CHANGE));
    const effect = Math.max(Math.abs(low - now), Math.abs(high - now));
    const flips = [low, high].some((one) => Math.sign(one) !== Math.sign(now));
    return { input, low, high, effect, flips };
  })
    .filter(({ effect }) => effect > least)
    .toSorted((a, b) => b.effect - a.effect);
}
