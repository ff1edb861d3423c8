/** Head lost to a flow: what pipe, fitting, valve, nozzle have in common. */
import { GRAVITY } from './gravity.ts';

/** Head [m] lost in the direction of flow, odd in flow, and its slope d head/d flow [s/m2], never negative. */
export interface HeadLoss {
  readonly head: number;
  readonly slope: number;
}

/** Anything that takes head from a flow [m3/s], either way; no loss at zero flow. */
export interface Resistance {
  lossAt(flow: number): HeadLoss;
}

/** A loss h = c Q|Q| with c [s2/m5] at or above 0. */
export function quadraticLoss(coefficient: number): Resistance {
  return {
    lossAt: (flow) => {
      const perFlow = coefficient * Math.abs(flow);
      return { head: perFlow * flow, slope: 2 * perFlow };
    },
  };
}

/** The loss h = K V|V|/(2g) of a loss coefficient K [-], V taken in a bore [m] above 0. */
export function kLoss(loss: { readonly lossCoefficient: number; readonly diameter: number }): Resistance {
  const area = (Math.PI / 4) * loss.diameter ** 2;
  return quadraticLoss(loss.lossCoefficient / (2 * GRAVITY * area * area));
}

/** The same resistance with `multiplier` [-] times its loss: a friction multiplier, a count of equal fittings. */
export function scaled(resistance: Resistance, multiplier: number): Resistance {
  return {
    lossAt: (flow) => {
      const { head, slope } = resistance.lossAt(flow);
      return { head: multiplier * head, slope: multiplier * slope };
    },
  };
}
