/** Brings the readings of a day together. */
import { median } from '../../curves/theil-sen.ts';
import type { Gauge } from '../readings/measure.ts';

/** One thing read once: `residual` is ln(measured/predicted), of a pressure (measured - predicted)/(rho g predicted head). */
export interface GaugeValue {
  /** [days] since 1970. */
  readonly time: number;
  /** Of the site's calendar. */
  readonly day: number;
  readonly residual: number;
  /** At the setting of the reading, SI. */
  readonly predicted: number;
  /** rho g times the head predicted there [Pa]. */
  readonly headPressure: number;
}

/** The medians of a day. */
export interface DayValue extends GaugeValue {
  readonly readingCount: number;
}

export interface Series {
  readonly gauge: Gauge;
  /** In the order of time. */
  readonly values: readonly DayValue[];
}

/**
 * One value a day, so that many readings of one day do not count as many days.
 *
 * @param values in the order of time.
 * @param cut instant [days] that parts its day in two, as a cleaning does.
 */
export function daysOf(values: readonly GaugeValue[], cut: number): readonly DayValue[] {
  const days: DayValue[] = [];
  for (let first = 0, next = 1; first < values.length; next += 1) {
    const [start, end] = [values[first], values[next]];
    if (start === undefined) break;
    if (end !== undefined && end.day === start.day && end.time >= cut === start.time >= cut) continue;
    const own = values.slice(first, next);
    days.push({
      ...{ day: start.day, time: own[Math.floor(own.length / 2)]?.time ?? start.time },
      residual: median(own.map(({ residual }) => residual)),
      predicted: median(own.map(({ predicted }) => predicted)),
      headPressure: median(own.map(({ headPressure }) => headPressure)),
      readingCount: own.length,
    });
    first = next;
  }
  return days;
}

export const residualsOf = (values: readonly DayValue[]): readonly number[] =>
  values.map(({ residual }) => residual);

export const timesOf = (values: readonly DayValue[]): readonly number[] => values.map(({ time }) => time);
