/** Lists every run of a loop by its place in the document. */
import type { PipeworkLoop, RunElement } from './loop.ts';

export interface PlacedRun {
  /** As a JSON pointer. */
  readonly pointer: string;
  readonly run: readonly RunElement[];
}

/** The suction, then the runs of the discharge from the pump on, each branch before the next. */
export function runsOfLoop({ suction, discharge }: PipeworkLoop): readonly PlacedRun[] {
  const runs: PlacedRun[] = [{ pointer: '/suction', run: suction }];
  const waiting = [{ pointer: '/discharge', branch: discharge }];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { pointer, branch } = next;
    runs.push({ pointer: `${pointer}/run`, run: branch.run });
    const inner = (branch.branches ?? []).map((below, i) => ({
      pointer: `${pointer}/branches/${i}`,
      branch: below,
    }));
    waiting.push(...inner.toReversed());
  }
  return runs;
}
