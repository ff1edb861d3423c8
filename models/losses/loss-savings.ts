/** Finds what a smaller loss would save a year. */
import { type Choice, choose, type Question } from '../assurance/choose-assured.ts';
import { annualUse } from '../duty/energy.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { solving } from '../network/solve-failure.ts';
import { continuousDuty } from '../selection/continuous-setting.ts';
import { type Change, canChange, changedLoop } from './loss-changes.ts';
import type { LossRow } from './loss-rows.ts';

/** How many rows are looked into, those of the largest share first. */
export const SAVINGS_ROWS = 10;
/** Share of a year's use below which a saving is none: what settings of any decimals are found to. */
const ROUNDING = 1e-9;

/** What a year uses. */
export interface Use {
  /** [kWh/year] */
  readonly annualEnergy: number;
  /** [money/year]; null without a price. */
  readonly annualCost: number | null;
}

/**
 * What a change saves a year, with the candidate by its place [-] and the setting [% of full] then; null: no
 * candidate serves the loop so changed.
 */
export interface Saving {
  /** The best of all candidates on the grids of their settings, before less after. */
  readonly grid: (Use & { readonly candidate: number; readonly setting: number }) | null;
  /** The same candidates, each at the smallest setting of any decimals. */
  readonly continuous: (Use & { readonly setting: number }) | null;
}

/** By change; null where it says nothing of the row, or was not worked out within the limits of the solver. */
export type Savings = Readonly<Record<Change, Saving | null>>;

/**
 * The savings [kWh/year, money/year] of the ten rows that take most of those that can change, by place in `rows`: the
 * whole choice is made again for each changed loop, with all its candidates, trims and assurance.
 */
export function lossSavings({
  model,
  question,
  choice,
  rows,
}: {
  readonly model: CompiledLoop;
  readonly question: Question;
  readonly choice: Choice;
  readonly rows: readonly LossRow[];
}): ReadonlyMap<number, Savings> {
  const now = usesOf(choice, question);
  if (now === null) return new Map();
  const savingOf = (row: LossRow, change: Change): Saving | null => {
    const changed = changedLoop(model, row, change);
    const chosen = changed === null ? null : choose(changed, question);
    if (chosen === null || !chosen.ok) return null;
    const uses = usesOf(chosen.value, question);
    if (uses === null) return { grid: null, continuous: null };
    return {
      grid: { ...uses.grid, ...less(now.grid, uses.grid) },
      continuous: { ...uses.continuous, ...less(now.continuous, uses.continuous) },
    };
  };
  return new Map(
    largestShares(rows).map((place) => {
      const row = rows[place];
      if (row === undefined) throw new Error(`there is no row ${place}`);
      return [place, byChange((change) => savingOf(row, change))] as const;
    }),
  );
}

const byChange = <T>(make: (change: Change) => T): Readonly<Record<Change, T>> => ({
  boreUp: make('boreUp'),
  halved: make('halved'),
  removed: make('removed'),
});

function largestShares(rows: readonly LossRow[]): readonly number[] {
  return rows
    .flatMap((row, place) => (canChange(row) ? [{ place, share: row.share }] : []))
    .toSorted((a, b) => b.share - a.share || a.place - b.place)
    .slice(0, SAVINGS_ROWS)
    .map(({ place }) => place);
}

interface Uses {
  readonly grid: Use & { readonly candidate: number; readonly setting: number };
  readonly continuous: Use & { readonly setting: number };
}

/** Of the best candidate; null where there is none, or its smallest setting was not found. */
function usesOf(
  { balanced: { sampled }, worstCase, selection }: Choice,
  { candidates, limits, running }: Question,
): Uses | null {
  const [best] = selection.ranking;
  const candidate = best && candidates[best.candidate];
  if (best === undefined || candidate === undefined) return null;
  const { duty, annualEnergy, annualCost } = best;
  const steps = { sampled, worstCase, candidate, limits, running };
  const found = solving(() => continuousDuty(steps, duty));
  if (!found.ok) return null;
  const { setting, power } = found.value;
  const standbyPower = candidate.count * candidate.pump.entered.standbyPower;
  return {
    grid: { candidate: best.candidate, setting: duty.setting, annualEnergy, annualCost },
    continuous: { setting, ...annualUse({ ...running, power, standbyPower }) },
  };
}

const less = (before: Use, after: Use): Use => ({
  annualEnergy: difference(before.annualEnergy, after.annualEnergy),
  annualCost:
    before.annualCost === null || after.annualCost === null
      ? null
      : difference(before.annualCost, after.annualCost),
});

/** 0 where the two differ by rounding alone. */
function difference(before: number, after: number): number {
  const saved = before - after;
  return Math.abs(saved) <= ROUNDING * Math.abs(before) ? 0 : saved;
}
