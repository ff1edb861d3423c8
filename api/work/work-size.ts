/** How long a computation will take, told from its size. */
import type { LoopModel } from '../../models/loop-model.ts';
import { hasCheckValves } from '../../models/one-pump-down.ts';
import type { PumpModel } from '../../models/pump-model.ts';
import { gridSize } from '../../models/settings-grid.ts';

/** Network solves that one candidate, and what all candidates share, take about. */
const SOLVES = { candidate: 3, shared: 150, dutyPoint: 28, requiredDuty: 60, idlePump: 60 } as const;
/** A setting judged on samples of the loop, in branches solved: for itself, and for each branch of the loop. */
const SETTING = { own: 2.5, branch: 0.06 } as const;
/** Branches solved in about 50 ms: longer work leaves the thread that answers requests. */
const LONG = 30_000;

const branchesOf = ({ network }: LoopModel): number => network?.branches.length ?? 1;

/** Water that runs back through an idle pump is looked for on samples of the loop. */
const idleSolves = (loop: LoopModel): number => (hasCheckValves(loop) ? 0 : SOLVES.idlePump);

/** Where no bisection finds the setting, all settings of all candidates are judged. */
export function isLongSelection(loop: LoopModel, candidates: readonly PumpModel[]): boolean {
  const branches = branchesOf(loop);
  const solves = SOLVES.shared + (SOLVES.candidate + idleSolves(loop)) * candidates.length;
  const settings = candidates.reduce((sum, { pump }) => sum + gridSize(pump.settings), 0);
  return branches * solves + (SETTING.own + SETTING.branch * branches) * settings > LONG;
}

export const isLongDutyPoint = (loop: LoopModel): boolean =>
  branchesOf(loop) * (SOLVES.dutyPoint + idleSolves(loop)) > LONG;

export const isLongSystemCurve = (loop: LoopModel, points: number): boolean =>
  branchesOf(loop) * (SOLVES.requiredDuty + points) > LONG;
