/** The job of a condition computes verdict, trends and dates from the readings of a loop. */
import type { Result } from '../../../curves/result.ts';
import { MS_PER_DAY } from '../../../models/calendar/zone-offsets.ts';
import { type Condition, type ConditionQuestion, conditionOf } from '../../../models/condition/condition.ts';
import { POINTS_MOST } from '../../../models/condition/day-points.ts';
import { MEASURES } from '../../../models/condition/residuals.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import { solving, type Unsolved } from '../../../models/network/solve-failure.ts';
import type { PumpModel } from '../../../models/pump/pump-model.ts';
import { loopJob } from '../../records/loop/loop-job.ts';

export interface ConditionWork extends Omit<ConditionQuestion, 'station'> {
  readonly pump: PumpModel;
  readonly count: number;
}

export const conditionJob = loopJob<ConditionWork, Result<Condition, Unsolved>>({
  name: 'condition',
  isLong: isLongCondition,
  compute: (loop, { pump, count, ...question }) =>
    solving(() => conditionOf({ ...question, station: { loop, pump, count } })),
});

/** Readings that are judged in about 50 ms, and network solves, in branches solved. */
const LONG = { readings: 2_000, branches: 30_000 } as const;
const SOLVES = { setting: 28, gaps: 50, limit: 60, stopped: 3 * 28 } as const;

/** Pairs of days, of all that is measured, that trends compare in about 50 ms. */
const PAIRS = 450_000;

/** What is measured, outlets one by one, at most so many days each. */
function pairsOf(readings: ConditionWork['readings'], outlets: number): number {
  const days = new Set(readings.map(({ time }) => Math.floor(time / MS_PER_DAY))).size;
  const series = MEASURES.length + outlets;
  return (series * Math.min(POINTS_MOST, days) ** 2) / 2;
}

function isLongCondition({ network, system }: CompiledLoop, { readings }: ConditionWork): boolean {
  const settings = new Set(readings.map(({ setting }) => setting)).size;
  const metered = readings.some(({ outletFlows }) => outletFlows !== undefined) ? system.outlets.length : 0;
  const branches = network?.branches.length ?? 1;
  const solves = SOLVES.gaps + SOLVES.limit + SOLVES.stopped + SOLVES.setting * settings;
  const isMuch = readings.length > LONG.readings || branches * solves > LONG.branches;
  return isMuch || pairsOf(readings, metered) > PAIRS;
}
