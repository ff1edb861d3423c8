/** The zero of a monotone function between two ends, by bisection that takes inverse parabolas where they are safe. */

const LIMIT = 200;
const RELATIVE = 1e-13;
const SMALLEST = 1e-16;

/** A place and the value of the function there. */
export type Point = readonly [x: number, f: number];

/** Fraction of the bracket to step (Chandrupatla 1997): the inverse parabola where it is monotone, else one half. */
function fraction([x1, f1]: Point, [x2, f2]: Point, [x3, f3]: Point): number {
  const xi = (x1 - x2) / (x3 - x2);
  const phi = (f1 - f2) / (f3 - f2);
  if (!(phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi)) return 0.5;
  return (f1 / (f2 - f1)) * (f3 / (f2 - f3)) + ((x3 - x1) / (x2 - x1)) * (f1 / (f3 - f1)) * (f2 / (f3 - f2));
}

/** Where `f` changes sign between two points of unlike sign, within RELATIVE and SMALLEST; the first step is the chord. */
export function crossing(f: (x: number) => number, low: Point, high: Point): number {
  let b = low;
  let a = high;
  if (a[1] === 0) return a[0];
  if (b[1] === 0) return b[0];
  if (Math.sign(a[1]) === Math.sign(b[1])) throw new Error(`no crossing between ${low[0]} and ${high[0]}`);
  let step = a[1] / (a[1] - b[1]);
  for (let count = 0; count < LIMIT; count += 1) {
    const at = a[0] + step * (b[0] - a[0]);
    const value: Point = [at, f(at)];
    const sameSide = Math.sign(value[1]) === Math.sign(a[1]);
    const c = sameSide ? a : b;
    if (!sameSide) b = a;
    a = value;
    const best = Math.abs(a[1]) < Math.abs(b[1]) ? a[0] : b[0];
    const share = (RELATIVE * Math.abs(best) + SMALLEST) / Math.abs(b[0] - a[0]);
    if (share > 0.5 || value[1] === 0) return best;
    step = Math.min(1 - share, Math.max(share, fraction(a, b, c)));
  }
  throw new Error('the bracket did not close');
}

/** The zero of an increasing function that starts from a point below it (or at it), its other end found by doubling steps. */
export function zeroFrom(f: (x: number) => number, start: Point, firstStep: number): number {
  let near = start;
  let step = start[1] <= 0 ? firstStep : -firstStep;
  if (start[1] === 0) return start[0];
  for (let count = 0; count < LIMIT; count += 1) {
    const x = start[0] + step;
    const far: Point = [x, f(x)];
    if (Math.sign(far[1]) !== Math.sign(start[1])) return crossing(f, near, far);
    near = far;
    step *= 2;
  }
  throw new Error('no sign change found');
}
