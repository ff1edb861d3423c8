/** Adds up the figures of a site, loop by loop, in memory that does not grow with the loops. */
import { type LoopFigures, type Saved, type Saving, type ShortOutlet, worthOfSaved } from './loop-figures.ts';

export interface LoopName {
  readonly id: string;
  readonly key?: string;
  readonly name: string;
}

/** A loop that could be summed; null figures where its equations were not solved. */
export interface LoopEntry {
  readonly loop: LoopName;
  readonly figures: LoopFigures | null;
  readonly isScheduled: boolean;
  /** Of the pumps that are there [-]. */
  readonly count: number;
  /** Of the pumps that are there [% of full]. */
  readonly setting: number;
}

export interface ShortEntry extends ShortOutlet {
  readonly loop: LoopName;
}

export interface AboveEntry extends Saved {
  readonly loop: LoopName;
  /** [% of full] */
  readonly installedSetting: number;
}

export interface SavingEntry extends Saving {
  readonly loop: LoopName;
  /** What the pump that is there saves without anything bought; null for nothing. */
  readonly settingAlone: Saved | null;
}

/** Listed worst or best first; those beyond are counted. */
export const REPORTED_MOST = 50;
export const SAVINGS_REPORTED = 10;

/** Sums over the loops of a site, counts [-] of loops. */
export interface SiteTotals {
  readonly loops: number;
  readonly withoutPump: number;
  readonly withoutRequirement: number;
  readonly scheduled: number;
  readonly unsolved: number;
  /** Mean over the year [W]. */
  readonly power: number;
  /** [kWh/year] */
  readonly annualEnergy: number;
  /** [money/year]; null once a loop has no price. */
  readonly annualCost: number | null;
  readonly short: { readonly count: number; readonly worst: readonly ShortEntry[] };
  readonly above: { readonly count: number; readonly most: readonly AboveEntry[] };
  readonly savings: readonly SavingEntry[];
}

export const NO_TOTALS: SiteTotals = {
  ...{ loops: 0, withoutPump: 0, withoutRequirement: 0, scheduled: 0, unsolved: 0 },
  ...{ power: 0, annualEnergy: 0, annualCost: 0 },
  short: { count: 0, worst: [] },
  above: { count: 0, most: [] },
  savings: [],
};

/** The totals with one more loop that has no pump. */
export const withoutPump = (totals: SiteTotals): SiteTotals => ({
  ...totals,
  loops: totals.loops + 1,
  withoutPump: totals.withoutPump + 1,
});

/** The list with an item in its place, no longer than it may be; the least rank comes first. */
function kept<Item>(
  list: readonly Item[],
  item: Item,
  { most, rank }: { readonly most: number; readonly rank: (item: Item) => number },
): readonly Item[] {
  const last = list[most - 1];
  if (last !== undefined && rank(last) <= rank(item)) return list;
  return [...list, item].toSorted((a, b) => rank(a) - rank(b)).slice(0, most);
}

/** The totals with one more loop. */
export function withLoop(totals: SiteTotals, { loop, figures, ...entry }: LoopEntry): SiteTotals {
  const counted = {
    ...totals,
    loops: totals.loops + 1,
    scheduled: totals.scheduled + (entry.isScheduled ? 1 : 0),
  };
  if (figures === null) return { ...counted, unsolved: totals.unsolved + 1 };
  const { annualCost, short, aboveNeed } = figures;
  return {
    ...counted,
    withoutRequirement: totals.withoutRequirement + (figures.hasRequirement ? 0 : 1),
    power: totals.power + figures.power,
    annualEnergy: totals.annualEnergy + figures.annualEnergy,
    annualCost: annualCost === null || totals.annualCost === null ? null : totals.annualCost + annualCost,
    short: short === null ? totals.short : withShort(totals.short, { ...short, loop }),
    above:
      aboveNeed === null
        ? totals.above
        : withAbove(totals.above, { ...aboveNeed, loop, installedSetting: entry.setting }),
    savings: withSaving(totals.savings, { loop, count: entry.count }, figures),
  };
}

const withShort = ({ count, worst }: SiteTotals['short'], entry: ShortEntry): SiteTotals['short'] => ({
  count: count + 1,
  worst: kept(worst, entry, { most: REPORTED_MOST, rank: ({ margin }) => margin }),
});

const withAbove = ({ count, most }: SiteTotals['above'], entry: AboveEntry): SiteTotals['above'] => ({
  count: count + 1,
  most: kept(most, entry, { most: REPORTED_MOST, rank: (one) => -worthOfSaved(one) }),
});

/** Of each loop the larger saving: another pump, or the one that is there at a lower setting. */
function withSaving(
  savings: readonly SavingEntry[],
  { loop, count }: Pick<LoopEntry, 'loop' | 'count'>,
  { aboveNeed, otherPump }: LoopFigures,
): readonly SavingEntry[] {
  const alone = aboveNeed === null ? null : { candidate: null, count, ...aboveNeed };
  const isOther = otherPump !== null && (alone === null || worthOfSaved(otherPump) > worthOfSaved(alone));
  const best: Saving | null = isOther ? otherPump : alone;
  if (best === null || !(worthOfSaved(best) > 0)) return savings;
  const entry = { ...best, loop, settingAlone: aboveNeed };
  return kept(savings, entry, { most: SAVINGS_REPORTED, rank: (one) => -worthOfSaved(one) });
}
