/** How long a computation will take, told from its size. */
import type { LoopModel } from '../../models/loop-model.ts';
import { hasCheckValves } from '../../models/one-pump-down.ts';
import type { Pump } from '../../models/pump.ts';
import type { PumpModel } from '../../models/pump-model.ts';
import { shutOutlets } from '../../models/schedule/phase-loop.ts';
import type { Schedule } from '../../models/schedule/schedule.ts';
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

/** Duties of a ramp, each a few solves. */
const RAMP = { duties: 17, solves: 4 } as const;

/** Each set of openings is sampled, each phase finds its required duty and its setting; volumes look at their whole grid. */
export function isLongPlan(
  loop: LoopModel,
  { phases, emergency }: Pick<Schedule, 'phases' | 'emergency'>,
  { settings }: Pump,
): boolean {
  const branches = branchesOf(loop);
  const openings = new Set(phases.map((phase) => JSON.stringify(shutOutlets(phase)))).size + 1;
  const ramps = phases.filter(({ rampMinutes = 0 }) => rampMinutes > 0).length;
  const volumes = phases.filter(({ volume }) => volume !== undefined).length;
  const searches =
    phases.length +
    phases.filter(({ pulse }) => pulse !== undefined).length +
    (emergency === undefined ? 0 : 1);
  const solves =
    SOLVES.shared * openings +
    (SOLVES.requiredDuty + SOLVES.candidate) * searches +
    RAMP.duties * RAMP.solves * ramps +
    SOLVES.dutyPoint;
  const judged = searches + volumes;
  return branches * solves + (SETTING.own + SETTING.branch * branches) * gridSize(settings) * judged > LONG;
}

export const isLongSystemCurve = (loop: LoopModel, points: number): boolean =>
  branchesOf(loop) * (SOLVES.requiredDuty + points) > LONG;
