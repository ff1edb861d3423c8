/** Finds the outlets in air that no water reaches, and how high it rises before them. */
import { at } from '../../curves/at.ts';
import type { Network, NetworkOutlet } from './network.ts';
import type { NetworkSolution } from './solve-network.ts';

/** An outlet that stays dry; heads and elevations [m] are above the surface drawn from. */
export interface DryOutlet {
  readonly outlet: NetworkOutlet;
  /** At the start of the outlet's run: the line to it holds a column of water up to there. */
  readonly head: number;
  /** Of the outlet; the head does not exceed it. */
  readonly level: number;
  /**
   * The highest point stated of the outlet's run and of those upstream, where the head does not reach it: the line
   * takes in air there. Null where none is stated, or the head reaches all of them.
   */
  readonly airAt: number | null;
}

/**
 * The dry outlets of a solution whose total flow is above 0, in the order of the loop: flows [m3/s], heads [m]. Outlets
 * behind a closed valve are left out.
 */
export function dryOutlets(
  { branches, outlets }: Network,
  { flows, heads, rootHead }: Pick<NetworkSolution, 'flows' | 'heads' | 'rootHead'>,
): readonly DryOutlet[] {
  const highest: number[] = [];
  for (const { parent, highestElevation } of branches) {
    const upstream = highest[parent] ?? Number.NEGATIVE_INFINITY;
    highest.push(Math.max(upstream, highestElevation ?? Number.NEGATIVE_INFINITY));
  }
  return outlets.flatMap((b) => {
    const branch = branches[b];
    if (branch === undefined || branch.outlet === null || branch.shut) return [];
    const { outlet, parent, lift: level } = branch;
    if (outlet.exit !== 'free' || at(flows, b) > 0) return [];
    const head = parent < 0 ? rootHead : at(heads, parent);
    const elevation = at(highest, b);
    return [{ outlet, head, level, airAt: elevation > head ? elevation : null }];
  });
}
