/** The whole computation behind the condition of a loop: from readings to verdict, trends and dates. */
import type { Result } from '../../curves/result.ts';
import { type Condition, type ConditionQuestion, conditionOf } from '../../models/condition/condition.ts';
import type { LoopModel } from '../../models/loop-model.ts';
import type { PumpModel } from '../../models/pump-model.ts';
import { solving, type Unsolved } from '../../models/solve-failure.ts';

export interface ConditionWork extends Omit<ConditionQuestion, 'station'> {
  readonly pump: PumpModel;
  readonly count: number;
}

export type ConditionFigures = Condition;

export const computeCondition = (
  loop: LoopModel,
  { pump, count, ...question }: ConditionWork,
): Result<ConditionFigures, Unsolved> =>
  solving(() => conditionOf({ ...question, station: { loop, pump, count } }));

/** Readings that are judged in about 50 ms, and network solves, in branches solved. */
const LONG = { readings: 2_000, branches: 30_000 } as const;
const SOLVES = { setting: 28, gaps: 50, limit: 60, stopped: 3 * 28 } as const;

export function isLongCondition({ network }: LoopModel, { readings }: ConditionWork): boolean {
  const settings = new Set(readings.map(({ setting }) => setting)).size;
  const branches = network?.branches.length ?? 1;
  const solves = SOLVES.gaps + SOLVES.limit + SOLVES.stopped + SOLVES.setting * settings;
  return readings.length > LONG.readings || branches * solves > LONG.branches;
}
