/** Finds the Darcy friction factor of a pipe from laminar to fully rough flow. */

/** The friction of a pipe at a Reynolds number. */
export interface FrictionFactor {
  /** The Darcy factor f [-]. */
  readonly factor: number;
  /** df/dRe [-]. */
  readonly slope: number;
}

export const LAMINAR_LIMIT = 2000;
export const TURBULENT_LIMIT = 4000;

const LOG_FACTOR = 2 / Math.LN10;
/** Of 1/sqrt f, which lies in 3..13 on the chart; one refinement of it by the equation itself starts the iteration. */
const FIRST_GUESS = 7;
/** Convergence is cubic: a step this small relative to 1/sqrt f leaves an error far below rounding of it. */
const LAST_STEP = 1e-4;
const MAXIMUM_STEPS = 20;

/**
 * The Darcy (not Fanning) friction factor and its slope.
 *
 * f = 64/Re to Re 2000; Colebrook-White 1/sqrt f = -2 log10(e/(3.7 D) + 2.51/(Re sqrt f)) from Re 4000;
 * between, f = (1-s) 64/Re + s f_CW(Re), s = 3t^2 - 2t^3, t = (Re - 2000)/2000, so that f and df/dRe are continuous.
 * @param flow reynolds [-] above 0; relativeRoughness e/D [-] 0..0.05 on the chart, continued up to 1.
 * Accuracy: 1e-12 relative against bisection of the same equation over Re 2000..1e8, e/D 0..0.2
 *   (test/models/physics/friction-factor.test.ts); three logarithms a call.
 * Errors: throws a RangeError where reynolds is not above 0 or relativeRoughness is outside 0..1.
 * Source: Colebrook 1939, J. Inst. Civ. Eng. 11, 133-156.
 * Example: Re 1e5, e/D 1e-4 gives 0.0185139.
 */
export function darcyFriction(flow: {
  readonly reynolds: number;
  readonly relativeRoughness: number;
}): FrictionFactor {
  const { reynolds, relativeRoughness } = flow;
  if (!(reynolds > 0)) throw new RangeError(`Reynolds number ${reynolds} is not above 0`);
  if (!(relativeRoughness >= 0 && relativeRoughness < 1)) {
    throw new RangeError(`relative roughness ${relativeRoughness} is not in 0..1`);
  }
  if (reynolds <= LAMINAR_LIMIT) return laminar(reynolds);
  const turbulent = colebrookWhite(reynolds, relativeRoughness / 3.7);
  return reynolds < TURBULENT_LIMIT ? blend(reynolds, turbulent) : turbulent;
}

const laminar = (reynolds: number): FrictionFactor => ({
  factor: 64 / reynolds,
  slope: -64 / (reynolds * reynolds),
});

function blend(reynolds: number, turbulent: FrictionFactor): FrictionFactor {
  const low = laminar(reynolds);
  const width = TURBULENT_LIMIT - LAMINAR_LIMIT;
  const t = (reynolds - LAMINAR_LIMIT) / width;
  const s = t * t * (3 - 2 * t);
  const slopeOfS = (6 * t * (1 - t)) / width;
  return {
    factor: low.factor + s * (turbulent.factor - low.factor),
    slope: low.slope + s * (turbulent.slope - low.slope) + slopeOfS * (turbulent.factor - low.factor),
  };
}

/** Solves x + 2 log10(rough + smooth x) = 0 for x = 1/sqrt f by Halley's third-order form of Newton's step. */
function colebrookWhite(reynolds: number, rough: number): FrictionFactor {
  const smooth = 2.51 / reynolds;
  let x = -LOG_FACTOR * Math.log(rough + smooth * FIRST_GUESS);
  for (let steps = 0; steps < MAXIMUM_STEPS; steps += 1) {
    const argument = rough + smooth * x;
    const ratio = smooth / argument;
    const residual = x + LOG_FACTOR * Math.log(argument);
    const slope = 1 + LOG_FACTOR * ratio;
    const curvature = -LOG_FACTOR * ratio * ratio;
    const step = (2 * residual * slope) / (2 * slope * slope - residual * curvature);
    x -= step;
    if (Math.abs(step) <= LAST_STEP * x) return fromInverseRoot(x, { reynolds, rough, smooth });
  }
  throw new Error(
    `Colebrook-White did not settle in ${MAXIMUM_STEPS} steps at Re ${reynolds}, e/3.7D ${rough}`,
  );
}

function fromInverseRoot(
  x: number,
  { reynolds, rough, smooth }: { readonly reynolds: number; readonly rough: number; readonly smooth: number },
): FrictionFactor {
  const ratio = (LOG_FACTOR * smooth) / (rough + smooth * x);
  const xPerReynolds = (ratio * x) / (reynolds * (1 + ratio));
  const factor = 1 / (x * x);
  return { factor, slope: (-2 * factor * xPerReynolds) / x };
}
