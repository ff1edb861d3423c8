/** Reads back which sizes a point of a frontier is made of. */

/** A size of a list that is still to be chosen: `list` by `listsOf`, `place` in it. */
export interface ChosenSize {
  /** [-] */
  readonly list: number;
  /** [-] */
  readonly place: number;
}

/** A point of an earlier frontier, and the size that was put before it; null where none was to be chosen. */
export interface Origin {
  readonly trace: Trace;
  /** [-] */
  readonly index: number;
  readonly size: ChosenSize | null;
}

export interface Trace {
  /** The points that a point was made of [-]. */
  behind(index: number): readonly Origin[];
}

/** Writes the sizes behind a point [-] into `sizes`, the place [-] chosen of each list. */
export function readSizes(trace: Trace, index: number, sizes: number[]): void {
  const waiting: Origin[] = [{ trace, index, size: null }];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (next.size !== null) sizes[next.size.list] = next.size.place;
    waiting.push(...next.trace.behind(next.index));
  }
}
