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
  readonly measured: number;
  readonly predicted: number;
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
 * @param cut instant [days] that parts its day in two, as a cleaning does.
 */
export function daysOf(values: readonly GaugeValue[], cut: number): readonly DayValue[] {
  const days = new Map<string, GaugeValue[]>();
  for (const value of values) {
    const key = `${value.day} ${value.time >= cut}`;
    const known = days.get(key);
    if (known === undefined) days.set(key, [value]);
    else known.push(value);
  }
  return [...days.values()].map((own) => {
    const middle = (pick: (value: GaugeValue) => number) => median(own.map(pick));
    return {
      day: middle(({ day }) => day),
      time: middle(({ time }) => time),
      residual: middle(({ residual }) => residual),
      measured: middle(({ measured }) => measured),
      predicted: middle(({ predicted }) => predicted),
      readingCount: own.length,
    };
  });
}

export const residualsOf = (values: readonly DayValue[]): readonly number[] =>
  values.map(({ residual }) => residual);

export const timesOf = (values: readonly DayValue[]): readonly number[] => values.map(({ time }) => time);
