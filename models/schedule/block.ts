/** Describes a stretch of time at one setting, or at the mean of some. */
import type { Interval } from '../calendar/civil-year.ts';

export interface Block extends Interval {
  /** [%]; 0 is stopped. */
  readonly setting: number;
  /** Time means [m3/s, W]. */
  readonly flow: number;
  readonly power: number;
}
