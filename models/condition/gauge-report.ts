/** Reports what a gauge showed lately, beside its baseline and what is predicted. */
import { serialFit } from '../../curves/serial-fit.ts';
import { studentT95Both } from '../../curves/student-t.ts';
import { median } from '../../curves/theil-sen.ts';
import { winsorisedSeries } from '../../curves/winsorise.ts';
import { type Gauge, isPressure } from '../readings/measure.ts';
import { type DayValue, residualsOf, timesOf } from './day-values.ts';
import { type Compared, changeVariance, meanOf, type Present, valuesIn } from './evidence.ts';

/** Days with readings, and days from the first to the last, that a trend takes. */
const TREND = { values: 6, days: 7 } as const;
const DAYS_PER_YEAR = 365.25;

/** Shares: of a pressure of the predicted head, else of what the baseline or the prediction gives. */
export interface GaugeReport {
  readonly gauge: Gauge;
  /** At the settings of the readings, their medians [m3/s, W, m or Pa]. */
  readonly predicted: number;
  readonly baselineValue: number | null;
  readonly measured: number;
  /** Against the baseline; null without enough on both sides. */
  readonly change: { readonly value: number; readonly standardError: number } | null;
  readonly serialCorrelation: number;
  /** Of the change in a year; null where too few days were read. */
  readonly trend: {
    readonly perYear: number;
    readonly interval: { readonly low: number; readonly high: number };
  } | null;
  readonly readingCount: number;
  readonly days: readonly Pick<DayValue, 'time' | 'residual' | 'readingCount'>[];
  /** Where a day's value lies in 95 % while nothing changes; null without a baseline. */
  readonly band: { readonly level: number; readonly low: number; readonly high: number } | null;
}

/** What a residual is as a share: the series of ratios are logarithms. */
export const shareOf = (gauge: Gauge, residual: number): number =>
  isPressure(gauge.measure) ? residual : Math.expm1(residual);

/** Null where nothing was read in the window. */
export function gaugeReport(
  one: Compared,
  {
    from,
    windowDays,
    present,
  }: { readonly from: number; readonly windowDays: number; readonly present: Present },
): GaugeReport | null {
  const { gauge, baseline, noise } = one;
  const values = valuesIn(one, present, windowDays);
  if (values.length === 0) return null;
  const [mean, predicted] = [meanOf(values, noise), median(values.map((value) => value.predicted))];
  const scale = median(values.map((value) => value.headPressure));
  const valueAt = (residual: number) =>
    isPressure(gauge.measure) ? predicted + scale * residual : predicted * Math.exp(residual);
  return {
    ...{ gauge, predicted, measured: valueAt(mean), serialCorrelation: noise.correlation },
    baselineValue: baseline === null ? null : valueAt(baseline.mean),
    change: changeOf(one, values, mean),
    trend: trendOf(one, from),
    readingCount: values.reduce((sum, { readingCount }) => sum + readingCount, 0),
    days: one.values.map(({ time, residual, readingCount }) => ({
      ...{ time, readingCount, residual: shareOf(gauge, residual) },
    })),
    band: bandOf(one),
  };
}

function changeOf(one: Compared, values: readonly DayValue[], mean: number): GaugeReport['change'] {
  const variance = changeVariance(one, values);
  if (one.baseline === null || variance === null) return null;
  const value = shareOf(one.gauge, mean - one.baseline.mean);
  const slope = isPressure(one.gauge.measure) ? 1 : 1 + value;
  return { value, standardError: slope * Math.sqrt(variance) };
}

/** y = a + b t by generalised least squares from the baseline's start on, with the noise of the series. */
function trendOf({ gauge, noise, ...series }: Compared, from: number): GaugeReport['trend'] {
  const values = series.values.filter(({ time }) => time >= from);
  const times = timesOf(values);
  const span = (times.at(-1) ?? 0) - (times[0] ?? 0);
  if (values.length < TREND.values || span < TREND.days) return null;
  const years = times.map((time) => (time - (times[0] ?? 0)) / DAYS_PER_YEAR);
  const fit = serialFit(
    {
      ...{ times, columns: [times.map(() => 1), years] },
      values: winsorisedSeries(residualsOf(values), noise.deviation),
    },
    noise.correlation,
  );
  const [perYear, variance] = [fit?.coefficients[1], fit?.inverse[1]?.[1]];
  if (perYear === undefined || variance === undefined) return null;
  const half = studentT95Both(Math.max(1, Math.floor(noise.degrees))) * noise.deviation * Math.sqrt(variance);
  const [low, middle, high] = [perYear - half, perYear, perYear + half].map((one) => shareOf(gauge, one));
  return { perYear: middle ?? 0, interval: { low: low ?? 0, high: high ?? 0 } };
}

function bandOf({ gauge, baseline, noise }: Compared): GaugeReport['band'] {
  if (baseline === null) return null;
  const half =
    studentT95Both(Math.max(1, Math.floor(noise.degrees))) *
    Math.sqrt(noise.deviation ** 2 + baseline.variance);
  const at = (residual: number) => shareOf(gauge, residual);
  return { level: at(baseline.mean), low: at(baseline.mean - half), high: at(baseline.mean + half) };
}
