/** The condition of a loop, as its answer tells it, made ready for its chart. */
import { PERCENT } from '../../../curves/percent.ts';
import { isolatedName } from '../../drawing/markup/name-text.ts';
import type { ConditionFigures, Residual, ResidualSeries } from './figures.ts';

interface ToldPoint {
  readonly time: string;
  /** A share. */
  readonly residual: number;
}

/** What the chart takes of the answer: `evidence` and `series` are of the same things in the same order. */
interface ToldCondition {
  readonly verdict: string;
  readonly summary: string;
  readonly evidence: readonly {
    readonly trendPerYear: number | null;
    readonly interval: { readonly low: number; readonly high: number } | null;
  }[];
  readonly series: readonly {
    readonly measure: string;
    readonly outlet: string | null;
    readonly points: readonly ToldPoint[];
    readonly line: { readonly from: ToldPoint; readonly to: ToldPoint } | null;
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

const residualOf = ({ time, residual }: ToldPoint): Residual => ({
  time: Date.parse(time),
  percent: PERCENT * residual,
});

function seriesOf(told: ToldCondition, place: number): ResidualSeries | null {
  const [one, evidence] = [told.series[place], told.evidence[place]];
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

export function chartedCondition(told: ToldCondition, loopName: string): ConditionFigures {
  const series = told.series.slice(0, SHOWN_MOST).flatMap((_, place) => seriesOf(told, place) ?? []);
  const times = series.flatMap(({ points }) => points.map(({ time }) => time));
  return {
    loopName,
    verdict: told.verdict.replaceAll('-', ' '),
    summary: told.summary,
    from: times.reduce((least, time) => Math.min(least, time), times[0] ?? 0),
    until: times.reduce((most, time) => Math.max(most, time), times[0] ?? 0),
    series,
  };
}
