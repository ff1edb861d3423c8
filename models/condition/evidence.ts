/** Compares the last days of each gauge with its baseline. */
import { type SerialNoise, serialNoise, stepOf, varianceOfMean } from '../../curves/serial-noise.ts';
import { winsorisedMean, winsorisedSeries } from '../../curves/winsorise.ts';
import type { Meter } from '../loop/meter.ts';
import { accuracyOf, type Gauge, isHead, SCATTER_ASSUMED, scatterAssumed } from '../readings/measure.ts';
import type { Baseline } from './baseline.ts';
import { type DayValue, residualsOf, type Series, timesOf } from './day-values.ts';

/** Days back from now: short ones see a step at once, long ones a slow change. */
const WINDOWS = [7, 14, 30, 60, 120] as const;
/** Days that a fault is taken to be looked for in, when it is said how large it must be to be seen. */
export const MONTH = 30;
const DAYS_PER_WEEK = 7;
/** Days with readings that make a mean. */
export const DAYS_LEAST = 3;
/** Share of a meter's accuracy by which its gain wanders from the baseline on. */
const WANDER = 0.25;

/** A series with its baseline and noise. */
export interface Compared extends Series {
  readonly accuracy: number;
  readonly noise: SerialNoise;
  /** Null where it was read on too few days of it. */
  readonly baseline: { readonly mean: number; readonly variance: number } | null;
}

/** What a gauge says of a change: the difference d of its mean, the variance V of that, and the degrees of freedom. */
export interface Term {
  /** Its place among the gauges. */
  readonly place: number;
  readonly difference: number;
  readonly variance: number;
  readonly degrees: number;
}

export interface Window {
  readonly days: number;
  /** At least one. */
  readonly terms: readonly Term[];
}

/** What is judged: from after an instant to now [days]. */
export interface Present {
  readonly now: number;
  readonly after: number;
}

/** @param noiseUntil values before this [days] show the noise: what a cleaning put back is none. */
export function compared(
  series: Series,
  {
    baseline,
    meters,
    noiseUntil,
  }: { readonly baseline: Baseline; readonly meters: readonly Meter[]; readonly noiseUntil: number },
): Compared {
  const between = (to: number) => series.values.filter(({ time }) => time >= baseline.from && time < to);
  const [values, seen] = [between(baseline.to), between(noiseUntil)];
  const noise = noiseOf({ ...series, values: seen.length < DAYS_LEAST ? series.values : seen }, baseline.to);
  const isLong = values.length >= DAYS_LEAST && !series.gauge.valveClosed;
  return {
    ...{ ...series, noise, accuracy: accuracyOf(meters, series.gauge.measure) },
    baseline: isLong
      ? { mean: meanOf(values, noise), variance: varianceOfMean(noise, timesOf(values)) }
      : null,
  };
}

/** About level, ramp from the baseline's end, and the step that takes half of the squares, if one does: it is a change, and no noise. */
function noiseOf({ gauge, values }: Series, baselineEnd: number): SerialNoise {
  const assumed = { deviation: scatterAssumed(gauge.measure), values: SCATTER_ASSUMED.readings };
  const data = { times: timesOf(values), values: winsorisedSeries(residualsOf(values), assumed.deviation) };
  const { times } = data;
  const level = times.map(() => 1);
  const ramp = times.map((time) => Math.max(0, time - baselineEnd));
  const later = times.filter((time) => time > baselineEnd);
  if (later.length < DAYS_LEAST) return serialNoise({ ...data, columns: [level] }, assumed);
  const day = stepOf({ ...data, ramp }, later);
  const step = day === null ? [] : [times.map((time) => (time >= day ? 1 : 0))];
  return serialNoise({ ...data, columns: [level, ramp, ...step] }, assumed);
}

export const meanOf = (values: readonly DayValue[], { deviation }: SerialNoise): number =>
  winsorisedMean(residualsOf(values), deviation);

/** The last days of a series. */
export const valuesIn = ({ values }: Series, { now, after }: Present, days: number): readonly DayValue[] =>
  values.filter(({ time }) => time >= after && time > now - days);

export const windowsOf = (all: readonly Compared[], present: Present): readonly Window[] =>
  WINDOWS.map((days) => ({ days, terms: termsIn(all, present, days) })).filter(
    ({ terms }) => terms.length > 0,
  );

/** V = 1.08 (window + baseline) + (accuracy/4)^2 of a window; null without enough on both sides. */
export const changeVariance = (
  { baseline, noise, accuracy }: Compared,
  values: readonly DayValue[],
): number | null =>
  baseline === null || values.length < DAYS_LEAST
    ? null
    : varianceOfMean(noise, timesOf(values)) + baseline.variance + (WANDER * accuracy) ** 2;

const termsIn = (all: readonly Compared[], present: Present, days: number): readonly Term[] =>
  all.flatMap((one, place): Term[] => {
    const { baseline, noise } = one;
    const values = valuesIn(one, present, days);
    const variance = changeVariance(one, values);
    if (baseline === null || variance === null) return [];
    return [{ place, variance, degrees: noise.degrees, difference: meanOf(values, noise) - baseline.mean }];
  });

/**
 * What gauges say that are new or were seldom read, in a window: against their baseline, else against what is predicted, and so with
 * the whole error of meter and entries.
 */
export const newTerms = (
  all: readonly Compared[],
  { days, terms }: Window,
  present: Present & { readonly headTolerance: number },
): readonly Term[] =>
  all.flatMap((one, place): Term[] => {
    const { gauge, baseline, accuracy, noise } = one;
    const values = valuesIn(one, present, days);
    if (values.length === 0 || terms.some((term) => term.place === place)) return [];
    const own = scatterAssumed(gauge.measure) ** 2 / values.length;
    const other =
      baseline === null
        ? entriesVariance(gauge, { accuracy, headTolerance: present.headTolerance })
        : baseline.variance + (WANDER * accuracy) ** 2;
    const difference = meanOf(values, noise) - (baseline?.mean ?? 0);
    return [{ place, difference, variance: own + other, degrees: SCATTER_ASSUMED.readings }];
  });

/** By how much a residual may differ from 0 while entries and meter are as good as they are taken to be. */
export const entriesVariance = (
  { measure }: Gauge,
  { accuracy, headTolerance }: { readonly accuracy: number; readonly headTolerance: number },
): number => accuracy ** 2 + (isHead(measure) ? headTolerance ** 2 : 0);

/** V of a difference of the last month, be it of the baseline. */
export const monthVariances = (
  all: readonly Compared[],
  now: number,
): readonly Pick<Term, 'place' | 'variance'>[] =>
  all.flatMap((one, place) => {
    const variance = changeVariance(one, valuesIn(one, { now, after: 0 }, MONTH));
    return variance === null ? [] : [{ place, variance }];
  });

/** V of a gauge that is not read yet, were it read once a week in the baseline and in a month after it. */
export function weeklyVariance({ measure }: Gauge, accuracy: number): number {
  const readings = MONTH / DAYS_PER_WEEK;
  return (2 * scatterAssumed(measure) ** 2) / readings + (WANDER * accuracy) ** 2;
}
