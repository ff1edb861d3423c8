/** Describes a stretch of time at one setting, or at the mean of some. */
import type { Interval } from '../calendar/civil-year.ts';

export interface Block extends Interval {
  /** [% of full]; 0 is stopped. */
  readonly setting: number;
  /** Time mean [m3/s]. */
  readonly flow: number;
  /** Time mean [W]. */
  readonly power: number;
}
