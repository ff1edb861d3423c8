/** Finds the free outlets that no water reaches, and how high it stands before them. */
import { at } from '../../curves/at.ts';
import type { Network, NetworkOutlet } from './network.ts';
import type { NetworkSolution } from './solve-network.ts';

/** Heads and elevations in m over the surface drawn from. */
export interface DryOutlet {
  readonly outlet: NetworkOutlet;
  /** At the start of the outlet's run: the line to it holds a column of water up to there. */
  readonly head: number;
  /** Of the outlet; the head does not exceed it. */
  readonly level: number;
  /**
   * The highest point stated of the outlet's run and of those upstream that the head does not reach: the line takes in air there. Null
   * where none is stated, or water stands above all of them.
   */
  readonly airAt: number | null;
}

/**
 * In the order of the loop, for a total flow above 0: a pump that moves nothing leaves the heads open. Outlets behind a shut valve
 * are left out.
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
