/** Chooses the setting of a pump where none is feasible, so that no animal comes to harm. */
import type { Criterion, CriterionReason } from '../selection/criterion.ts';
import type { SettingGrid } from './setting-grid.ts';
import { countedPlaces, isOfAnimals, isOfExchange, keepsLimit } from './upper-limits.ts';

/** Which setting of the grid was chosen. */
export type Choice =
  /** The lowest that gives every outlet its required flow. */
  | 'lowest-served'
  /** The highest within the upper limits, in step 4 within those of the animals. */
  | 'highest-within'
  | 'lowest-moving'
  | 'lowest';

/** How a setting was chosen. */
export interface Protection {
  /** Of the rule, the first that gave a setting: upper limits are those of animals and pump in 1 and 2, of the animals in 3 and 4. */
  readonly step: 1 | 2 | 3 | 4;
  readonly choice: Choice;
  /** Upper limits that do not hold at the next setting of the grid. */
  readonly limitedBy: readonly CriterionReason[];
}

/** What a setting is chosen by. */
export interface Demand {
  /** That every outlet has its required flow; null where nothing is required that a setting could give. */
  readonly served: Criterion | null;
  readonly upper: readonly Criterion[];
}

/**
 * The place [-] of a grid that protects best where no setting is feasible, by four steps:
 * 1. the lowest setting with all required flows at which the upper limits hold;
 * 2. else the highest at which they hold;
 * 3. else the lowest with all required flows at which the limits of the animals hold;
 * 4. else the highest at which these hold; else the lowest that moves water; where none does, the lowest.
 * Settings that move no water count only where all are such. A limit on reverse flow that holds at no setting is left
 * out.
 * Errors: throws `SolveFailure` where network or search reach a limit.
 */
export function protectiveSetting(
  grid: SettingGrid,
  demand: Demand,
): Protection & { readonly index: number } {
  const places = countedPlaces(grid);
  const upper = demand.upper.filter((limit) => !isOfExchange(limit) || isKept(grid, limit));
  const animals = upper.filter(isOfAnimals);
  const { index, ...chosen } = within(1, upper) ?? within(3, animals) ?? lowest();
  const next = index + 1;
  const limitedBy = upper.filter((limit) => next < grid.size && !keepsLimit(grid, next, limit));
  return { ...chosen, index, limitedBy: limitedBy.map(({ reason }) => reason) };

  function within(step: 1 | 3, limits: readonly Criterion[]) {
    const { served } = demand;
    const keeps = (place: number) => limits.every((limit) => keepsLimit(grid, place, limit));
    if (served !== null) {
      const least = find(places, (place) => isServed(grid, place, served) && keeps(place));
      if (least !== undefined) return { index: least, step, choice: 'lowest-served' } as const;
    }
    const most = find(places.reversed(), keeps);
    if (most === undefined) return undefined;
    return { index: most, step: step === 1 ? 2 : 4, choice: 'highest-within' } as const;
  }

  function lowest() {
    const index = find(places, () => true) ?? 0;
    return { index, step: 4, choice: grid.movesWater(index) ? 'lowest-moving' : 'lowest' } as const;
  }
}

/** Whether some setting that counts keeps an upper limit. */
export const isKept = (grid: SettingGrid, limit: Criterion): boolean =>
  find(countedPlaces(grid), (place) => keepsLimit(grid, place, limit)) !== undefined;

/** Outlets that feed one another are not served by a pump that moves nothing. */
const isServed = (grid: SettingGrid, place: number, served: Criterion): boolean =>
  grid.movesWater(place) && grid.keeps(place, served);

function find(places: Iterable<number>, matches: (place: number) => boolean): number | undefined {
  for (const place of places) if (matches(place)) return place;
  return undefined;
}
