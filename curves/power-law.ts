/** Gives the electrical power of a pump against its speed and flow, as fitted. */

/** Made by `fitPowerLaw` alone. Plain JSON: stored as fitted, reloaded bit for bit. */
export interface PowerLaw {
  /** k of the speed ratio [-]. */
  readonly exponent: number;
  /** True when the points do not settle k, and 3 (the cube law) stands in. */
  readonly exponentAssumed: boolean;
  /** Power above standby at full speed and x = 0 [W]. */
  readonly coefficient: number;
  /** Coefficients of x, then x^2, in the exponent; empty when flow is not in the fit. */
  readonly flowTerms: readonly number[];
  /** Largest flow of the points reduced to full speed [m3/s], the unit of q; null without flow terms. */
  readonly flowScale: number | null;
  /** Mean q of the points with flow, where x = 0; null without flow terms. */
  readonly flowCentre: number | null;
  /** Least and largest q of the points with flow; null without flow terms. */
  readonly flowRange: { readonly min: number; readonly max: number } | null;
  /** [W] */
  readonly standbyPower: number;
  /** Of ln(P - standby). */
  readonly r2: number | null;
  /** Of ln(P - standby), with `degreesOfFreedom`: about the relative error of P - standby. */
  readonly standardError: number | null;
  readonly degreesOfFreedom: number;
}

/**
 * The electrical power [W] at `flow` [m3/s] and `speedRatio` r [-]:
 * P = standby + c r^k exp(b1 x + b2 x^2), x = q - q0, q = (Q/r)/flowScale held at the ends of its data.
 * A pump that stands still draws its standby power.
 */
export function powerAt(
  law: PowerLaw,
  { flow, speedRatio }: { readonly flow: number; readonly speedRatio: number },
): number {
  if (speedRatio === 0) return law.standbyPower;
  return law.standbyPower + law.coefficient * speedRatio ** law.exponent * flowFactor(law, flow / speedRatio);
}

function flowFactor(
  { flowScale, flowCentre, flowRange, flowTerms }: PowerLaw,
  fullSpeedFlow: number,
): number {
  if (flowScale === null || flowCentre === null || flowRange === null) return 1;
  const held = Math.min(flowRange.max, Math.max(flowRange.min, fullSpeedFlow / flowScale));
  const x = held - flowCentre;
  const [linear = 0, quadratic = 0] = flowTerms;
  return Math.exp(x * (linear + x * quadratic));
}
