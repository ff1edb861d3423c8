/** When an outlet gets less than it needs, if things go on as they do. */
import { at } from '../../curves/at.ts';
import { limitingTotal } from '../network/limiting-total.ts';
import type { System } from '../network/system.ts';
import type { Assessed } from './assess-series.ts';
import { lastCycle } from './current-series.ts';
import { leadingTrend, meeting } from './extrapolated-trend.ts';
import type { Predicted } from './predicted.ts';
import { isSure, MS_PER_YEAR } from './residual-trend.ts';
import { crossedAt } from './threshold-crossing.ts';

/** Instants [ms]. */
export interface Shortfall {
  readonly outlet: string;
  readonly at: number;
  /** Of 95 %; null: not within the horizon. */
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
 * else of the total flow, required then being the total at which the outlet gets just enough. Where no total was measured,
 * outlets that were not measured are not told of. An outlet that is short now is so since its readings crossed the line.
 * Null where no outlet has a requirement, none falls within ten years, or flow suffices and no fall is told from noise at 99.9 %.
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
  const slope = one.trend !== null && isSure(one.trend) && one.trend.slope < 0 ? one.trend.slope : null;
  const years = slope === null || level >= 0 ? null : level / slope;
  return when === null ? [] : [{ outlet, ...when, years }];
}

/** When the residual falls to a level: when it did, where it is below now, else when its trend leads there. */
function crossing(one: Assessed, level: number): Pick<Shortfall, 'at' | 'interval'> | null {
  if (one.residual < level) {
    const crossed = crossedAt(lastCycle(one), level);
    return crossed === null
      ? null
      : { at: crossed.at, interval: { earliest: crossed.earliest, latest: crossed.latest } };
  }
  const leading = leadingTrend(one);
  if (leading === null || leading.trend.slope >= 0 || !isSure(leading.trend)) return null;
  const now = leading.points.at(-1)?.time ?? 0;
  const met = meeting(leading, level);
  if (met === null || met.at > now + HORIZON_YEARS * MS_PER_YEAR) return null;
  const { at: expected, earliest, latest } = met;
  const isBeyond = latest === null || latest > now + HORIZON_YEARS * MS_PER_YEAR;
  return { at: expected, interval: { earliest, latest: isBeyond ? null : latest } };
}
