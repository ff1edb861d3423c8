/** An increasing implicit function whose answers are kept, so that later questions start between close ends. */
import { crossing, type Point, zeroFrom } from './crossing.ts';

const NOTABLE_GAP = 1e-4;
/** Pairs kept at most; past it answers are found but not remembered. */
const MOST_PAIRS = 3000;

/** Answers (x, y) in order of x. */
function memory(start: Point): {
  around: (x: number) => { below: Point | undefined; above: Point | undefined };
  keep: (point: Point) => void;
} {
  const pairs: Point[] = [start];
  const place = (x: number): number => {
    let low = 0;
    let high = pairs.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((pairs[middle]?.[0] ?? Number.POSITIVE_INFINITY) <= x) low = middle + 1;
      else high = middle;
    }
    return low;
  };
  return {
    around: (x) => ({ below: pairs[place(x) - 1], above: pairs[place(x)] }),
    keep: (point) => {
      if (pairs.length < MOST_PAIRS) pairs.splice(place(point[0]), 0, point);
    },
  };
}

interface Implicit {
  /** Increases with y and falls with x; the function is where it vanishes. */
  readonly residual: (y: number, x: number) => number;
  /** One pair known beforehand. */
  readonly start: Point;
  /** First step of y out of what is known. */
  readonly step: number;
}

export function remembered({ residual, start, step }: Implicit): (x: number) => number {
  const { around, keep } = memory(start);
  return (x) => {
    const { below, above } = around(x);
    if (below?.[0] === x) return below[1];
    const f = (y: number): number => residual(y, x);
    const low: Point | undefined = below && [below[1], f(below[1])];
    if (low !== undefined && low[1] >= 0) return low[0];
    const high: Point | undefined = above && [above[1], f(above[1])];
    if (high !== undefined && high[1] <= 0) return high[0];
    const known = low ?? high;
    if (known === undefined) throw new Error('nothing is remembered');
    const y =
      low && high ? crossing(f, low, high) : zeroFrom(f, known, Math.max(step, Math.abs(known[0]) / 10));
    if (!low || !high || high[0] - low[0] > NOTABLE_GAP * Math.abs(y)) keep([x, y]);
    return y;
  };
}
