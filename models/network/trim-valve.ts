/** The valve of a branch that can be set to make its trim. */

import type { DocumentPath } from '../loop/document-path.ts';
import type { PlacedResistance } from './network.ts';

/** The valve, and the opening [%] to set. */
export interface ValveSetting {
  readonly valve: DocumentPath;
  readonly opening: number;
}

/**
 * The first valve of a run whose part openings are known, set to lose a trim's head [m] at its flow [m3/s] besides what it
 * loses already; null where the run has none.
 */
export function trimmingValve(
  elements: readonly PlacedResistance[],
  { head, flow }: { readonly head: number; readonly flow: number },
): ValveSetting | null {
  for (const { path, resistance, openingFor } of elements) {
    const opening = openingFor?.({ head: head + resistance.lossAt(flow).head, flow }) ?? null;
    if (opening !== null) return { valve: path, opening };
  }
  return null;
}

/** The first valve of a run, to be shut; null where it has none. */
export function shuttingValve(elements: readonly PlacedResistance[]): ValveSetting | null {
  const valve = elements.find(({ kind }) => kind === 'valve');
  return valve === undefined ? null : { valve: valve.path, opening: 0 };
}
