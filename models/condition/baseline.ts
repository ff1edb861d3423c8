/** Finds the baseline that a loop is compared with: when it begins, and when enough was read for it. */

/** Four weeks, so that it holds each day of the week alike, and so many days with readings for a mean that others can be held against. */
export const BASELINE = { days: 28, dayCount: 8 } as const;

export type StartedBy = 'request' | 'service' | 'cleaning' | 'installation' | 'first-reading';

/** [days] since 1970; `to` excluded, and of an incomplete one where it ends at the earliest. */
export interface Baseline {
  readonly from: number;
  readonly to: number;
  readonly startedBy: StartedBy;
  readonly dayCount: number;
  readonly complete: boolean;
}

export interface BaselineEvent {
  readonly time: number;
  readonly startedBy: StartedBy;
}

export interface Baselines {
  readonly current: Baseline;
  /** The one before a cleaning, while the current one is incomplete or for what the cleaning changed; null without one. */
  readonly former: Baseline | null;
}

/** A day with usable readings: its number, and when the first of them was taken [days]. */
export interface ReadDay {
  readonly day: number;
  readonly time: number;
}

const isCleaning = ({ startedBy }: BaselineEvent): boolean =>
  startedBy === 'cleaning' || startedBy === 'service';

interface History {
  /** With usable readings, in order. */
  readonly days: readonly ReadDay[];
  /** In the order of time. */
  readonly events: readonly BaselineEvent[];
  /** [days] */
  readonly now: number;
}

/**
 * The latest of request, installation, cleanings and services begins it, else the first reading; a cleaning only where the one
 * before was complete then. Null without any of them.
 */
export function baselinesOf({ days, events, now }: History): Baselines | null {
  const [first] = days;
  const stated = events.findLast((event) => !isCleaning(event) && event.time <= now);
  const read = first === undefined ? undefined : { time: first.time, startedBy: 'first-reading' as const };
  const start = stated ?? read;
  if (start === undefined) return null;
  let current = baselineFrom(start, days, now);
  let former: Baseline | null = null;
  for (const event of events) {
    if (!isCleaning(event) || event.time <= current.from || event.time > now) continue;
    if (!baselineFrom({ ...current, time: current.from }, days, event.time).complete) continue;
    former = current;
    current = baselineFrom(event, days, now);
  }
  return { current, former };
}

function baselineFrom({ time, startedBy }: BaselineEvent, days: readonly ReadDay[], now: number): Baseline {
  const read = days.filter((one) => one.time >= time && one.time < now);
  const wholeDays = (at: number | undefined) => Math.floor((at ?? time) - time);
  // Days without readings at its start are no part of it.
  const earliest = time + wholeDays(read[0]?.time) + BASELINE.days;
  const last = read[BASELINE.dayCount - 1];
  const to = Math.max(earliest, last === undefined ? now : time + wholeDays(last.time) + 1);
  const dayCount = read.filter((one) => one.time < to).length;
  return { from: time, to, startedBy, dayCount, complete: dayCount >= BASELINE.dayCount && now >= to };
}
