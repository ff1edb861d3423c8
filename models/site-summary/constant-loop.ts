/** Finds the figures of a loop that runs alike all day at the setting of its pump. */
import { HOURS_PER_DAY } from '../calendar/time-factors.ts';
import { annualUse } from '../duty/energy.ts';
import { estimateDuty, exactDuty, sampleLoop } from '../duty/sampled-loop.ts';
import { limitsOf } from '../loop/limits.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { hasRequirement, outletFigures } from '../network/margins.ts';
import { pumpAtSetting } from '../pump/pump-at-setting.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { type Ranked, select } from '../selection/select.ts';
import {
  type InstalledStation,
  type LoopFigures,
  type Saved,
  type Saving,
  savedBy,
  shortOutlet,
  worthOfSaved,
  type YearUse,
} from './loop-figures.ts';

export interface ConstantTerms {
  /** [money/kWh]; null: not known. */
  readonly price: number | null;
  /** Of the site [m]. */
  readonly elevation: number;
}

/**
 * What the installed pumps use at their setting, and what the same requirement would take: of them at the lowest
 * feasible setting, and of the best of the candidates, one of each, by the rules of a selection.
 *
 * Where the present setting leaves an outlet below its required flow, other pumps are compared with the feasible
 * setting; where there is none, nothing is like for like and no saving is given.
 * Errors: throws `SolveFailure` where network or search reach a limit.
 */
export function constantLoop(
  loop: CompiledLoop,
  installed: InstalledStation,
  candidates: readonly PumpModel[],
  { price, elevation }: ConstantTerms,
): LoopFigures {
  const sampled = sampleLoop(loop);
  const at = pumpAtSetting(installed.pump, installed);
  const duty = exactDuty(sampled, at, estimateDuty(sampled, at, sampled.required?.flow));
  const running = { price, elevation, hoursPerDay: HOURS_PER_DAY };
  const standbyPower = installed.count * installed.pump.entered.standbyPower;
  const now = annualUse({ ...running, power: duty.power, standbyPower });
  const short = shortOutlet(outletFigures(loop.system.outlets, duty.outletFlows), null);
  const figures = { ...now, power: duty.power, short, hasRequirement: hasRequirement(loop.system.outlets) };
  if (!figures.hasRequirement) return { ...figures, aboveNeed: null, otherPump: null };
  const { ranking } = select({
    sampled,
    candidates: [installed, ...candidates.map((pump) => ({ pump, count: 1 }))],
    limits: limitsOf(loop.entered.limits),
    running,
  });
  const serving = ranking.find(({ candidate }) => candidate === 0);
  const compared = short === null ? now : serving;
  const other = ranking.find(({ candidate }) => candidate !== 0);
  return {
    ...figures,
    aboveNeed: short === null ? lowered(now, installed, serving) : null,
    otherPump: compared === undefined ? null : otherSaving(compared, other),
  };
}

function lowered(now: YearUse, installed: InstalledStation, serving: Ranked | undefined): Saved | null {
  if (serving === undefined || serving.duty.setting >= installed.setting) return null;
  return { setting: serving.duty.setting, ...savedBy(now, serving) };
}

function otherSaving(compared: YearUse, other: Ranked | undefined): Saving | null {
  if (other === undefined) return null;
  const saved = savedBy(compared, other);
  if (!(worthOfSaved(saved) > 0)) return null;
  // The first candidate of the selection is the pump that is there.
  return { candidate: other.candidate - 1, count: 1, setting: other.duty.setting, ...saved };
}
