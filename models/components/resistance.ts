/** States what pipe, fitting, valve and nozzle have in common: head lost to a flow. */
import { GRAVITY } from '../physics/gravity.ts';
import { type HeadLoss, type LossTerms, lossOf, scaledTerms } from './loss-terms.ts';

/** Anything that takes head from a flow [m3/s], either way; no loss at zero flow. */
export interface Resistance {
  readonly terms: LossTerms;
  lossAt(flow: number): HeadLoss;
}

/** The resistance that terms describe. */
export const resistanceOf = (terms: LossTerms): Resistance => ({
  terms,
  lossAt: (flow) => lossOf(terms, flow),
});

/** A loss h = c Q|Q| with a coefficient c [s2/m5] of 0 or more. */
export const quadraticLoss = (coefficient: number): Resistance =>
  resistanceOf({ linear: 0, quadratic: coefficient, frictions: [] });

/**
 * The loss h = K V|V|/(2g) of a loss coefficient.
 *
 * @param loss lossCoefficient K [-] of 0 or more; diameter [m] above 0 of the bore that V is taken in.
 */
export function kLoss(loss: { readonly lossCoefficient: number; readonly diameter: number }): Resistance {
  const area = (Math.PI / 4) * loss.diameter ** 2;
  return quadraticLoss(loss.lossCoefficient / (2 * GRAVITY * area * area));
}

/** The same resistance with `multiplier` [-] times its loss: a friction multiplier, a count of equal fittings. */
export const scaled = (resistance: Resistance, multiplier: number): Resistance =>
  resistanceOf(scaledTerms(resistance.terms, multiplier));
