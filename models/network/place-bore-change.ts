/** Places a reducer or enlargement between the pipes of its run. */
import { failed, type Result, success } from '../../curves/result.ts';
import { type BoreChange, boreChangeResistance, fits, type TwoBores } from '../components/bore-change.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import type { RunElement } from '../loop/loop.ts';
import { firstBore, lastBore } from './bores.ts';
import type { PlacedResistance } from './network.ts';

/** What can be wrong with a reducer or enlargement; bores [m]. */
export type BoreChangeFailure =
  | { readonly code: 'bores-not-known'; readonly path: DocumentPath; readonly missing: 'before' | 'after' }
  | ({
      readonly code: 'bores-do-not-fit';
      readonly path: DocumentPath;
      readonly towards: BoreChange['towards'];
    } & TwoBores)
  | { readonly code: 'bore-change-overstated'; readonly path: DocumentPath };

/** Bores on either side of an element; null where no pipe gives one. */
export interface Neighbours {
  /** [m] */
  readonly before: number | null;
  /** [m] */
  readonly after: number | null;
}

/**
 * Bores [m] around an element of a run: of the nearest pipe before it in the run, else `upstream`; of the nearest
 * pipe after it, else `downstream`.
 */
export function neighbours(
  run: readonly RunElement[],
  index: number,
  { upstream, downstream }: { readonly upstream: number | null; readonly downstream: number | null },
): Neighbours {
  return {
    before: lastBore(run.slice(0, index)) ?? upstream,
    after: firstBore(run.slice(index + 1)) ?? downstream,
  };
}

/**
 * The resistance of a reducer or enlargement on the smaller bore [m].
 *
 * Errors: `bore-change-overstated` where a diameter or a count other than 1 is stated; `bores-not-known`;
 *   `bores-do-not-fit` where they are equal or change the other way.
 */
export function placeBoreChange(
  change: BoreChange,
  { count = 1, diameter }: Extract<RunElement, { fitting: string }>,
  { path, around: { before, after } }: { readonly path: DocumentPath; readonly around: Neighbours },
): Result<Omit<PlacedResistance, 'path'>, BoreChangeFailure> {
  if (diameter !== undefined) return failed({ code: 'bore-change-overstated', path: [...path, 'diameter'] });
  if (count !== 1) return failed({ code: 'bore-change-overstated', path: [...path, 'count'] });
  if (before === null) return failed({ code: 'bores-not-known', path, missing: 'before' });
  if (after === null) return failed({ code: 'bores-not-known', path, missing: 'after' });
  const bores = { before, after };
  const { name, role, towards } = change;
  if (!fits(change, bores)) return failed({ code: 'bores-do-not-fit', path, towards, ...bores });
  const resistance = boreChangeResistance(change, bores);
  return success({ kind: 'fitting', name, role, bore: Math.min(before, after), resistance });
}
