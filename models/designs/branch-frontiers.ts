/** Frontiers of the branches of a tree of runs, worked out from the outlets up. */
import {
  dependsOnBoreAtEnd,
  dependsOnBoreBefore,
  dependsOnBoreBeyond,
  dependsOnNextPipe,
} from './bore-dependence.ts';
import { type ByFirstBore, singlePoint } from './frontier.ts';
import { oncePerRun } from './once-per-run.ts';
import { placeAt, type RunLosses } from './run-loss.ts';
import { headAtOutlet, type Run, type Size } from './run-tree.ts';
import { splitFrontiers } from './split-frontiers.ts';
import { type Alternative, type Keeping, unite } from './unite.ts';

/** What is known before a run, and whether the frontiers beyond are needed one a bore. */
export interface Asked {
  /** Bore [m] of the last pipe before the run. */
  readonly boreBefore: number | null;
  readonly byFirstBore: boolean;
}

export type FrontiersOf = (run: Run, asked: Asked) => ByFirstBore;

/** Frontiers at the end of a run, by the bore there. */
export type EndFrontiers = (boreAtEnd: number | null, byFirstBore: boolean) => ByFirstBore;

export interface FrontierTerms {
  readonly losses: RunLosses;
  readonly keeping: Keeping;
  /** [-] */
  readonly frictionMultiplier: number;
}

/**
 * The frontiers of a run, with all beyond it, at the place where it starts: the head [m] required there against the cost.
 *
 * Each branch is worked out once for each bore before it that makes a difference to it, each split for each bore there that does.
 */
export function branchFrontiers(terms: FrontierTerms): FrontiersOf {
  const onceAtStart = oncePerRun<ByFirstBore>();
  const onceAtEnd = oncePerRun<ByFirstBore>();
  const frontiersOf: FrontiersOf = (run, { boreBefore, byFirstBore }) => {
    const counted = dependsOnBoreBefore(run) ? boreBefore : null;
    const end: EndFrontiers = (bore, byFirst) => {
      const countedAtEnd = dependsOnBoreAtEnd(run) ? bore : null;
      return onceAtEnd(run, `${countedAtEnd} ${byFirst}`, () =>
        run.outlet === null
          ? splitFrontiers(run, { legBore: bore, byFirstBore: byFirst, terms, frontiersOf })
          : new Map([[null, singlePoint(headAtOutlet(run, terms.losses.exit(run, bore)))]]),
      );
    };
    return onceAtStart(run, `${counted} ${byFirstBore}`, () =>
      throughRun(run, { boreBefore, byFirstBore, end, terms }),
    );
  };
  return frontiersOf;
}

/** Carries frontiers from the end of a run to its start, pipe by pipe, one a bore where the piece before depends on it. */
export function throughRun(
  run: Run,
  {
    boreBefore,
    byFirstBore,
    end,
    terms: { losses, keeping },
  }: Asked & { readonly end: EndFrontiers; readonly terms: Pick<FrontierTerms, 'losses' | 'keeping'> },
): ByFirstBore {
  const isByBeyond = dependsOnBoreBeyond(run, boreBefore);
  const last = run.pipes.length - 1;
  if (last < 0) {
    const groups = new Groups();
    for (const [after, frontier] of end(boreBefore, byFirstBore || isByBeyond)) {
      const head = losses.lead(run, { before: boreBefore, after });
      groups.add(byFirstBore ? after : null, { frontier, head, cost: 0, size: null });
    }
    return groups.united(keeping);
  }
  let beyond: ByFirstBore = new Map();
  for (let place = last; place >= 0; place--) {
    const groups = new Groups();
    const { list, sizes } = placeAt(run, place);
    const isByBore = place === 0 ? byFirstBore : dependsOnNextPipe(placeAt(run, place - 1));
    for (const size of sizes) {
      if (!size.allowed) continue;
      const lead = place > 0 ? 0 : losses.lead(run, { before: boreBefore, after: size.bore });
      const key = isByBore ? size.bore : null;
      for (const [after, frontier] of place === last ? end(size.bore, isByBeyond) : beyond) {
        const head = sumOf(lead, losses.pipe(run, place, { size, after }));
        groups.add(key, { frontier, head, cost: size.cost, size: chosen(list, size) });
      }
    }
    beyond = groups.united(keeping);
  }
  return beyond;
}

const sumOf = (one: number | null, other: number | null): number | null =>
  one === null || other === null ? null : one + other;

const chosen = (list: number | null, { place }: Size) => (list === null ? null : { list, place });

/** Alternatives by a bore; those that do not go together are left out. */
class Groups {
  readonly #byBore = new Map<number | null, Alternative[]>();

  add(bore: number | null, alternative: Omit<Alternative, 'head'> & { readonly head: number | null }): void {
    const { head } = alternative;
    if (head === null) return;
    const group = this.#byBore.get(bore) ?? [];
    group.push({ ...alternative, head });
    this.#byBore.set(bore, group);
  }

  united(keeping: Keeping): ByFirstBore {
    return new Map([...this.#byBore].map(([bore, group]) => [bore, unite(group, keeping)]));
  }
}
