/** The Darcy friction factor with Colebrook-White solved by plain bisection. */

const STEPS = 60;
const GRAVITY = 9.80665;

/** Colebrook-White at any Reynolds number; 1/sqrt(f) lies in 0.1..40 over every pipe that is used. */
export function colebrook({ reynolds, relativeRoughness }: Conditions): number {
  let low = 0.1;
  let high = 40;
  for (let step = 0; step < STEPS; step += 1) {
    const middle = (low + high) / 2;
    const sum = middle + 2 * Math.log10(relativeRoughness / 3.7 + (2.51 * middle) / reynolds);
    if (sum > 0) high = middle;
    else low = middle;
  }
  return 4 / (low + high) ** 2;
}

export interface Conditions {
  readonly reynolds: number;
  readonly relativeRoughness: number;
}

/** A solution of Colebrook-White. */
export type TurbulentFactor = (conditions: Conditions) => number;

/** Laminar to Re 2000, Colebrook-White from 4000, a smooth step between them. */
export function frictionFactor(conditions: Conditions, turbulentFactor: TurbulentFactor = colebrook): number {
  const laminar = 64 / conditions.reynolds;
  if (conditions.reynolds <= 2000) return laminar;
  const turbulent = turbulentFactor(conditions);
  if (conditions.reynolds >= 4000) return turbulent;
  const t = conditions.reynolds / 2000 - 1;
  const s = t * t * (3 - 2 * t);
  return laminar + s * (turbulent - laminar);
}

export interface Pipe {
  readonly length: number;
  readonly diameter: number;
  readonly roughness: number;
  readonly viscosity: number;
}

/** Signed head loss [m] of a pipe at a signed flow [m3/s]. */
export function pipeLoss(
  { length, diameter, roughness, viscosity }: Pipe,
  flow: number,
  turbulentFactor: TurbulentFactor = colebrook,
): number {
  const velocity = Math.abs(flow) / ((Math.PI * diameter ** 2) / 4);
  const reynolds = (velocity * diameter) / viscosity;
  if (reynolds === 0) return 0;
  const factor = frictionFactor({ reynolds, relativeRoughness: roughness / diameter }, turbulentFactor);
  return (Math.sign(flow) * factor * length * velocity ** 2) / (diameter * 2 * GRAVITY);
}
