/** The head that pipework of known sizes requires, and what it costs. */
import { at } from '../../curves/at.ts';
import { hasPipes } from './bore-dependence.ts';
import type { RunLosses } from './run-loss.ts';
import { headAtOutlet, type Run, type Size } from './run-tree.ts';
import type { Sizes } from './sized-loop.ts';
import { headAtSide, headAtStraightRun } from './split-loss.ts';

export interface FixedPipework {
  /** Required at the intake [m]. */
  readonly head: number;
  /** Of this, what the suction loses [m]. */
  readonly suctionLoss: number;
  /** [money] */
  readonly cost: number;
}

interface Fixing {
  readonly sizes: Sizes;
  readonly losses: RunLosses;
  readonly frictionMultiplier: number;
}

/** Null where the sizes do not go together. */
export function fixedPipework(suction: Run, fixing: Fixing): FixedPipework | null {
  const head = headAtStart(suction, null, fixing);
  const [root] = suction.beyond;
  if (head === null || root === undefined) return null;
  const beyond = headAtStart(root, sizesIn(suction, fixing).at(-1)?.bore ?? null, fixing);
  if (beyond === null) return null;
  return { head, suctionLoss: head - beyond, cost: costOf(suction, fixing) };
}

const sizesIn = ({ pipes }: Run, { sizes }: Fixing): readonly Size[] =>
  pipes.map(({ list, sizes: all }) => {
    const size = all[list === null ? 0 : at(sizes, list)];
    if (size === undefined) throw new Error(`invariant: list ${list} has no such size`);
    return size;
  });

const costOf = (run: Run, fixing: Fixing): number =>
  run.beyond.reduce(
    (sum, child) => sum + costOf(child, fixing),
    sizesIn(run, fixing).reduce((sum, { cost }) => sum + cost, 0),
  );

/** Head [m] required where a run starts, behind the split that it leaves. */
function headAtStart(run: Run, boreBefore: number | null, fixing: Fixing): number | null {
  const { losses } = fixing;
  const chosen = sizesIn(run, fixing);
  const boreAtEnd = chosen.at(-1)?.bore ?? boreBefore;
  let head = headAtEnd(run, boreAtEnd, fixing);
  for (let place = chosen.length - 1; place >= 0; place--) {
    const size = chosen[place];
    if (size === undefined || head === null) return null;
    const after = chosen[place + 1]?.bore ?? firstBoreBeyond(run, fixing);
    const lost = losses.pipe(run, place, { size, after });
    head = lost === null ? null : head + lost;
  }
  const after = chosen[0]?.bore ?? firstBoreBeyond(run, fixing);
  const lead = losses.lead(run, { before: boreBefore, after });
  return head === null || lead === null ? null : head + lead;
}

function headAtEnd(run: Run, bore: number | null, fixing: Fixing): number | null {
  if (run.outlet !== null) return headAtOutlet(run, fixing.losses.exit(run, bore));
  const atSplit = headsAtSplit(run, bore, fixing);
  let most = Number.NEGATIVE_INFINITY;
  for (const [place, child] of run.beyond.entries()) {
    const head = headAtStart(child, bore, fixing);
    if (head === null) return null;
    most = Math.max(most, head + at(atSplit, place));
  }
  return most;
}

function headsAtSplit({ beyond, flow, split }: Run, bore: number | null, fixing: Fixing): readonly number[] {
  if (split === undefined) return beyond.map(() => 0);
  const leg = { bore, flow, frictionMultiplier: fixing.frictionMultiplier };
  const [, ...sides] = beyond.map((child) => ({
    bore: sizesIn(child, fixing)[0]?.bore ?? null,
    flow: child.flow,
  }));
  const widest = Math.max(...sides.map((side) => side.bore ?? bore ?? 0));
  const sideFlow = sides.reduce((sum, side) => sum + side.flow, 0);
  const straight = headAtStraightRun(leg, { bore: widest > 0 ? widest : null, flow: sideFlow });
  return [straight, ...sides.map((side) => headAtSide(leg, side))];
}

/** Of the first branch beyond that has a pipe. */
function firstBoreBeyond(run: Run, fixing: Fixing): number | null {
  const child = run.beyond.find(hasPipes);
  if (child === undefined) return null;
  return sizesIn(child, fixing)[0]?.bore ?? firstBoreBeyond(child, fixing);
}
