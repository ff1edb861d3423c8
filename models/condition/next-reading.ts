/** Finds the one reading that would best tell two causes apart. */
import type { Meter } from '../loop/meter.ts';
import { accuracyOf, type Gauge, isHead, isPressure, scatterAssumed } from '../readings/measure.ts';
import type { RankedCause } from './causes.ts';
import type { MeteredLoop } from './metered-loop.ts';
import { type Signature, shownOn } from './signatures.ts';

/** Standard errors by which two causes must lie apart for a reading to be worth taking. */
const APART = 1.5;
/** Of two gauges as good as each other the first is named. */
const AS_GOOD = 0.99;

export interface NextReading {
  readonly gauge: Gauge;
  /** What each would show [m3/s, W, m or Pa]. */
  readonly expected: readonly { readonly signature: Signature; readonly value: number }[];
}

/**
 * Among gauges not read, for the likeliest cause and the next one that some gauge sets apart. Null where none does.
 *
 * @param gauges those of the signatures, the first `read` of which were read.
 */
export function nextReading(
  loop: MeteredLoop,
  [first, ...others]: readonly RankedCause[],
  {
    gauges,
    read,
    meters,
  }: { readonly gauges: readonly Gauge[]; readonly read: number; readonly meters: readonly Meter[] },
): NextReading | null {
  const entered = loop.shownAt(loop.setting);
  if (first === undefined || entered === null) return null;
  const unread = gauges.flatMap((gauge, place) => {
    const value = shownOn(loop, gauge, entered);
    const { measure } = gauge;
    // Of one reading against what is predicted.
    const tolerance = isHead(measure) ? loop.headTolerance : 0;
    const error = Math.hypot(scatterAssumed(measure), accuracyOf(meters, measure), tolerance);
    return place < read || value === null ? [] : [{ gauge, place, value, error }];
  });
  const shown = ({ signature, point }: RankedCause, { gauge, place, value }: (typeof unread)[number]) => {
    const shift = point.shifts[place] ?? 0;
    const moved = shift * loop.pressurePerHead * entered.head;
    return { signature, value: isPressure(gauge.measure) ? value + moved : value * Math.exp(shift) };
  };
  for (const other of others) {
    const apart = unread.map(
      ({ place, error }) =>
        Math.abs((first.point.shifts[place] ?? 0) - (other.point.shifts[place] ?? 0)) / error,
    );
    const most = Math.max(...apart);
    const best = unread.find((_, i) => (apart[i] ?? 0) >= AS_GOOD * most);
    if (best === undefined || most < APART) continue;
    return { gauge: best.gauge, expected: [shown(first, best), shown(other, best)] };
  }
  return null;
}
