/** What other sizes would change, all else of a design held but pump and setting. */
import { holds } from '../selection/criterion.ts';
import type { PricedOffers } from './choose-options.ts';
import { type FixedPipework, fixedPipework } from './fixed-sizes.ts';
import type { Offer } from './pump-offers.ts';
import type { RunLosses } from './run-loss.ts';
import { placesOf, type Run, type Size } from './run-tree.ts';
import type { Sizes } from './sized-loop.ts';

/** A design of given sizes with its best pump and setting. */
export interface SizedOption {
  readonly sizes: Sizes;
  /** [-] */
  readonly candidate: number;
  /** [%] */
  readonly setting: number;
  /** [money] */
  readonly pipeCost: number;
  /** Of pumps and energy [money]. */
  readonly runningCost: number;
  /** Trims included [money]. */
  readonly presentValue: number;
}

/** One list with its next size, the best of pumps and settings then, and how its figures differ from the design's. */
export interface SizeChange {
  /** [-] */
  readonly list: number;
  readonly direction: 'larger' | 'smaller';
  /** [-] */
  readonly place: number;
  /** Null where no pump gives the head that it requires. */
  readonly option: SizedOption | null;
}

export interface SizingTerms {
  readonly suction: Run;
  readonly losses: RunLosses;
  /** [-] */
  readonly frictionMultiplier: number;
  readonly candidates: readonly PricedOffers[];
  /** [money] */
  readonly trimCost: number;
}

interface CostedOffer {
  readonly offer: Offer;
  readonly cost: number;
}

/** Finds the best pump and setting for given sizes; null where none gives the head, or the sizes do not go together. */
export function bestForSizes(terms: SizingTerms): (sizes: Sizes) => SizedOption | null {
  const { suction, losses, frictionMultiplier, trimCost } = terms;
  const cheapestFirst = terms.candidates
    .flatMap(({ offers, pumpCost }) =>
      offers
        .filter(({ runsThere, judgements }) => runsThere && judgements.every(holds))
        .map((offer): CostedOffer => ({ offer, cost: pumpCost + offer.energyCost })),
    )
    .toSorted((a, b) => a.cost - b.cost);
  return (sizes) => {
    const pipework = fixedPipework(suction, { sizes, losses, frictionMultiplier });
    const found = pipework === null ? undefined : cheapestFirst.find((one) => isEnough(one.offer, pipework));
    if (pipework === null || found === undefined) return null;
    const { offer, cost: runningCost } = found;
    return {
      sizes,
      candidate: offer.candidate,
      setting: offer.pump.setting,
      pipeCost: pipework.cost,
      runningCost,
      presentValue: runningCost + pipework.cost + trimCost,
    };
  };
}

const isEnough = (offer: Offer, { head, suctionLoss }: FixedPipework): boolean =>
  offer.head >= head && offer.suctionLoss >= suctionLoss;

/** For each list the next smaller and the next larger of the sizes that the velocity limit allows. */
export function sizeChanges(
  suction: Run,
  chosen: Sizes,
  bestFor: (sizes: Sizes) => SizedOption | null,
): readonly SizeChange[] {
  return placesOf(suction).flatMap(({ list, sizes }) => {
    if (list === null) return [];
    const own = sizes.find(({ place }) => place === chosen[list]);
    if (own === undefined) throw new Error(`invariant: list ${list} has no chosen size`);
    const change = (direction: SizeChange['direction'], to: Size | undefined): readonly SizeChange[] =>
      to === undefined
        ? []
        : [{ list, direction, place: to.place, option: bestFor(chosen.with(list, to.place)) }];
    const others = sizes.filter(({ allowed, bore }) => allowed && bore !== own.bore);
    const byBore = others.toSorted((a, b) => a.bore - b.bore);
    return [
      ...change(
        'smaller',
        byBore.findLast(({ bore }) => bore < own.bore),
      ),
      ...change(
        'larger',
        byBore.find(({ bore }) => bore > own.bore),
      ),
    ];
  });
}
