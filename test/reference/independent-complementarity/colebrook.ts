/** Colebrook-White solved by Newton's steps on 1/sqrt(f), which the many pipes of invented loops need. */
import type { Conditions } from '../independent/friction.ts';

const STEPS = 30;
/** A relative step so small ends the solution; the next would be its square. */
const SMALL = 1e-9;

/** f of x = -2 log10(e/(3.7 D) + 2.51 x/Re), x = 1/sqrt(f). */
export function colebrookByNewton({ reynolds, relativeRoughness }: Conditions): number {
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
