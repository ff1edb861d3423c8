/** Finds the latest reading of a loop, and what it shows of the setpoint. */
import type { Reading } from '../../../models/readings/reading.ts';
import { type ReadingVerdict, readingState } from '../../../models/schedule/reading-state.ts';
import { oncePerObject } from '../../caches/once-per-object.ts';
import { READINGS } from '../../records/reading/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import { LATEST_WITHIN, type SteppedLoop } from './plan-cache.ts';

/** Readings that are read at once. */
const READ_AT_ONCE = 1000;

export interface LatestReading {
  readonly reading: Reading;
  readonly verdict: ReadingVerdict;
}

/** Held by an object, which what is made of it is remembered by. */
export interface Latest {
  readonly latest: LatestReading | null;
}

const NONE: Latest = { latest: null };

/** What the last question found, since the same reading is asked about until the next one comes. */
const lastOf = oncePerObject((_loop: SteppedLoop): { key: string; found: Latest } => ({
  key: '',
  found: NONE,
}));

/** The last reading of the quarter of an hour up to an instant; undefined where there is none. */
export async function readingUpTo(
  store: SiteStore,
  { loop, instant }: { readonly loop: string; readonly instant: number },
): Promise<Reading | undefined> {
  const readings = store.of(READINGS);
  let from = instant - LATEST_WITHIN;
  let last: Reading | undefined;
  for (;;) {
    const found = await readings.between({ loop, from, before: instant + 1, limit: READ_AT_ONCE });
    last = found.at(-1) ?? last;
    if (found.length < READ_AT_ONCE || last === undefined) return last;
    from = last.time + 1;
  }
}

/** What a reading shows of the setpoint of its time. Throws `SolveFailure`. */
export function latestReading(stepped: SteppedLoop, reading: Reading | undefined): Latest {
  if (reading === undefined) return NONE;
  const last = lastOf(stepped);
  const key = JSON.stringify(reading);
  if (last.key !== key) {
    const verdict = readingState(stepped.planned.plan, reading, stepped.stepAt(reading.time));
    last.found = { latest: { reading, verdict } };
    last.key = key;
  }
  return last.found;
}
