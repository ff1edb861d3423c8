/** A falling curve through knots: monotone cubic Hermite with the slopes of Fritsch and Butland (1984). */

export interface Place {
  readonly flow: number;
  readonly head: number;
}

export interface Knot extends Place {
  /** Head per flow [m per m3/s]. */
  readonly slope: number;
}

/** A span between two neighbouring places. */
interface Chord {
  readonly width: number;
  readonly slope: number;
}

const chordsOf = (places: readonly Place[]): readonly Chord[] =>
  places.slice(1).map((later, index) => {
    const { flow, head } = places[index] ?? later;
    return { width: later.flow - flow, slope: (later.head - head) / (later.flow - flow) };
  });

/** Harmonic mean of the slopes on either side, weighted by the widths; 0 where they differ in sign. */
function innerSlope(before: Chord, after: Chord): number {
  if (before.slope * after.slope <= 0) return 0;
  const w1 = 2 * after.width + before.width;
  const w2 = after.width + 2 * before.width;
  return (w1 + w2) / (w1 / before.slope + w2 / after.slope);
}

/** Parabola through the three places at an end, kept monotone. */
function endSlope(near: Chord, next: Chord): number {
  const slope =
    ((2 * near.width + next.width) * near.slope - near.width * next.slope) / (near.width + next.width);
  if (Math.sign(slope) !== Math.sign(near.slope)) return 0;
  const turns = Math.sign(near.slope) !== Math.sign(next.slope);
  return turns && Math.abs(slope) > 3 * Math.abs(near.slope) ? 3 * near.slope : slope;
}

/** Three places or more, in order of flow. */
export function withSlopes(places: readonly Place[]): readonly Knot[] {
  const chords = chordsOf(places);
  const chord = (index: number): Chord => chords.at(index) ?? { width: Number.NaN, slope: Number.NaN };
  return places.map((place, index) => {
    if (index === 0) return { ...place, slope: endSlope(chord(0), chord(1)) };
    if (index === places.length - 1) return { ...place, slope: endSlope(chord(-1), chord(-2)) };
    return { ...place, slope: innerSlope(chord(index - 1), chord(index)) };
  });
}

function between(low: Knot, high: Knot, flow: number): number {
  const width = high.flow - low.flow;
  const t = (flow - low.flow) / width;
  const [t2, t3] = [t ** 2, t ** 3];
  const heads = (2 * t3 - 3 * t2 + 1) * low.head + (3 * t2 - 2 * t3) * high.head;
  return heads + width * ((t3 - 2 * t2 + t) * low.slope + (t3 - t2) * high.slope);
}

/** Head [m] at a flow: a parabola flat at no flow before the first knot, a straight line beyond the last. */
export function piecewiseHead(knots: readonly Knot[]): (flow: number) => number {
  const [first] = knots;
  const last = knots.at(-1);
  const lastChord = chordsOf(knots).at(-1);
  if (first === undefined || last === undefined || lastChord === undefined) throw new Error('too few knots');
  return (flow) => {
    if (flow < first.flow)
      return first.head + (first.slope * (flow ** 2 - first.flow ** 2)) / (2 * first.flow);
    if (flow >= last.flow) return last.head + Math.min(last.slope, lastChord.slope) * (flow - last.flow);
    const index = knots.findIndex((knot) => knot.flow > flow);
    const [low, high] = [knots[index - 1], knots[index]];
    if (low === undefined || high === undefined) throw new Error('no span holds the flow');
    return between(low, high, flow);
  };
}
