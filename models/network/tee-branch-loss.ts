/** Finds the head that a branch loses at the tee which it leaves. */
import {
  SIDE_SHARE,
  type TeeRunLaw,
  type TeeSideLaw,
  teeRunCoefficient,
  teeRunLaw,
  teeSideLaw,
} from '../components/diverging-tee.ts';
import { GRAVITY } from '../physics/gravity.ts';

/** What a side branch loses; coefficients are velocity heads per square of a flow, with the friction multiplier. */
export interface TeeSideLoss {
  readonly part: 'side';
  /** Of the combined leg [s2/m5]. */
  readonly combined: number;
  /** Of the branch itself [s2/m5]. */
  readonly own: number;
  readonly law: TeeSideLaw;
}

/** What the straight run loses or gains by what the sides take. */
export interface TeeRunLoss {
  readonly part: 'run';
  /** Velocity head of the combined leg per square of its flow [s2/m5], with the friction multiplier. */
  readonly combined: number;
  readonly law: TeeRunLaw;
}

export type TeeBranchLoss = TeeSideLoss | TeeRunLoss;

/**
 * What the branches of a stated tee lose there: the straight run, which loses nothing next to a side as wide as the leg,
 * then the sides.
 *
 * @param tee bores [m] above 0: of the leg that enters the node (null where no pipe gives it: each side then counts as
 *   wide as the leg) and of the sides; multiplier [-] of the whole loss, as of friction.
 * @returns by branch of the node, in its order; null where a branch loses nothing.
 * Accuracy: an equal tee within 0.09 velocity heads of the published one (test/models/network/tee-branch-loss.test.ts).
 */
export function teeLosses({
  legBore,
  sideBores,
  multiplier,
}: {
  readonly legBore: number | null;
  readonly sideBores: readonly number[];
  readonly multiplier: number;
}): readonly (TeeBranchLoss | null)[] {
  const headPerSquare = (bore: number): number => multiplier * velocityHeadPerSquare(bore);
  const sides = sideBores.map((bore): TeeSideLoss => {
    const leg = legBore ?? bore;
    return {
      part: 'side',
      combined: headPerSquare(leg),
      own: headPerSquare(bore),
      law: teeSideLaw(bore / leg),
    };
  });
  if (legBore === null || sideBores.length === 0) return [null, ...sides];
  const law = teeRunLaw(Math.max(...sideBores) / legBore);
  return [law === null ? null : { part: 'run', combined: headPerSquare(legBore), law }, ...sides];
}

const velocityHeadPerSquare = (bore: number): number => 1 / (2 * GRAVITY * ((Math.PI / 4) * bore ** 2) ** 2);

/** The same loss at any flow times `multiplier` [-]. */
export const teeLossTimes = (tee: TeeBranchLoss, multiplier: number): TeeBranchLoss =>
  tee.part === 'side'
    ? { ...tee, combined: multiplier * tee.combined, own: multiplier * tee.own }
    : { ...tee, combined: multiplier * tee.combined };

/** Flows at a tee [m3/s], outward positive. */
export interface TeeFlows {
  /** In the leg that enters the node. */
  readonly combined: number;
  readonly own: number;
  /** Of all side branches that run outward. */
  readonly sides: number;
}

/** Head [m] and its slopes [s/m2] by the three flows. */
export interface TeeHead {
  readonly head: number;
  readonly byOwn: number;
  readonly byCombined: number;
  readonly bySides: number;
}

/** Which way a branch is taken to run; a solver carries the law of one way on beyond rest. */
export type Direction = 'outward' | 'inward';

const NONE: TeeHead = { head: 0, byOwn: 0, byCombined: 0, bySides: 0 };

/**
 * Head lost at the tee. A side that runs outward loses (1 + growth q^2)(combined Qc^2 + own Q^2), q = Q/Qc and 1 at most;
 * one that runs back loses 0.6 of its own velocity head. The straight run loses K(q) combined Qc^2, q = sides/Qc and 1 at
 * most, whichever way it runs. Only an outward combined flow counts: without one a side's q is 1, and the straight run
 * loses nothing.
 */
export const teeHead = (tee: TeeBranchLoss, flows: TeeFlows, direction: Direction): TeeHead => {
  if (tee.part === 'run') return runHead(tee, flows);
  return direction === 'outward' ? outwardHead(tee, flows) : ownHead(tee, flows.own);
};

/** Head [m] that holds a branch at rest which would run outward: what it would lose at the tee with next to no flow. */
export function headToOpen(tee: TeeBranchLoss | null, flows: TeeFlows): number {
  if (tee === null) return 0;
  return tee.part === 'run' ? runHead(tee, flows).head : tee.combined * Math.max(0, flows.combined) ** 2;
}

function ownHead(tee: TeeSideLoss, own: number): TeeHead {
  const slope = SIDE_SHARE * tee.own * Math.abs(own);
  return { head: slope * own, byOwn: 2 * slope, byCombined: 0, bySides: 0 };
}

function outwardHead(tee: TeeSideLoss, { combined, own }: TeeFlows): TeeHead {
  const leg = Math.max(0, combined);
  const byLeg = 2 * tee.combined * leg;
  const ofLeg = tee.combined * leg ** 2;
  if (own <= 0) {
    const beyond = ownHead(tee, own);
    return { head: ofLeg + beyond.head, byOwn: beyond.byOwn, byCombined: byLeg, bySides: 0 };
  }
  const { growth, own: ownShare } = tee.law;
  const byOwn = 2 * ownShare * tee.own * own;
  const velocityHeads = ofLeg + ownShare * tee.own * own ** 2;
  if (own >= leg) {
    const most = 1 + growth;
    return { head: most * velocityHeads, byOwn: most * byOwn, byCombined: most * byLeg, bySides: 0 };
  }
  const share = own / leg;
  const grown = 1 + growth * share ** 2;
  const more = (2 * growth * share * velocityHeads) / leg;
  return {
    head: grown * velocityHeads,
    byOwn: grown * byOwn + more,
    byCombined: grown * byLeg - more * share,
    bySides: 0,
  };
}

function runHead({ combined: perSquare, law }: TeeRunLoss, { combined, sides }: TeeFlows): TeeHead {
  if (!(combined > 0) || !(sides > 0)) return NONE;
  const velocityHead = perSquare * combined ** 2;
  if (sides >= combined) {
    const { value } = teeRunCoefficient(law, 1);
    return { head: value * velocityHead, byOwn: 0, byCombined: 2 * value * perSquare * combined, bySides: 0 };
  }
  const share = sides / combined;
  const { value, slope } = teeRunCoefficient(law, share);
  return {
    head: value * velocityHead,
    byOwn: 0,
    byCombined: (2 * value - slope * share) * perSquare * combined,
    bySides: slope * perSquare * combined,
  };
}
