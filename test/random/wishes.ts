/** Invented requirements of the outlets of a loop, about what they get. */
import type { Draw } from './draw.ts';
import type { ExtendedBranch, ExtendedOutlet } from './extended-loop.ts';

const LITRE_PER_HOUR = 1 / 3.6e6;

/** Flow at which a system needs a head, by bisection between 500 and 20000 L/h; nothing when it lies outside. */
export function flowAtHead(
  system: { readonly head: (flow: number) => number },
  head: number,
): number | undefined {
  let low = 500 * LITRE_PER_HOUR;
  let high = 20_000 * LITRE_PER_HOUR;
  if (system.head(low) > head || system.head(high) < head) return undefined;
  for (let step = 0; step < 30; step += 1) {
    const middle = (low + high) / 2;
    if (system.head(middle) < head) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

interface Wish {
  readonly draw: Draw;
  /** What the outlet gets when the whole loop is about as its user wants it. */
  readonly gets: number;
  readonly everyOutlet: boolean;
}

function wanted(outlet: ExtendedOutlet, { draw, gets, everyOutlet }: Wish): ExtendedOutlet {
  if (gets <= 0) return everyOutlet ? { ...outlet, requiredFlow: 0 } : outlet;
  if (everyOutlet && draw.chance(0.08)) return { ...outlet, requiredFlow: 0 };
  if (!everyOutlet && draw.chance(0.15)) return outlet;
  const requiredFlow = gets * draw.between(0.55, 1);
  const maximum = draw.chance(0.15) ? { maximumFlow: gets * draw.between(1.02, 1.6) } : {};
  const velocity = draw.between(0.05, 0.2);
  const jet =
    outlet.nozzleDiameter !== undefined && draw.chance(0.1)
      ? { reach: { distance: 20 * outlet.nozzleDiameter, velocity } }
      : {};
  return { ...outlet, requiredFlow, ...maximum, ...jet };
}

interface Wishes {
  readonly draw: Draw;
  /** What each outlet gets, by its name. */
  readonly shares: ReadonlyMap<string, number>;
  readonly everyOutlet: boolean;
}

/** The same branches with requirements on their outlets. */
export function withWishes(branch: ExtendedBranch, wishes: Wishes): ExtendedBranch {
  const { draw, shares, everyOutlet } = wishes;
  const { outlet, branches } = branch;
  return {
    ...branch,
    ...(outlet ? { outlet: wanted(outlet, { draw, gets: shares.get(outlet.name) ?? 0, everyOutlet }) } : {}),
    ...(branches ? { branches: branches.map((child) => withWishes(child, wishes)) } : {}),
  };
}

export const hasRequirement = (branch: ExtendedBranch): boolean =>
  (branch.outlet?.requiredFlow ?? 0) > 0 || (branch.branches ?? []).some(hasRequirement);
