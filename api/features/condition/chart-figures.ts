/** Takes the figures of the chart from the answer about a loop's condition. */
import { PERCENT } from '../../../curves/percent.ts';
import { isolatedName } from '../../drawing/markup/name-text.ts';
import type { ConditionFigures, Residual, ResidualSeries } from './figures.ts';

interface ReportedPoint {
  readonly time: string;
  /** A share. */
  readonly residual: number;
}

/** What the chart takes of the answer: `evidence` and `series` are of the same things in the same order. */
interface ReportedCondition {
  readonly verdict: string;
  readonly summary: string;
  readonly evidence: readonly {
    readonly trendPerYear: number | null;
    readonly interval: { readonly low: number; readonly high: number } | null;
  }[];
  readonly series: readonly {
    readonly measure: string;
    readonly outlet: string | null;
    readonly points: readonly ReportedPoint[];
    readonly line: { readonly from: ReportedPoint; readonly to: ReportedPoint } | null;
  }[];
}

/** More plots than these are not looked at: outlets come last. */
const SHOWN_MOST = 6;

const NAMES: Readonly<Record<string, string>> = {
  flow: 'flow',
  power: 'electrical power',
  head: 'head',
  suctionPressure: 'suction pressure',
  dischargePressure: 'discharge pressure',
  outletFlow: 'flow of',
};

const residualOf = ({ time, residual }: ReportedPoint): Residual => ({
  time: Date.parse(time),
  percent: PERCENT * residual,
});

function seriesOf(reported: ReportedCondition, place: number): ResidualSeries | null {
  const [one, evidence] = [reported.series[place], reported.evidence[place]];
  if (one === undefined || evidence === undefined) return null;
  const { measure, outlet, points, line } = one;
  const { trendPerYear, interval } = evidence;
  const isKnown = line !== null && trendPerYear !== null && interval !== null;
  const name = NAMES[measure] ?? measure;
  return {
    name: outlet === null ? name : `${name} ${isolatedName(outlet)}`,
    unit: measure.endsWith('Pressure') ? '% of predicted head' : '% of predicted',
    points: points.map(residualOf),
    trend: isKnown
      ? {
          from: residualOf(line.from),
          until: residualOf(line.to),
          perYear: PERCENT * trendPerYear,
          low: PERCENT * interval.low,
          high: PERCENT * interval.high,
        }
      : null,
  };
}

export function chartedCondition(reported: ReportedCondition, loopName: string): ConditionFigures {
  const series = reported.series.slice(0, SHOWN_MOST).flatMap((_, place) => seriesOf(reported, place) ?? []);
  const times = series.flatMap(({ points }) => points.map(({ time }) => time));
  return {
    loopName,
    verdict: reported.verdict.replaceAll('-', ' '),
    summary: reported.summary,
    from: times.reduce((least, time) => Math.min(least, time), times[0] ?? 0),
    until: times.reduce((most, time) => Math.max(most, time), times[0] ?? 0),
    series,
  };
}
