/** Plans one run of a phase that moves a volume, as settings by time. */
import type { Interval } from '../calendar/civil-year.ts';
import { instantOf, MS_PER_DAY, MS_PER_HOUR, offsetAt, type ZoneOffsets } from '../calendar/zone-offsets.ts';
import { eachRateRun } from '../tariff/rate-runs.ts';
import type { Rates } from '../tariff/rates.ts';
import type { Block } from './block.ts';
import type { PhasePlan } from './phase-plan.ts';
import type { VolumeDemand } from './schedule.ts';
import { planVolume, type Slot, type VolumePlan } from './volume/volume-plan.ts';
import { planWholeSlots } from './volume/whole-slots.ts';
import type { VolumeChoice } from './volume-choices.ts';

export interface Prices {
  readonly rates: Rates;
  readonly zone: ZoneOffsets;
}

/** A part of a run at one setting, and whether its day moves the volume. */
export interface VolumeBlock extends Block {
  readonly isReached: boolean;
}

export interface VolumeRun {
  readonly blocks: readonly VolumeBlock[];
  readonly feasible: boolean;
  /** Cost above what no plan can be cheaper than [money]; null where the volume is out of reach. */
  readonly gap: number | null;
  /** What no plan can be cheaper than [money]; null where the volume is out of reach. */
  readonly bound: number | null;
}

/** Plans of days that are alike, by their hours and prices. */
export type KnownPlans = Map<string, VolumePlan | null>;

/**
 * Cuts a run into slots at whole clock hours and changes of the price, plans each day of it, and lays the parts of split
 * slots one after the other. A volume out of reach runs at the setting of `own`.
 */
export function volumeRun(plan: PhasePlan, run: Interval, prices: Prices, known: KnownPlans): VolumeRun {
  const { volume, own } = plan;
  if (volume === null) throw new Error(`${plan.phase.name} moves no volume`);
  const blocks: VolumeBlock[] = [];
  let feasible = true;
  let gap = 0;
  let bound = 0;
  for (const day of daysOf(run, prices.zone)) {
    const slots = slotsOf(day, prices);
    const found = planOf(volume.choices, volume.demand, slots, known);
    if (found === null) {
      feasible = false;
      const { flow, power } = own.duty;
      blocks.push({ ...day, setting: own.setting, flow, power, isReached: false });
      continue;
    }
    gap += found.cost - found.bound;
    bound += found.bound;
    blocks.push(...blocksOf(found, slots, volume.choices).map((block) => ({ ...block, isReached: true })));
  }
  return feasible ? { blocks, feasible, gap, bound } : { blocks, feasible, gap: null, bound: null };
}

/** The days of a run, each from the same time of day on; a run of up to 25 hours is one. */
function daysOf({ from, until }: Interval, zone: ZoneOffsets): readonly Interval[] {
  const days: Interval[] = [];
  const local = from + offsetAt(zone, from);
  let start = from;
  for (let day = 1; start < until; day++) {
    const next = instantOf(zone, local + day * MS_PER_DAY);
    const end = until - next < MS_PER_HOUR ? until : Math.min(until, next);
    days.push({ from: start, until: end });
    start = end;
  }
  return days;
}

interface TimedSlot extends Slot, Interval {}

function slotsOf(day: Interval, { rates, zone }: Prices): readonly TimedSlot[] {
  const slots: TimedSlot[] = [];
  eachRateRun({ rates, zone, ...day }, (from, until, rate) => {
    const price = rates.prices[rate] ?? 0;
    const shift = offsetAt(zone, from);
    for (let start = from; start < until; ) {
      const nextHour = (Math.floor((start + shift) / MS_PER_HOUR) + 1) * MS_PER_HOUR - shift;
      const end = Math.min(until, nextHour);
      slots.push({ from: start, until: end, hours: (end - start) / MS_PER_HOUR, price });
      start = end;
    }
  });
  return slots;
}

function planOf(
  choices: readonly VolumeChoice[],
  { perDay, splits }: VolumeDemand,
  slots: readonly TimedSlot[],
  known: KnownPlans,
): VolumePlan | null {
  if (choices.length === 0) return null;
  const key = slots.map(({ hours, price }) => `${hours}:${price}`).join(' ');
  const before = known.get(key);
  if (before !== undefined) return before;
  const made = splits ? planVolume({ choices, slots }, perDay) : planWholeSlots({ choices, slots }, perDay);
  const plan = made.ok ? made.value : null;
  known.set(key, plan);
  return plan;
}

function blocksOf(
  { slots: parts }: VolumePlan,
  slots: readonly TimedSlot[],
  choices: readonly VolumeChoice[],
): readonly Block[] {
  return slots.flatMap(({ from, until }, place) => {
    let start = from;
    const inOrder = parts[place] ?? [];
    return inOrder.flatMap(({ choice, share }, part) => {
      const what = choices[choice];
      if (what === undefined) throw new Error(`there is no choice ${choice}`);
      // Whole milliseconds, as clocks have; the last part takes what is left.
      const end = part === inOrder.length - 1 ? until : Math.round(start + share * (until - from));
      const block = { from: start, until: end, ...what };
      start = end;
      return block.from < block.until ? [block] : [];
    });
  });
}
