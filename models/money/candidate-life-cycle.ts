/** Finds what a candidate of a selection costs over its life. */

import type { Pump } from '../pump/pump.ts';
import { deviceAttention } from './device-attention.ts';
import { failureRate } from './failure-rate.ts';
import { lifeCycle } from './life-cycle.ts';
import type { MoneyTerms } from './terms.ts';

/** How a life cycle is priced. */
export interface LifeCycleTerms extends MoneyTerms {
  /** [money/h] */
  readonly labourRate: number;
  /** Of work that a failure makes [min]. */
  readonly minutesPerFailure: number;
}

/**
 * Present value [money] of buying equal pumps new, their energy, service and the work that their failures make: the
 * same elements as those of a comparison, without pipework and losses.
 *
 * @param candidate count [-]; annualCost of energy [money/year].
 * @returns null of a pump without a price.
 */
export function candidateLifeCycle(
  { pump, count, annualCost }: { readonly pump: Pump; readonly count: number; readonly annualCost: number },
  { labourRate, minutesPerFailure, ...terms }: LifeCycleTerms,
): number | null {
  const { price, expectedLifeYears = null, service = null, failures } = pump;
  if (price === undefined) return null;
  const attention = deviceAttention({
    devices: count,
    service,
    failures: failures === undefined ? 0 : failureRate(failures).value,
    minutesPerFailure,
  });
  const costs = {
    devices: [{ price: count * price, lifeYears: expectedLifeYears, isNew: true, ageYears: 0 }],
    ...{ energy: 1, energyPrice: annualCost, labourRate, extras: [], valueAtRisk: 0, lossesPerYear: 0 },
    attentionHours: attention.hours,
    failureHours: attention.failureHours,
    parts: attention.parts,
  };
  return lifeCycle(costs, terms).presentValue;
}
