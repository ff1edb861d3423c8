/** Sums the loss of anything in the way of water from three kinds of terms. */
import { darcyFriction, LAMINAR_LIMIT } from '../physics/friction-factor.ts';

/** The loss of a flow. */
export interface HeadLoss {
  /** Head lost in the direction of flow [m], odd in flow. */
  readonly head: number;
  /** d head/d flow [s/m2], never negative. */
  readonly slope: number;
}

/** Friction of straight pipe of one bore and wall. */
export interface FrictionTerm {
  /** Re/|Q| [s/m3]. */
  readonly reynoldsPerFlow: number;
  /** e/D [-]. */
  readonly relativeRoughness: number;
  /** h/(f Q|Q|) [s2/m5]. */
  readonly perFactor: number;
  /** h/Q in laminar flow [s/m2]. */
  readonly laminarSlope: number;
}

/** A loss h = linear Q + quadratic Q|Q| + the friction of each pipe, with Q in m3/s. */
export interface LossTerms {
  /** [s/m2] of 0 or more. */
  readonly linear: number;
  /** [s2/m5] of 0 or more. */
  readonly quadratic: number;
  readonly frictions: readonly FrictionTerm[];
}

/** Head lost to a flow [m3/s], either way, and its slope; no loss at zero flow. */
export function lossOf({ linear, quadratic, frictions }: LossTerms, flow: number): HeadLoss {
  const size = Math.abs(flow);
  let head = linear * flow + quadratic * size * flow;
  let slope = linear + 2 * (quadratic * size);
  for (const { reynoldsPerFlow, relativeRoughness, perFactor, laminarSlope } of frictions) {
    const reynolds = reynoldsPerFlow * size;
    if (reynolds <= LAMINAR_LIMIT) {
      head += laminarSlope * flow;
      slope += laminarSlope;
      continue;
    }
    const friction = darcyFriction({ reynolds, relativeRoughness });
    const perFlow = perFactor * size;
    head += perFlow * friction.factor * flow;
    slope += perFlow * (2 * friction.factor + reynolds * friction.slope);
  }
  return { head, slope };
}

/** The terms with `multiplier` [-] times their loss. */
export function scaledTerms({ linear, quadratic, frictions }: LossTerms, multiplier: number): LossTerms {
  return {
    linear: multiplier * linear,
    quadratic: multiplier * quadratic,
    frictions: frictions.map((one) => ({
      ...one,
      perFactor: multiplier * one.perFactor,
      laminarSlope: multiplier * one.laminarSlope,
    })),
  };
}

/** The terms of losses that one flow passes one after the other; pipes of one bore and wall become one. */
export function inSeries(all: readonly LossTerms[]): LossTerms {
  let linear = 0;
  let quadratic = 0;
  const frictions: FrictionTerm[] = [];
  for (const terms of all) {
    linear += terms.linear;
    quadratic += terms.quadratic;
    for (const friction of terms.frictions) addFriction(frictions, friction);
  }
  return { linear, quadratic, frictions };
}

function addFriction(frictions: FrictionTerm[], added: FrictionTerm): void {
  const place = frictions.findIndex(
    (one) =>
      one.reynoldsPerFlow === added.reynoldsPerFlow && one.relativeRoughness === added.relativeRoughness,
  );
  const known = frictions[place];
  if (known === undefined) {
    frictions.push(added);
    return;
  }
  frictions[place] = {
    ...known,
    perFactor: known.perFactor + added.perFactor,
    laminarSlope: known.laminarSlope + added.laminarSlope,
  };
}
