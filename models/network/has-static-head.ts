/** Decides whether a loop lifts water. */
import type { CompiledLoop } from './compiled-loop.ts';

/**
 * Whether a loop lifts water to any outlet, up or down: heads and flows of such a loop do not follow powers of the
 * speed.
 */
export const hasStaticHead = ({ network, system }: CompiledLoop): boolean =>
  network === null
    ? system.passesWater && system.stateAt(0).head !== 0
    : network.branches.some(({ outlet, lift }) => outlet !== null && lift !== 0);
