/** Names the limits that a setting must not exceed, whether or not it gives the required flows. */
import { type CriteriaContext, criteriaFor } from '../selection/criteria.ts';
import { type Criterion, EQUAL, upTo } from '../selection/criterion.ts';
import type { SettingGrid } from './setting-grid.ts';

/** Reasons whose limits protect the animals. */
const OF_ANIMALS: ReadonlySet<string> = new Set(['outlet-above-maximum', 'screen-velocity', 'reverse-flow']);
/** Reasons whose limits protect the pump. */
const OF_PUMP: ReadonlySet<string> = new Set(['pump-above-maximum', 'npsh']);

/** Reasons that are judged by what outlets exchange, also where the pump moves no water. */
const OF_EXCHANGE: ReadonlySet<string> = new Set(['reverse-flow']);

/**
 * The upper limits of a pump on a loop, in the order of their reasons.
 *
 * NPSH is among them wherever the pump has points for it. Efficiency, data reach and the pump's minimum flow are no
 * upper limits: a mistyped watt must not starve a tank.
 */
export function upperLimits(context: CriteriaContext): readonly Criterion[] {
  const { limits, pump } = context;
  const enforceNpsh = limits.enforceNpsh || (pump.entered.npshPoints ?? []).length > 0;
  return criteriaFor({ ...context, limits: { ...limits, enforceNpsh } }).filter(
    ({ reason }) => OF_ANIMALS.has(reason) || OF_PUMP.has(reason),
  );
}

/** That the total flow of a volume stays at or below its greatest [m3/s]. */
export function volumeCeiling(limit: number): Criterion {
  const reason = 'outlet-above-maximum';
  return {
    ...{ reason, by: 'flow', along: 'up-to' },
    judge: ({ flow: value, setting }) => ({
      ...{ reason, outlet: null, setting, value, limit },
      clearance: upTo(value, limit) + EQUAL,
    }),
  };
}

/** Whether a limit is on water that runs backwards. */
export const isOfExchange = ({ reason }: Criterion): boolean => OF_EXCHANGE.has(reason);

/** Whether a limit protects the animals; the others protect the pump. */
export const isOfAnimals = ({ reason }: Pick<Criterion, 'reason'>): boolean => OF_ANIMALS.has(reason);

/**
 * Whether a place of the grid [-] keeps an upper limit. Where no water moves all of them hold, but for outlets that
 * exchange water.
 */
export const keepsLimit = (grid: SettingGrid, index: number, limit: Criterion): boolean =>
  (!grid.movesWater(index) && !isOfExchange(limit)) || grid.keeps(index, limit);

/** The places of a grid [-] that count, in rising order: those that move water, or all where none does. */
export function countedPlaces(grid: SettingGrid): Iterable<number> & { reversed(): Iterable<number> } {
  const first = firstMoving(grid);
  const counts = (index: number) => first === null || grid.movesWater(index);
  return {
    *[Symbol.iterator]() {
      for (let index = first ?? 0; index < grid.size; index++) if (counts(index)) yield index;
    },
    *reversed() {
      for (let index = grid.size - 1; index >= (first ?? 0); index--) if (counts(index)) yield index;
    },
  };
}

/** Place [-] of the lowest setting that moves water; null where none does. */
export function firstMoving(grid: SettingGrid): number | null {
  for (let index = 0; index < grid.size; index++) if (grid.movesWater(index)) return index;
  return null;
}
