/** Takes each of two lists of judgements where it has less to spare. */
import type { Judgement } from './criterion.ts';

/** Of two lists of judgements by the same criteria in the same order, each one with less clearance. */
export function tighterJudgements(
  one: readonly Judgement[],
  other: readonly Judgement[],
): readonly Judgement[] {
  return one.map((judgement, place) => {
    const counterpart = other[place];
    if (counterpart?.reason !== judgement.reason) throw new Error(`${judgement.reason} has no counterpart`);
    return counterpart.clearance < judgement.clearance ? counterpart : judgement;
  });
}
