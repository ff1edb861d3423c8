/** Interpolates between knots by a cubic that runs one way wherever they do. */

/** A place on a curve: flow [m3/s], head [m], slope [m/(m3/s)]. */
export interface Knot {
  readonly flow: number;
  readonly head: number;
  readonly slope: number;
}

type Place = Pick<Knot, 'flow' | 'head'>;

/** A slope at an end that turns against the next chord is at most this many times the first chord. */
const END_LIMIT = 3;

/**
 * The places with a slope each, such that the cubic Hermite between them is monotone wherever they are.
 *
 * Inside: d = 0 where the chords m1, m2 on either side differ in sign or one is 0, else their weighted harmonic mean
 * d = (w1 + w2)/(w1/m1 + w2/m2), w1 = 2 h2 + h1, w2 = h2 + 2 h1, with h1, h2 the widths before and after. At an end
 * d = ((2 h1 + h2) m1 - h1 m2)/(h1 + h2) seen from the end, 0 where its sign differs from m1's, 3 m1 where m1 and m2
 * differ in sign and d is larger than that.
 *
 * `places`: two or more, by strictly rising flow.
 *
 * Source: Fritsch and Carlson (1980), SIAM J. Numer. Anal. 17; slopes of Fritsch and Butland (1984), SIAM J. Sci. Stat.
 * Comput. 5, as in PCHIM of the SLATEC library.
 */
export function monotoneKnots(places: readonly Place[]): readonly Knot[] {
  const chords = places.slice(1).map((after, index) => chordBetween(places[index] ?? after, after));
  return places.map((place, index) => ({ ...place, slope: slopeFor(chords, index) }));
}

interface Chord {
  readonly width: number;
  readonly slope: number;
}

function chordBetween(before: Place, after: Place): Chord {
  const width = after.flow - before.flow;
  return { width, slope: (after.head - before.head) / width };
}

function slopeFor(chords: readonly Chord[], index: number): number {
  const [before, after] = [chords[index - 1], chords[index]];
  if (before === undefined) return endSlope(after, chords[index + 1]);
  if (after === undefined) return endSlope(before, chords[index - 2]);
  if (before.slope * after.slope <= 0) return 0;
  const [w1, w2] = [2 * after.width + before.width, after.width + 2 * before.width];
  return (w1 + w2) / (w1 / before.slope + w2 / after.slope);
}

function endSlope(first: Chord | undefined, second: Chord | undefined): number {
  if (first === undefined) return 0;
  if (second === undefined) return first.slope;
  const { width: h1, slope: m1 } = first;
  const { width: h2, slope: m2 } = second;
  const slope = ((2 * h1 + h2) * m1 - h1 * m2) / (h1 + h2);
  if (slope * m1 <= 0) return 0;
  return m1 * m2 < 0 && Math.abs(slope) > END_LIMIT * Math.abs(m1) ? END_LIMIT * m1 : slope;
}

/**
 * The head [m] at a flow [m3/s] of 0 or more: the cubic Hermite between knots; before a first knot at q1 above 0
 * H1 + d1 (Q^2 - q1^2)/(2 q1), which is level at flow 0; beyond the last the line of `endSlopeOf`.
 */
export function knotsAt(knots: readonly Knot[], flow: number): number {
  const [first, last] = ends(knots);
  if (flow > last.flow) return last.head + endSlopeOf(knots) * (flow - last.flow);
  if (flow < first.flow) {
    return first.head + (first.slope * (flow ** 2 - first.flow ** 2)) / (2 * first.flow);
  }
  const { low, high, width, t } = pieceAt(knots, flow);
  const s = 1 - t;
  return (
    low.head * s * s * (1 + 2 * t) +
    high.head * t * t * (1 + 2 * s) +
    width * t * s * (low.slope * s - high.slope * t)
  );
}

/** The slope of `knotsAt` [m/(m3/s)]. */
export function knotsSlopeAt(knots: readonly Knot[], flow: number): number {
  const [first, last] = ends(knots);
  if (flow > last.flow) return endSlopeOf(knots);
  if (flow < first.flow) return (first.slope * flow) / first.flow;
  const { low, high, width, t } = pieceAt(knots, flow);
  const s = 1 - t;
  return (
    (6 * t * s * (high.head - low.head)) / width + low.slope * s * (1 - 3 * t) + high.slope * t * (3 * t - 2)
  );
}

/** The flows [m3/s] at which the curve turns: the inner knots at which the heads on both sides are lower, or higher. */
export const knotsTurn = (knots: readonly Knot[]): readonly number[] =>
  knots.flatMap(({ flow, head }, index) => {
    const [before, after] = [knots[index - 1], knots[index + 1]];
    if (before === undefined || after === undefined) return [];
    return (head - before.head) * (after.head - head) < 0 ? [flow] : [];
  });

/** Slope of the line beyond the last knot: the steeper of the slope there and the last chord, both of which fall. */
function endSlopeOf(knots: readonly Knot[]): number {
  const [, last] = ends(knots);
  const before = knots.at(-2);
  return before === undefined ? last.slope : Math.min(last.slope, chordBetween(before, last).slope);
}

function ends(knots: readonly Knot[]): readonly [Knot, Knot] {
  const [first, last] = [knots[0], knots.at(-1)];
  if (first === undefined || last === undefined) throw new Error('a curve through knots has at least one');
  return [first, last];
}

/** The piece that a flow lies in, and how far along it, 0..1. */
function pieceAt(knots: readonly Knot[], flow: number) {
  let after = 1;
  while (after < knots.length - 1 && flow > (knots[after]?.flow ?? 0)) after += 1;
  const [low, high] = [knots[after - 1], knots[after]];
  if (low === undefined || high === undefined) throw new Error('a piece lies between two knots');
  const width = high.flow - low.flow;
  return { low, high, width, t: (flow - low.flow) / width };
}
