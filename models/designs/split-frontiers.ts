/** Frontiers at a split: its branches, each with what it loses at the split. */
import { hasPipes } from './bore-dependence.ts';
import type { ByFirstBore, Frontier } from './frontier.ts';
import type { Run } from './run-tree.ts';
import { headAtSide, headAtStraightRun, type TeeLeg } from './split-loss.ts';
import { sumFrontiers } from './sum-frontiers.ts';
import { type Keeping, unite } from './unite.ts';

export interface SplitQuestion {
  /** [m] */
  readonly legBore: number | null;
  readonly byFirstBore: boolean;
  /** frictionMultiplier [-] */
  readonly terms: { readonly keeping: Keeping; readonly frictionMultiplier: number };
  /** boreBefore [m] */
  readonly frontiersOf: (
    run: Run,
    asked: { readonly boreBefore: number | null; readonly byFirstBore: boolean },
  ) => ByFirstBore;
}

/**
 * The frontiers of all branches beyond a run together. By first bore they are those of the branch that the bore is read from:
 * the first that has a pipe.
 */
export function splitFrontiers(run: Run, question: SplitQuestion): ByFirstBore {
  const { legBore, byFirstBore, terms, frontiersOf } = question;
  const isTee = run.split !== undefined;
  const leader = byFirstBore ? run.beyond.findIndex(hasPipes) : -1;
  const branches = run.beyond.map((child, place) => {
    const isSide = isTee && place > 0 && child.pipes.length > 0;
    return frontiersOf(child, { boreBefore: legBore, byFirstBore: isSide || place === leader });
  });
  const leg = { bore: legBore, flow: run.flow, frictionMultiplier: terms.frictionMultiplier };
  const together = (maps: readonly ByFirstBore[]): Frontier =>
    isTee
      ? teeFrontier({ leg, maps, flows: run.beyond.map(({ flow }) => flow) }, terms.keeping)
      : sumFrontiers(
          maps.map((map) => only(map, terms.keeping)),
          terms.keeping,
        );
  const led = branches[leader];
  if (led === undefined) return new Map([[null, together(branches)]]);
  return new Map(
    [...led].map(([bore, frontier]) => [bore, together(branches.with(leader, new Map([[bore, frontier]])))]),
  );
}

/** One frontier, whatever the first bore. */
function only(map: ByFirstBore, keeping: Keeping): Frontier {
  const [first, ...others] = map.values();
  if (first !== undefined && others.length === 0) return first;
  const alternatives = [...map.values()].map((frontier) => ({ frontier, head: 0, cost: 0, size: null }));
  return unite(alternatives, keeping);
}

interface Tee {
  readonly leg: TeeLeg;
  /** The straight run, then the sides, by the bore of their own first pipe. */
  readonly maps: readonly ByFirstBore[];
  readonly flows: readonly number[];
}

/**
 * What a side loses depends on its own bore, what the straight run loses on that of the widest side. Where the latter differs,
 * the sides are taken apart by which of them is the first to be the widest, and how wide.
 */
function teeFrontier({ leg, maps, flows }: Tee, keeping: Keeping): Frontier {
  const [straight, ...sides] = maps;
  if (straight === undefined) throw new Error('invariant: a split has branches');
  const sideFlows = flows.slice(1);
  const allSides = sideFlows.reduce((sum, flow) => sum + flow, 0);
  const run = only(straight, keeping);
  const lost = (bore: number | null) => headAtStraightRun(leg, { bore, flow: allSides });
  const sumFor = (bore: number | null, chosen: readonly ByFirstBore[]): Frontier | null => {
    if (chosen.some(({ size }) => size === 0)) return null;
    const shifted = chosen.map((map, place) =>
      unite(
        [...map].map(([own, frontier]) => ({
          ...{ frontier, cost: 0, size: null },
          head: headAtSide(leg, { bore: own, flow: sideFlows[place] ?? 0 }),
        })),
        keeping,
      ),
    );
    const straightRun = unite([{ frontier: run, head: lost(bore), cost: 0, size: null }], keeping);
    return sumFrontiers([straightRun, ...shifted], keeping);
  };
  const widths = [...new Set(sides.flatMap((side) => [...side.keys()]))];
  const [width = null] = widths;
  if (new Set(widths.map(lost)).size <= 1) {
    const sum = sumFor(width, sides);
    if (sum !== null) return sum;
  }
  const alternatives = widths.flatMap((widest) =>
    sides.flatMap((_, first) => {
      const sum = sumFor(widest, withWidest(sides, { widest, first, legBore: leg.bore }));
      return sum === null ? [] : [{ frontier: sum, head: 0, cost: 0, size: null }];
    }),
  );
  return unite(alternatives, keeping);
}

/** The sides before `first` narrower than `widest`, that one as wide, the others no wider. */
function withWidest(
  sides: readonly ByFirstBore[],
  {
    widest,
    first,
    legBore,
  }: { readonly widest: number | null; readonly first: number; readonly legBore: number | null },
): readonly ByFirstBore[] {
  const wide = (bore: number | null): number => bore ?? legBore ?? 0;
  return sides.map((side, place) => {
    const fits = ([bore]: readonly [number | null, Frontier]): boolean => {
      if (place === first) return bore === widest;
      return place < first ? wide(bore) < wide(widest) : wide(bore) <= wide(widest);
    };
    return new Map([...side].filter(fits));
  });
}
