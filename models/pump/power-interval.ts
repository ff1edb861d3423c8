/** Finds the interval in which the entered points of pumps leave their power open. */
import { powerInterval } from '../../curves/power-law.ts';
import type { PumpFit } from './pump-model.ts';

/** The ends of what is not known of a figure. */
export interface Interval {
  /** In the unit of the figure [as stated there]. */
  readonly low: number;
  /** In the same [as stated there]. */
  readonly high: number;
}

/** Total flow [m3/s] of `count` equal pumps at a speed ratio [-]. */
export interface RunningPumps {
  readonly flow: number;
  readonly count: number;
  readonly speedRatio: number;
}

/** Least and greatest power [W] of all pumps together, standby included, that their entered points leave open: `powerInterval`. */
export function powerIntervalOf({ powerLaw }: PumpFit, { flow, count, speedRatio }: RunningPumps): Interval {
  const { low, high } = powerInterval(powerLaw, { flow: flow / count, speedRatio });
  return { low: count * low, high: count * high };
}
