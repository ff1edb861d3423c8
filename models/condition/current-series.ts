/** What of a series tells of now. */
import { MS_PER_DAY } from '../calendar/zone-offsets.ts';
import type { Assessed } from './assess-series.ts';
import type { DayPoint } from './day-points.ts';
import { PRESENT_DAYS } from './recent-window.ts';

/** The points since the last cleaning, through which the line of the trend goes. */
export const lastCycle = ({ points }: Pick<Assessed, 'points'>): readonly DayPoint[] =>
  points.filter(({ cycle }) => cycle === points.at(-1)?.cycle);

/** Series that go on to the present of the readings: what was last measured long ago says nothing of now. */
export function ofNow(assessed: readonly Assessed[]): readonly Assessed[] {
  const lastOf = ({ points }: Assessed) => points.at(-1)?.time ?? 0;
  const now = Math.max(...assessed.map(lastOf));
  return assessed.filter((one) => lastOf(one) > now - PRESENT_DAYS * MS_PER_DAY);
}
