/** Sums the water that the pipes of a loop hold. */

import { findPipe } from '../components/pipe-sizes.ts';
import type { Branch, RunElement } from './loop.ts';

/** Volume [m3] inside the pipes of a branch and of all beyond it, pi d^2/4 L each; fittings and valves are left out. */
export function pipeVolume(branch: Branch): number {
  let volume = 0;
  const waiting: Branch[] = [branch];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    for (const element of next.run) volume += elementVolume(element);
    waiting.push(...(next.branches ?? []));
  }
  return volume;
}

function elementVolume(element: RunElement): number {
  if (!('pipe' in element)) return 0;
  const { pipe, length } = element;
  const bore = typeof pipe === 'string' ? findPipe(pipe)?.insideDiameter : pipe.insideDiameter;
  return bore === undefined ? 0 : (Math.PI / 4) * bore ** 2 * length;
}
