/** Gives the electrical power of a pump against its speed and flow, as fitted. */

/** P - standby = (F + c r^k) g(x): one way in which power may go with the speed ratio r. */
export interface SpeedLaw {
  /** F [W], 0 or more: what a motor draws above standby at any speed. */
  readonly fixedPower: number;
  /** c [W]: the part that goes with speed, at full speed and x = 0. */
  readonly coefficient: number;
  /** k [-] of the speed ratio. */
  readonly exponent: number;
  /** b1 and b2 of ln g = b1 x + b2 x^2; empty where power does not go with flow. */
  readonly flowTerms: readonly number[];
}

/** Made by `fitPowerLaw` alone. Plain JSON: stored as fitted, reloaded bit for bit. */
export interface PowerLaw extends SpeedLaw {
  /** `exponent`: F is 0 and k is fitted; `fixed-loss`: k is 3 and F is fitted, or assumed at one speed. */
  readonly law: 'exponent' | 'fixed-loss';
  /** True where the points are all of one speed, so that k and F are assumed. */
  readonly exponentAssumed: boolean;
  /** Laws that the points allow besides the chosen one; outside the entered speeds each counts. */
  readonly alternatives: readonly SpeedLaw[];
  /** Least and greatest speed ratio [-] of the points. */
  readonly speedRange: { readonly min: number; readonly max: number };
  /** Largest flow of the points reduced to full speed [m3/s], the unit of q; null where no law goes with flow. */
  readonly flowScale: number | null;
  /** Mean q of the points with flow, where x = 0; null where no law goes with flow. */
  readonly flowCentre: number | null;
  /** Least and greatest q of the points with flow; null where no law goes with flow. */
  readonly flowRange: { readonly min: number; readonly max: number } | null;
  /** [W] */
  readonly standbyPower: number;
  /** Of ln(P - standby) under the chosen law. */
  readonly r2: number | null;
  /** Of ln(P - standby), with `degreesOfFreedom`: about the relative error of P - standby. */
  readonly standardError: number | null;
  readonly degreesOfFreedom: number;
}

/** Where a pump runs: flow of one pump [m3/s], 0 or more; speed ratio [-], 0 or more. */
export interface PowerPlace {
  readonly flow: number;
  readonly speedRatio: number;
}

/** Speeds and flows this near to an end of the entered ones are inside (relative). */
const SAME_END = 1e-9;

/**
 * The electrical power [W] at a flow Q and a speed ratio r by the chosen law:
 * P = standby + (F + c r^k) g(x), ln g = b1 x + b2 x^2, x = q - q0, q = (Q/r)/flowScale.
 * Beyond the entered flows g goes on along its tangent where power rises outward, and is held where it falls.
 * A pump that stands still draws its standby power.
 */
export function powerAt(law: PowerLaw, { flow, speedRatio }: PowerPlace): number {
  if (speedRatio === 0) return law.standbyPower;
  const { held, tangent } = flowFactors(law, law.flowTerms, flow / speedRatio);
  return law.standbyPower + atSpeed(law, speedRatio) * Math.max(held, tangent);
}

/**
 * The least and the greatest electrical power [W] that the entered points leave open at a flow and a speed: of the chosen
 * law inside the entered speeds, of all laws outside them, each with g held and as tangent beyond the entered flows, the
 * tangent never below 0. Both ends equal `powerAt` where nothing is open.
 */
export function powerInterval(
  law: PowerLaw,
  { flow, speedRatio }: PowerPlace,
): { readonly low: number; readonly high: number } {
  if (speedRatio === 0) return { low: law.standbyPower, high: law.standbyPower };
  const laws: readonly SpeedLaw[] =
    speedEndPassed(law, speedRatio) !== null ? [law, ...law.alternatives] : [law];
  const powers = laws.flatMap((one) => {
    const { held, tangent } = flowFactors(law, one.flowTerms, flow / speedRatio);
    return [held, tangent].map((factor) => law.standbyPower + atSpeed(one, speedRatio) * factor);
  });
  return { low: Math.min(...powers), high: Math.max(...powers) };
}

/** k [-] of the law whose exponent is fitted, chosen or not; 3 where all points are of one speed. */
export const fittedExponent = ({ law, exponent, exponentAssumed, alternatives }: PowerLaw): number =>
  law === 'exponent' || exponentAssumed ? exponent : (alternatives[0]?.exponent ?? exponent);

/** The entered speed ratio that a speed ratio lies beyond; null where it lies between them. */
export const speedEndPassed = ({ speedRange }: PowerLaw, speedRatio: number): number | null =>
  endPassed(speedRange, speedRatio);

/** The entered flow at full speed [m3/s] that a flow at full speed lies beyond; null where it lies between them, or where no law goes with flow. */
export function flowEndPassed({ flowScale, flowRange }: PowerLaw, fullSpeedFlow: number): number | null {
  if (flowScale === null || flowRange === null) return null;
  return endPassed({ min: flowRange.min * flowScale, max: flowRange.max * flowScale }, fullSpeedFlow);
}

function endPassed({ min, max }: PowerLaw['speedRange'], value: number): number | null {
  if (value < min * (1 - SAME_END)) return min;
  return value > max * (1 + SAME_END) ? max : null;
}

/** F + c r^k [W]. */
const atSpeed = ({ fixedPower, coefficient, exponent }: SpeedLaw, speedRatio: number): number =>
  fixedPower + coefficient * speedRatio ** exponent;

/** g held at the nearest entered flow, and along its tangent there, which is never below 0; equal between the entered flows. */
function flowFactors(
  { flowScale, flowCentre, flowRange }: PowerLaw,
  [linear = 0, quadratic = 0]: readonly number[],
  fullSpeedFlow: number,
): { readonly held: number; readonly tangent: number } {
  if (flowScale === null || flowCentre === null || flowRange === null) return { held: 1, tangent: 1 };
  const q = fullSpeedFlow / flowScale;
  const end = Math.min(flowRange.max, Math.max(flowRange.min, q));
  const x = end - flowCentre;
  const held = Math.exp(x * (linear + x * quadratic));
  const logSlope = linear + 2 * quadratic * x;
  return { held, tangent: Math.max(0, held * (1 + logSlope * (q - end))) };
}
