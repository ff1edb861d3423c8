/** The head that the straight runs of tees may gain. */
import type { Run } from './run-tree.ts';
import { headAtStraightRun } from './split-loss.ts';

interface Upstream {
  /** Every bore [m] that the last pipe before a run can have; one null where there is no pipe. */
  readonly boresBefore: readonly (number | null)[];
  readonly frictionMultiplier: number;
}

/** The most [m] that all straight runs in and beyond a run can gain together, each by its own best sizes; 0 or more. */
export function straightRunGain(run: Run, { boresBefore, frictionMultiplier }: Upstream): number {
  const bores = run.pipes.at(-1)?.sizes.map(({ bore }) => bore) ?? boresBefore;
  const beyond = run.beyond.reduce(
    (sum, child) => sum + straightRunGain(child, { boresBefore: bores, frictionMultiplier }),
    0,
  );
  if (run.split === undefined) return beyond;
  const [, ...sides] = run.beyond;
  const flow = sides.reduce((sum, side) => sum + side.flow, 0);
  const widths = sides.flatMap(({ pipes }) => pipes[0]?.sizes.map(({ bore }) => bore) ?? [null]);
  const heads = bores.flatMap((bore) =>
    widths.map((width) =>
      headAtStraightRun({ bore, flow: run.flow, frictionMultiplier }, { bore: width, flow }),
    ),
  );
  return beyond + Math.max(0, ...heads.map((head) => -head));
}
