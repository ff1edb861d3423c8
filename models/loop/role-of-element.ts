/** Finds the part that an element of a run plays, by its row in the tables of components. */
import { findBoreChange } from '../components/bore-change.ts';
import { findFitting } from '../components/fittings.ts';
import type { Role } from '../components/role.ts';
import { findCheckValve, findValve } from '../components/valves.ts';
import type { RunElement } from './loop.ts';

/**
 * The role of an element of a run.
 *
 * A valve stated by its Kv or Cv is one that is opened and shut by hand.
 * @returns null for a loss that names no thing (a coefficient, an equivalent length, a head at a flow) and for a name that
 *   no table has.
 */
export function roleOf(element: RunElement): Role | null {
  if ('pipe' in element) return 'pipe';
  if ('valve' in element) {
    return typeof element.valve === 'string' ? (findValve(element.valve)?.role ?? null) : 'valve';
  }
  if (!('fitting' in element)) return null;
  const { fitting } = element;
  return (findBoreChange(fitting) ?? findFitting(fitting) ?? findCheckValve(fitting))?.role ?? null;
}

/** How many pieces [-] of a role a run has. */
export const countOf = (run: readonly RunElement[], role: Role): number =>
  run.reduce((sum, element) => sum + (roleOf(element) === role ? piecesOf(element) : 0), 0);

const piecesOf = (element: RunElement): number => ('fitting' in element ? (element.count ?? 1) : 1);
