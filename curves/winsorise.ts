/** Draws far values in to a distance from the middle, so that a few of them do not decide. */
import { median } from './theil-sen.ts';

/** In standard deviations (Huber 1981, Robust Statistics): of normal values one in a hundred is drawn in. */
const DRAWN_IN = 2.5;
/** Standard deviation over median deviation, of normal values. */
const DEVIATION = 1.4826;
/** Values on either side whose median is the middle of a series that moves: of seven together three may be anything. */
const SIDE = 3;

const drawnIn = (value: number, middle: number, deviation: number): number =>
  Math.min(middle + DRAWN_IN * deviation, Math.max(middle - DRAWN_IN * deviation, value));

/** Mean [unit of the values] of values about one level, with a standard deviation [the same]. */
export function winsorisedMean(values: readonly number[], deviation: number): number {
  const middle = median(values);
  return values.reduce((sum, value) => sum + drawnIn(value, middle, deviation), 0) / values.length;
}

/** Values of a series that may move, drawn in to its running medians by its own deviation about them, or `least` [unit of the values]. */
export function winsorisedSeries(values: readonly number[], least: number): readonly number[] {
  const middles = values.map((_, i) => {
    const from = Math.max(0, Math.min(i - SIDE, values.length - 2 * SIDE - 1));
    return median(values.slice(from, from + 2 * SIDE + 1));
  });
  const off = values.map((value, i) => Math.abs(value - (middles[i] ?? value)));
  const deviation = Math.max(least, DEVIATION * median(off));
  return values.map((value, i) => drawnIn(value, middles[i] ?? value, deviation));
}
