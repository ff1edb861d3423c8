/** Finds which pipe of a loop an element without a diameter of its own belongs to. */

import { findPipe } from '../components/pipe-sizes.ts';
import { DEFAULT_ROUGHNESS } from '../components/roughness.ts';
import type { Branch, PipeBore, RunElement } from '../loop/loop.ts';

/** Bore and roughness [m] of a pipe element; null for an unknown standard name. */
export function pipeBore(pipe: string | PipeBore): { bore: number; roughness: number } | null {
  if (typeof pipe !== 'string') {
    return { bore: pipe.insideDiameter, roughness: pipe.roughness ?? DEFAULT_ROUGHNESS };
  }
  const size = findPipe(pipe);
  return size === undefined ? null : { bore: size.insideDiameter, roughness: DEFAULT_ROUGHNESS };
}

function boreOf(element: RunElement): number | null {
  return 'pipe' in element ? (pipeBore(element.pipe)?.bore ?? null) : null;
}

/** Bore of the first pipe of a run [m]; null without one. */
export function firstBore(run: readonly RunElement[]): number | null {
  for (const element of run) {
    const bore = boreOf(element);
    if (bore !== null) return bore;
  }
  return null;
}

/** Bore of the last pipe of a run [m]; null without one. */
export function lastBore(run: readonly RunElement[]): number | null {
  return firstBore(run.toReversed());
}

/**
 * Bore [m] of the first pipe met when a branch is read from where it begins, its own branches in their order; null
 * without one.
 */
export function firstBoreOfBranch(branch: Branch): number | null {
  const own = firstBore(branch.run);
  if (own !== null) return own;
  for (const child of branch.branches ?? []) {
    const bore = firstBoreOfBranch(child);
    if (bore !== null) return bore;
  }
  return null;
}

/**
 * Bore [m] that each element of a run takes where it states none: that of the pipe before it in the run, else
 * `upstream`, else of the first pipe after it in the run, else `downstream`; null where none of them exists.
 *
 * @param run elements from where the water enters on.
 * @param ends bores [m] of the pipes before and beyond the run; null where there are none.
 */
export function inheritedBores(
  run: readonly RunElement[],
  { upstream, downstream }: { readonly upstream: number | null; readonly downstream: number | null },
): readonly (number | null)[] {
  let before = upstream;
  return run.map((element, index) => {
    const own = boreOf(element);
    if (own !== null) before = own;
    return before ?? firstBore(run.slice(index + 1)) ?? downstream;
  });
}
