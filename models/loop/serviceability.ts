/** Finds what a loop lacks to be serviced without draining it. */
import type { Loop, RunElement } from './loop.ts';
import { countOf } from './role-of-element.ts';
import { runsOfLoop } from './runs-of-loop.ts';

export interface ServiceLacks {
  /** Sides of the pump, `suction` or `discharge`, without a valve to shut them off. */
  readonly isolation: readonly string[];
  /** Sides of the pump without a union to part them by. */
  readonly union: readonly string[];
  /** Runs, as JSON pointers, with more bulkheads than unions. */
  readonly bulkheadUnion: readonly string[];
}

/**
 * What the runs that meet at the pump, and every run with a bulkhead, lack; null for a loop known by its system curve
 * alone.
 */
export function serviceLacks(loop: Loop): ServiceLacks | null {
  if (!('discharge' in loop)) return null;
  const sides = [
    { side: 'suction', run: loop.suction },
    { side: 'discharge', run: loop.discharge.run },
  ];
  const without = (has: (run: readonly RunElement[]) => boolean) =>
    sides.flatMap(({ side, run }) => (has(run) ? [] : [side]));
  return {
    // A check valve isolates in one direction only.
    isolation: without((run) => countOf(run, 'valve') > 0),
    union: without((run) => countOf(run, 'union') > 0),
    bulkheadUnion: runsOfLoop(loop)
      .filter(({ run }) => countOf(run, 'bulkhead') > countOf(run, 'union'))
      .map(({ pointer }) => pointer),
  };
}
