/** The Darcy friction factor with Colebrook-White solved by Newton's steps on 1/sqrt(f). */

const STEPS = 30;
/** A relative step so small ends the solution; the next would be its square. */
const SMALL = 1e-9;
const GRAVITY = 9.80665;

/** Colebrook-White at any Reynolds number: x = -2 log10(e/(3.7 D) + 2.51 x/Re), x = 1/sqrt(f). */
export function colebrook({ reynolds, relativeRoughness }: Conditions): number {
  const rough = relativeRoughness / 3.7;
  const smooth = 2.51 / reynolds;
  let x = 6;
  for (let step = 0; step < STEPS; step += 1) {
    const inside = rough + smooth * x;
    const excess = x + (2 / Math.LN10) * Math.log(inside);
    const change = excess / (1 + ((2 / Math.LN10) * smooth) / inside);
    x -= change;
    if (Math.abs(change) < SMALL * x) return 1 / x ** 2;
  }
  throw new Error('the friction factor does not settle');
}

interface Conditions {
  readonly reynolds: number;
  readonly relativeRoughness: number;
}

/** Laminar to Re 2000, Colebrook-White from 4000, a smooth step between them. */
export function frictionFactor(conditions: Conditions): number {
  const laminar = 64 / conditions.reynolds;
  if (conditions.reynolds <= 2000) return laminar;
  const turbulent = colebrook(conditions);
  if (conditions.reynolds >= 4000) return turbulent;
  const t = conditions.reynolds / 2000 - 1;
  const s = t * t * (3 - 2 * t);
  return laminar + s * (turbulent - laminar);
}

interface Pipe {
  readonly length: number;
  readonly diameter: number;
  readonly roughness: number;
  readonly viscosity: number;
}

/** Signed head loss [m] of a pipe at a signed flow [m3/s]. */
export function pipeLoss({ length, diameter, roughness, viscosity }: Pipe, flow: number): number {
  const velocity = Math.abs(flow) / ((Math.PI * diameter ** 2) / 4);
  const reynolds = (velocity * diameter) / viscosity;
  if (reynolds === 0) return 0;
  const factor = frictionFactor({ reynolds, relativeRoughness: roughness / diameter });
  return (Math.sign(flow) * factor * length * velocity ** 2) / (diameter * 2 * GRAVITY);
}
