/** Estimates how long a computation will take from its size. */

import { hasCheckValves } from '../../models/duty/one-pump-down.ts';
import type { CompiledLoop } from '../../models/network/compiled-loop.ts';

/** Network solves that one candidate, and what all candidates share, take about. */
export const SOLVES = { candidate: 3, shared: 150, dutyPoint: 28, requiredDuty: 60, idlePump: 60 } as const;
/** A setting judged on samples of the loop, in branches solved: for itself, and for each branch of the loop. */
export const SETTING = { own: 2.5, branch: 0.06 } as const;
/** Branches solved in about 50 ms: longer work leaves the thread that answers requests. */
export const LONG = 30_000;

export const branchesOf = ({ network }: CompiledLoop): number => network?.branches.length ?? 1;

/** Water that runs back through an idle pump is looked for on samples of the loop. */
export const idleSolves = (loop: CompiledLoop): number => (hasCheckValves(loop) ? 0 : SOLVES.idlePump);
