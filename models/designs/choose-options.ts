/** Pairs pumps with the cheapest pipework that each of their settings is enough for. */

import { holds } from '../selection/criterion.ts';
import type { FoundPipework, PipeworkCosts } from './pipework-costs.ts';
import type { Offer } from './pump-offers.ts';

/** A pump at a setting with its pipework. */
export interface DesignOption {
  readonly offer: Offer;
  readonly pipework: FoundPipework;
  /** Pump, energy, pipes and trims together [money]. */
  readonly presentValue: number;
}

/** The offers of one candidate, and the present value of buying and keeping its pumps. */
export interface PricedOffers {
  readonly offers: readonly Offer[];
  /** [money] */
  readonly pumpCost: number;
}

export interface Chosen {
  /** The best option of each candidate that has one, the cheapest first. */
  readonly ranking: readonly DesignOption[];
  /** No design of the class costs less than this, thinned frontiers and unproven options counted in; infinite without any option [money]. */
  readonly leastCost: number;
  /** Candidates with options of which none proved to run where it should [-]. */
  readonly unproven: readonly number[];
}

/** Costs within this share are one. */
const EQUAL = 1e-9;

export interface Pairing {
  readonly costs: PipeworkCosts;
  /** [money] */
  readonly trimCost: number;
  /** Whether the pump of an option comes to the required flow in its loop; asked of those alone that are about to be chosen. */
  readonly proves: (option: DesignOption) => boolean;
}

/**
 * The best option of each candidate over all settings whose criteria hold. Of options within 1e-9 of each other's cost the one
 * of the lower setting is taken, then that of less head; of candidates the earlier one.
 */
export function chooseOptions(candidates: readonly PricedOffers[], pairing: Pairing): Chosen {
  const best: DesignOption[] = [];
  const unproven: number[] = [];
  let leastCost = Number.POSITIVE_INFINITY;
  for (const priced of candidates) {
    const options = optionsOf(priced, pairing);
    for (const { presentValue } of options) leastCost = Math.min(leastCost, presentValue);
    const proven = firstProven(options, pairing);
    if (proven !== null) best.push(proven);
    else if (options[0] !== undefined) unproven.push(options[0].offer.candidate);
  }
  const ranking = best.toSorted((a, b) => a.presentValue - b.presentValue);
  const first = cheapestOf(best);
  const inOrder = first === null ? [] : [first, ...ranking.filter((option) => option !== first)];
  return { ranking: inOrder, leastCost: leastCost - pairing.costs.slack, unproven };
}

/** By rising setting. */
function optionsOf(
  { offers, pumpCost }: PricedOffers,
  { costs, trimCost }: Pairing,
): readonly DesignOption[] {
  return offers.flatMap((offer) => {
    if (!offer.judgements.every(holds)) return [];
    const pipework = costs.cheapestFor(offer);
    if (pipework === null) return [];
    return [{ offer, pipework, presentValue: pumpCost + offer.energyCost + pipework.cost + trimCost }];
  });
}

/** The first of those within 1e-9 of the least cost; null of none. */
function cheapestOf(options: readonly DesignOption[]): DesignOption | null {
  let least = Number.POSITIVE_INFINITY;
  for (const { presentValue } of options) least = Math.min(least, presentValue);
  return options.find(({ presentValue }) => presentValue <= least + EQUAL * Math.abs(least)) ?? null;
}

function firstProven(options: readonly DesignOption[], { costs, proves }: Pairing): DesignOption | null {
  let left = options;
  for (let cheapest = cheapestOf(left); cheapest !== null; cheapest = cheapestOf(left)) {
    const option = withLessHead(cheapest, costs);
    if (proves(option)) return option;
    const failed = cheapest;
    left = left.filter((one) => one !== failed);
  }
  return null;
}

function withLessHead(option: DesignOption, costs: PipeworkCosts): DesignOption {
  const equal = EQUAL * Math.abs(option.presentValue);
  const pipework = costs.cheapestFor(option.offer, equal) ?? option.pipework;
  return { ...option, pipework, presentValue: option.presentValue + pipework.cost - option.pipework.cost };
}
