/** Converts between instants and the clocks of a time zone by their offsets from UTC. */

/** From `at` on, until the next change, local time is UTC + `offset`. */
export interface OffsetChange {
  /** [ms since 1970-01-01T00:00Z] */
  readonly at: number;
  /** [ms] */
  readonly offset: number;
}

/**
 * The offsets of a zone over some years. `changes` rise strictly; the first is at the start of the range that is
 * known.
 */
export interface ZoneOffsets {
  readonly changes: readonly OffsetChange[];
  /** End of that range [ms since 1970-01-01T00:00Z], to which the last change holds. */
  readonly until: number;
}

export const MS_PER_MINUTE = 60_000;
export const MS_PER_DAY = 86_400_000;
export const MS_PER_HOUR = 3_600_000;

/** By how much clocks are ahead of UTC [ms] at an instant [ms]. */
export function offsetAt({ changes }: ZoneOffsets, instant: number): number {
  let offset = changes[0]?.offset ?? 0;
  for (const change of changes) {
    if (change.at > instant) break;
    offset = change.offset;
  }
  return offset;
}

/**
 * The instant [ms] at which clocks first show a local time or, where they jump over it, the first instant after the
 * jump.
 *
 * @param local the local time as if it were UTC [ms].
 */
export function instantOf({ changes, until }: ZoneOffsets, local: number): number {
  for (const [place, { at, offset }] of changes.entries()) {
    const end = changes[place + 1]?.at ?? until;
    const instant = local - offset;
    // Clocks that have passed the local time already when this offset begins have jumped over it.
    if (instant < at) return at;
    if (instant < end) return instant;
  }
  return until;
}

/** The instant [ms] at which a day of the calendar [days] begins. */
export const startOfDay = (zone: ZoneOffsets, day: number): number => instantOf(zone, day * MS_PER_DAY);

/** The day of the calendar [days] that an instant [ms] falls in. */
export const dayAt = (zone: ZoneOffsets, instant: number): number =>
  Math.floor((instant + offsetAt(zone, instant)) / MS_PER_DAY);
