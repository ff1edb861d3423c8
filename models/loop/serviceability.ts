/** What a loop lacks to be serviced without draining it. */
import type { Loop, RunElement } from './loop.ts';
import { fittingsIn, runsOfLoop } from './runs-of-loop.ts';

export interface ServiceLacks {
  /** Sides of the pump, `suction` or `discharge`, without a valve to shut them off. */
  readonly isolation: readonly string[];
  /** Sides of the pump without a union to part them by. */
  readonly union: readonly string[];
  /** Runs, as JSON pointers, with more bulkheads than unions. */
  readonly bulkheadUnion: readonly string[];
}

const UNION = 'union';
const BULKHEAD = 'bulkhead';
/** Valves that close by themselves: they isolate in one direction only. */
const CHECK_VALVE = /^(?:check|foot)-/;

/** Judges the runs that meet at the pump, and every run with a bulkhead; null for a loop known by its system curve alone. */
export function serviceLacks(loop: Loop): ServiceLacks | null {
  if (!('discharge' in loop)) return null;
  const sides = [
    { side: 'suction', run: loop.suction },
    { side: 'discharge', run: loop.discharge.run },
  ];
  const without = (has: (run: readonly RunElement[]) => boolean) =>
    sides.flatMap(({ side, run }) => (has(run) ? [] : [side]));
  return {
    isolation: without((run) => run.some(isolates)),
    union: without((run) => fittingsIn(run, UNION) > 0),
    bulkheadUnion: runsOfLoop(loop)
      .filter(({ run }) => fittingsIn(run, BULKHEAD) > fittingsIn(run, UNION))
      .map(({ pointer }) => pointer),
  };
}

function isolates(element: RunElement): boolean {
  if (!('valve' in element)) return false;
  return typeof element.valve !== 'string' || !CHECK_VALVE.test(element.valve);
}
