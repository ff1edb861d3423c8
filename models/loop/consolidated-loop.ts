/** Joins several loops into one, so that all their outlets are served by one pump. */
import { failed, type Result, success } from '../../curves/result.ts';
import type { WaterState } from '../physics/water.ts';
import { BORE_CHANGES } from './bore-changes.ts';
import type { Branch, Intake, Loop, PipeworkLoop, RunElement } from './loop.ts';
import { exitOf } from './outlet-exit.ts';

export interface Consolidation {
  readonly loops: readonly Loop[];
  readonly suction: readonly RunElement[];
  /** From the pump to where the loops part. */
  readonly manifold: readonly RunElement[];
  /** Undefined: that of the first loop. */
  readonly intake?: Intake | undefined;
}

/** Why loops cannot be joined; `place` [-] is that of the loop, from 0, that does not fit. */
export type ConsolidationFailure =
  | { readonly code: 'no-pipework'; readonly place: number }
  | { readonly code: 'other-water'; readonly place: number }
  | { readonly code: 'other-friction'; readonly place: number }
  | { readonly code: 'other-bore-changes'; readonly place: number };

/** As long as an outlet may be named. */
const NAME_MAX = 120;

const isSame = (a: WaterState, b: WaterState): boolean =>
  a.temperature === b.temperature && a.salinity === b.salinity;

/** Names begin with that of their loop, which makes them differ; those of loops of one name are counted. */
function renamed(branch: Branch, name: (outlet: string) => string, lift: number): Branch {
  const { outlet, branches } = branch;
  return {
    ...branch,
    ...(outlet === undefined
      ? {}
      : {
          outlet: {
            ...outlet,
            name: name(outlet.name),
            staticHead: (outlet.staticHead ?? 0) + lift,
            // The default goes by the outlet's own rise, which the lift of its loop is now part of.
            exit: exitOf(outlet),
          },
        }),
    ...(branches === undefined ? {} : { branches: branches.map((below) => renamed(below, name, lift)) }),
  };
}

/** A name that no other outlet has: counted on where it is taken, also by being cut. */
function uniqueNames(): (full: string) => string {
  const taken = new Set<string>();
  return (full) => {
    let name = full.slice(0, NAME_MAX);
    for (let count = 2; taken.has(name); count += 1) {
      const suffix = ` (${count})`;
      name = full.slice(0, NAME_MAX - suffix.length) + suffix;
    }
    taken.add(name);
    return name;
  };
}

function prefixes(loops: readonly Loop[]): readonly string[] {
  const names = loops.map(({ name }) => name);
  return names.map((name, place) =>
    names.indexOf(name) === names.lastIndexOf(name) ? name : `${name} ${place + 1}`,
  );
}

/**
 * The joined loop: one suction, a manifold, and behind it the discharge of each loop.
 *
 * Static heads of the loops move to their outlets, whose names get that of their loop; pump elevation, water and
 * friction multiplier are those of the first loop; tank and installed pump are left out.
 * Errors: `no-pipework` for a loop known by its system curve alone; `other-water`, `other-friction` and
 *   `other-bore-changes` where a loop differs from the first.
 */
export function consolidatedLoop({
  loops,
  suction,
  manifold,
  intake: own,
}: Consolidation): Result<PipeworkLoop, ConsolidationFailure> {
  const names = prefixes(loops);
  const unique = uniqueNames();
  const joined: Branch[] = [];
  let first: PipeworkLoop | undefined;
  for (const [place, loop] of loops.entries()) {
    if (!('discharge' in loop)) return failed({ code: 'no-pipework', place });
    first ??= loop;
    if (!isSame(loop.water, first.water)) return failed({ code: 'other-water', place });
    if (loop.frictionMultiplier !== first.frictionMultiplier)
      return failed({ code: 'other-friction', place });
    if ((loop.boreChanges ?? BORE_CHANGES) !== (first.boreChanges ?? BORE_CHANGES))
      return failed({ code: 'other-bore-changes', place });
    const named = (outlet: string) => unique(`${names[place]}: ${outlet}`);
    joined.push(renamed(loop.discharge, named, loop.staticHead));
  }
  if (first === undefined) throw new Error('invariant: a consolidation joins loops');
  const { water, pumpElevation, frictionMultiplier, boreChanges } = first;
  const intake = own ?? first.intake;
  return success({
    name: loops
      .map(({ name }) => name)
      .join(' + ')
      .slice(0, NAME_MAX),
    water,
    pumpElevation,
    ...(intake === undefined ? {} : { intake }),
    frictionMultiplier,
    ...(boreChanges === undefined ? {} : { boreChanges }),
    staticHead: 0,
    suction,
    discharge: { run: manifold, branches: joined },
  });
}
