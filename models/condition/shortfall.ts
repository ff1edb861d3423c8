/** When an outlet gets less than it needs, if things go on as they do. */
import type { Trend } from '../../curves/theil-sen.ts';
import { at } from '../network/linear-tree.ts';
import type { System } from '../system.ts';
import { type Assessed, lastCycle, MS_PER_YEAR, onTrend } from './assess-series.ts';
import { limitingTotal } from './limiting-total.ts';
import type { Predicted } from './predicted.ts';

/** Instants [ms]. */
export interface Shortfall {
  readonly outlet: string;
  readonly at: number;
  /** Of the two ends of the trend's interval; null: not within the horizon. */
  readonly interval: { readonly earliest: number; readonly latest: number | null };
  /** Years from the flow by the data to the shortfall, along the trend; null where that does not lead there. */
  readonly years: number | null;
}

/** Years after the last reading: what lies beyond is not foretold. */
const HORIZON_YEARS = 10;

interface Question {
  readonly assessed: readonly Assessed[];
  readonly system: System;
  /** By the data, at the installed setting. */
  readonly predicted: Pick<Predicted, 'flow' | 'outletFlows'>;
}

/**
 * The first outlet to fall short: predicted x (1 + R(t)) = required, R the trend of its own flow where that was measured,
 * else of the total flow, required then being the total at which the outlet gets just enough; the ends of the slope's interval
 * turn about the middle of the readings since the last cleaning. Where no total was measured, outlets that were not measured are not told of.
 * An outlet that is short already is so since the line crossed, or where no fall is told from noise, since all points are below.
 * Null where no outlet has a requirement, none falls within ten years, or flow suffices and no fall is told from noise.
 */
export function shortfall({ assessed, system, predicted }: Question): Shortfall | null {
  const total = assessed.find(({ measure }) => measure === 'flow');
  const ownOf = (place: number) => assessed.find(({ outlet }) => outlet === system.outlets[place]?.name);
  const found = system.outlets.flatMap(({ name, requiredFlow }, place): Shortfall[] => {
    const [own, flow] = [ownOf(place), at(predicted.outletFlows, place)];
    if (own === undefined || requiredFlow === null || requiredFlow <= 0 || flow <= 0) return [];
    return short(own, { outlet: name, level: requiredFlow / flow - 1 });
  });
  const limit =
    total === undefined ? null : limitingTotal(system, predicted.flow, (place) => ownOf(place) === undefined);
  if (total !== undefined && limit !== null) {
    found.push(...short(total, { outlet: limit.outlet, level: limit.flow / predicted.flow - 1 }));
  }
  const [first] = found.toSorted((a, b) => a.at - b.at);
  return first ?? null;
}

function short(
  one: Assessed,
  { outlet, level }: { readonly outlet: string; readonly level: number },
): Shortfall[] {
  const when = crossing(one, level);
  const slope = one.trend !== null && one.trend.interval.high < 0 ? one.trend.slope : null;
  const years = slope === null || level >= 0 ? null : level / slope;
  return when === null ? [] : [{ outlet, ...when, years }];
}

/** When the residual falls to a level. */
function crossing(one: Assessed, level: number): Pick<Shortfall, 'at' | 'interval'> | null {
  const { points, trend, residual } = one;
  const [first, last] = [lastCycle(one)[0], points.at(-1)];
  if (first === undefined || last === undefined) return null;
  const isShort = residual < level;
  const isFalling = trend !== null && trend.interval.high < 0;
  const shortSince = lastRunBelow(points, level) ?? last.time;
  const already = { at: shortSince, interval: { earliest: shortSince, latest: last.time } };
  if (trend === null || !isFalling) return isShort ? already : null;
  const horizon = last.time + HORIZON_YEARS * MS_PER_YEAR;
  const middle = (first.time + last.time) / 2;
  const meets = (slope: number): number | null => {
    const turned = turnedAbout(trend, slope, middle);
    if (slope >= 0) return null;
    const time = ((level - turned.intercept) / slope) * MS_PER_YEAR;
    return time > horizon ? null : Math.round(Math.max(first.time, time));
  };
  const expected = meets(trend.slope);
  if (isShort && (expected === null || expected > last.time)) return already;
  if (expected === null) return null;
  const ends = [meets(trend.interval.low), meets(trend.interval.high)];
  const known = ends.filter((end) => end !== null);
  const earliest = Math.min(expected, ...known);
  const latest = known.length < ends.length ? null : Math.max(expected, ...known);
  return { at: expected, interval: { earliest, latest } };
}

/** The time from which on every point is below a level; null where the last one is not. */
function lastRunBelow(points: Assessed['points'], level: number): number | null {
  const above = points.findLastIndex(({ residual }) => residual >= level);
  return points[above + 1]?.time ?? null;
}

/** A line of another slope through the same point of the trend. */
function turnedAbout(trend: Trend, slope: number, time: number): Pick<Trend, 'slope' | 'intercept'> {
  return { slope, intercept: onTrend(trend, time) - (slope * time) / MS_PER_YEAR };
}
