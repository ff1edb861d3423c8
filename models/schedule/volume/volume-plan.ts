/** Finds the cheapest way to move a volume in a stretch of hours. */

import { failed, type Result, success } from '../../../curves/result.ts';
import { SECONDS_PER_HOUR } from '../../calendar/time-factors.ts';
import { WATTS_PER_KILOWATT } from '../../physics/unit-factors.ts';

/** What a pump does at a setting; stopped is a choice like the others. */
export interface Choice {
  /** [m3/s] */
  readonly flow: number;
  /** [W] */
  readonly power: number;
}

/** A stretch at one price. */
export interface Slot {
  /** [h], above 0. */
  readonly hours: number;
  /** [money/kWh], of either sign. */
  readonly price: number;
}

/** A part of a slot. */
export interface SlotPart {
  /** By its place in the list [-]. */
  readonly choice: number;
  /** Of the slot, in time [-]. */
  readonly share: number;
}

export interface VolumePlan {
  /** One list a slot, of one or two parts, the lower flow first. */
  readonly slots: readonly (readonly SlotPart[])[];
  /** Moved [m3]. */
  readonly volume: number;
  /** [money] */
  readonly cost: number;
  /** What no plan can be cheaper than [money]. */
  readonly bound: number;
}

/** The choices of all slots together do not move the volume. */
export interface VolumeOutOfReach {
  readonly code: 'volume-out-of-reach';
  /** That they move [m3]. */
  readonly most: number;
}

/** Volumes closer than this share are one. */
export const SAME_VOLUME = 1e-12;

/** Volume [m3] that a choice moves in a slot. */
export const volumeOf = ({ flow }: Choice, { hours }: Slot): number => flow * hours * SECONDS_PER_HOUR;
/** Cost [money] of a choice in a slot. */
export const costOf = ({ power }: Choice, { hours, price }: Slot): number =>
  (power / WATTS_PER_KILOWATT) * hours * price;

/** A setting as a point of an hour: what it moves against what it costs. */
interface HullPoint {
  /** Place of the setting in the list it came from. */
  readonly index: number;
  readonly flow: number;
  readonly cost: number;
}

interface Step {
  readonly slot: number;
  readonly from: HullPoint;
  readonly to: HullPoint;
  /** Money per m3. */
  readonly marginal: number;
}

/**
 * Moves at least a volume at the least cost, each slot at a choice or split in time between two.
 *
 * Every slot starts at the cheapest choice of its lower convex hull (flow against signed cost); the steps along all
 * hulls are then taken by ascending marginal cost until the volume is moved, the last one in part. Costs on a hull
 * are convex, so that this greedy order is the optimum of the linear program, and the optimum meets the hull's bound.
 * @param volume [m3] of 0 or more.
 * Accuracy: the least cost of all mixtures of whole plans, to rounding
 *   (test/models/schedule/volume/volume-plan.test.ts).
 * Errors: `volume-out-of-reach`.
 */
export function planVolume(
  { choices, slots }: { readonly choices: readonly Choice[]; readonly slots: readonly Slot[] },
  volume: number,
): Result<VolumePlan, VolumeOutOfReach> {
  const hulls = slots.map((slot) => lowerHull(choices.map((choice, index) => pointOf(choice, slot, index))));
  const reached = hulls.map(first);
  const steps = hulls.flatMap(stepsOf).toSorted((a, b) => a.marginal - b.marginal || a.slot - b.slot);
  let moved = reached.reduce((sum, point) => sum + point.flow, 0);
  let cost = reached.reduce((sum, point) => sum + point.cost, 0);
  const parts = reached.map(({ index }): readonly SlotPart[] => [{ choice: index, share: 1 }]);
  for (const { slot, from, to } of steps) {
    if (moved >= volume * (1 - SAME_VOLUME)) break;
    const share = Math.min(1, (volume - moved) / (to.flow - from.flow));
    moved += share * (to.flow - from.flow);
    cost += share * (to.cost - from.cost);
    parts[slot] =
      share >= 1
        ? [{ choice: to.index, share: 1 }]
        : [
            { choice: from.index, share: 1 - share },
            { choice: to.index, share },
          ];
  }
  if (moved < volume * (1 - SAME_VOLUME)) return failed({ code: 'volume-out-of-reach', most: moved });
  return success({ slots: parts, volume: moved, cost, bound: cost });
}

/** A choice as a point of a slot: volume [m3] in place of flow, money in place of power. */
const pointOf = (choice: Choice, slot: Slot, index: number): HullPoint => ({
  index,
  flow: volumeOf(choice, slot),
  cost: costOf(choice, slot),
});

function first(hull: readonly HullPoint[]): HullPoint {
  const [point] = hull;
  if (point === undefined) throw new Error('a slot has no choice');
  return point;
}

function stepsOf(hull: readonly HullPoint[], slot: number): readonly Step[] {
  return hull.slice(1).flatMap((to, place) => {
    const from = hull[place];
    if (from === undefined) return [];
    return [{ slot, from, to, marginal: (to.cost - from.cost) / (to.flow - from.flow) }];
  });
}

/**
 * Points on the lower convex hull by rising flow, from the cheapest on: the cheapest of the points moves more water than any
 * that costs the same, and points of less flow at a higher cost are of no use where at least a volume is needed.
 *
 * Source: monotone chain, A. M. Andrew (1979), Another efficient algorithm for convex hulls in two dimensions.
 */
function lowerHull(points: readonly HullPoint[]): readonly HullPoint[] {
  const ordered = points.toSorted((a, b) => a.flow - b.flow || a.cost - b.cost);
  const hull: HullPoint[] = [];
  for (const point of ordered) {
    if (hull.at(-1)?.flow === point.flow) continue;
    while (hull.length >= 2 && !turnsUp(hull.at(-2), hull.at(-1), point)) hull.pop();
    hull.push(point);
  }
  let cheapest = 0;
  for (const [place, { cost }] of hull.entries()) {
    if (cost <= (hull[cheapest]?.cost ?? cost)) cheapest = place;
  }
  return hull.slice(cheapest);
}

function turnsUp(a: HullPoint | undefined, b: HullPoint | undefined, c: HullPoint): boolean {
  if (a === undefined || b === undefined) return true;
  return (b.cost - a.cost) * (c.flow - b.flow) < (c.cost - b.cost) * (b.flow - a.flow);
}
