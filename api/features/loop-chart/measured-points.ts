/** Finds what was measured recently on a loop, as points for its chart. */
import { MS_PER_DAY } from '../../../models/calendar/zone-offsets.ts';
import type { Gauges } from '../../../models/loop/loop.ts';
import { GRAVITY } from '../../../models/physics/gravity.ts';
import { velocityRise } from '../../../models/readings/gauges.ts';
import { headOfReading } from '../../../models/readings/head-of-reading.ts';
import { READINGS } from '../../records/reading/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import type { MeasuredPoint } from './figures.ts';

/** One reading of each day of these: enough to see, and few enough to draw. */
const DAYS = 90;
/** Settings count as one within this [%]. */
const SAME_SETTING = 0.25;

interface Measured {
  readonly points: readonly MeasuredPoint[];
  /** What they change with. */
  readonly basis: unknown;
}

/** `density` [kg/m3] of the water; `setting` [%] is the one that is shown, null: none. */
export async function measuredPoints(
  store: SiteStore,
  {
    loop,
    density,
    gauges,
    setting,
    since,
  }: {
    readonly loop: string;
    readonly density: number;
    readonly gauges: Gauges | undefined;
    readonly setting: number | null;
    /** Readings before are of another pump [ms]. */
    readonly since: number;
  },
): Promise<Measured> {
  const { changes, range } = await store.of(READINGS).span(loop);
  if (range === null) return { points: [], basis: changes };
  const from = Math.max(since, range.last - DAYS * MS_PER_DAY);
  const readings = await store
    .of(READINGS)
    .sampled({ loop, from, before: range.last + 1, apart: MS_PER_DAY });
  const points = readings.flatMap((reading) => {
    const { flow } = reading;
    if (flow === undefined || flow <= 0) return [];
    const isAtSetting = setting !== null && Math.abs(reading.setting - setting) <= SAME_SETTING;
    const terms = { pressurePerHead: density * GRAVITY, rise: velocityRise(gauges, flow) };
    return [{ flow, head: headOfReading(reading, terms) ?? null, isAtSetting }];
  });
  return { points, basis: changes };
}
