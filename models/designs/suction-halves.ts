/** Suctions kept apart from discharges, so that what a suction may lose can be limited. */
import { at } from '../../curves/at.ts';
import { dependsOnBoreBeyond } from './bore-dependence.ts';
import { type EndFrontiers, type FrontiersOf, type FrontierTerms, throughRun } from './branch-frontiers.ts';
import { type Frontier, singlePoint } from './frontier.ts';
import type { Run } from './run-tree.ts';
import { readSizes } from './trace.ts';

/** Suctions by their loss, and the discharges that go with them. */
export interface Halves {
  readonly suction: Frontier;
  readonly discharge: Frontier;
}

/** One pair for each bore at the end of the suction, and for each first bore of the discharge that the suction depends on. */
export function halvesOf(
  suction: Run,
  { terms, frontiersOf }: { readonly terms: FrontierTerms; readonly frontiersOf: FrontiersOf },
): readonly Halves[] {
  const byFirstBore = dependsOnBoreBeyond(suction, null);
  return boresAtEnd(suction).flatMap((bore) =>
    suction.beyond.flatMap((root) =>
      [...frontiersOf(root, { boreBefore: bore, byFirstBore })].flatMap(([first, discharge]) => {
        const end: EndFrontiers = (own) => new Map(own === bore ? [[first, singlePoint(0)]] : []);
        const asked = { boreBefore: null, byFirstBore: false };
        return [...throughRun(suction, { ...asked, end, terms }).values()]
          .filter(({ heads }) => heads.length > 0)
          .map((own) => ({ suction: own, discharge }));
      }),
    ),
  );
}

function boresAtEnd({ pipes }: Run): readonly (number | null)[] {
  const last = pipes.at(-1);
  if (last === undefined) return [null];
  return [...new Set(last.sizes.filter(({ allowed }) => allowed).map(({ bore }) => bore))];
}

/** Points of both halves: the head [m] that they require and their cost together. */
export interface Pairing {
  readonly halves: Halves;
  readonly ofSuction: number;
  readonly ofDischarge: number;
  readonly head: number;
  readonly cost: number;
}

/** For each suction that loses no more than `suctionLoss` [m], the cheapest discharge that the rest of the head is enough for. */
export function* pairings(
  all: readonly Halves[],
  { head, suctionLoss }: { readonly head: number; readonly suctionLoss: number },
): Generator<Pairing> {
  for (const halves of all) {
    const { suction, discharge } = halves;
    let ofDischarge = discharge.heads.length - 1;
    for (let ofSuction = 0; ofSuction < suction.heads.length; ofSuction++) {
      const lost = at(suction.heads, ofSuction);
      if (lost > suctionLoss) break;
      while (ofDischarge >= 0 && at(discharge.heads, ofDischarge) > head - lost) ofDischarge -= 1;
      if (ofDischarge < 0) break;
      yield pairing(halves, ofSuction, ofDischarge);
    }
  }
}

const pairing = (halves: Halves, ofSuction: number, ofDischarge: number): Pairing => ({
  ...{ halves, ofSuction, ofDischarge },
  head: at(halves.suction.heads, ofSuction) + at(halves.discharge.heads, ofDischarge),
  cost: at(halves.suction.costs, ofSuction) + at(halves.discharge.costs, ofDischarge),
});

/** The pairing with the discharge of least head whose cost stays within `most` [money]. */
export function withLessHead(pair: Pairing, most: number): Pairing {
  let found = pair;
  while (found.ofDischarge > 0) {
    const less = pairing(found.halves, found.ofSuction, found.ofDischarge - 1);
    if (less.cost > most) break;
    found = less;
  }
  return found;
}

/** The place [-] of the size chosen of each list. */
export function sizesOfPair({ halves: { suction, discharge }, ofSuction, ofDischarge }: Pairing): number[] {
  const sizes: number[] = [];
  readSizes(suction.trace, ofSuction, sizes);
  readSizes(discharge.trace, ofDischarge, sizes);
  return sizes;
}
