/** Cuts the runs of phases into blocks of mean power, for a bill. */
import { MS_PER_MINUTE } from '../calendar/zone-offsets.ts';
import type { Block } from './block.ts';
import type { PhasePlan, SchedulePlan } from './phase-plan.ts';
import type { PhaseRun } from './phase-starts.ts';
import { planAt } from './plan-at.ts';
import { type MeanDuty, RAMP_PIECES, rampMeans } from './ramp.ts';
import { type KnownPlans, type Prices, volumeRun } from './volume-run.ts';

/** What is remembered between runs that are alike. */
export interface Memory {
  /** By place of the phase [-]. */
  readonly volumes: Map<number, KnownPlans>;
  /** By phase, setting before and setting after. */
  readonly ramps: Map<string, readonly MeanDuty[]>;
}

/** Remembers nothing yet. */
export const newMemory = (): Memory => ({ volumes: new Map(), ramps: new Map() });

/** The plans of volumes that are remembered of a phase, by its place [-]. */
export const volumesOf = ({ volumes }: Memory, phase: number): KnownPlans => {
  const known = volumes.get(phase) ?? new Map();
  volumes.set(phase, known);
  return known;
};

/**
 * Blocks of one run. A ramp begins at `before`, the setting of the run before it [% of full], null where there is
 * none; pulses enter by the time mean of their two powers.
 */
export function runBlocks(
  plan: SchedulePlan,
  { run, before }: { readonly run: PhaseRun; readonly before: number | null },
  prices: Prices,
  memory: Memory,
): readonly Block[] {
  const one = planAt(plan, run.phase);
  if (one.volume !== null) return volumeRun(one, run, prices, volumesOf(memory, run.phase)).blocks;
  const { own, other, phase } = one;
  const share = phase.pulse?.share ?? 0;
  const mean = (of: 'flow' | 'power') =>
    other === null ? own.duty[of] : (1 - share) * own.duty[of] + share * other.duty[of];
  const steady = { setting: own.setting, flow: mean('flow'), power: mean('power') };
  const rampEnd = run.from + (phase.rampMinutes ?? 0) * MS_PER_MINUTE;
  if (before === null || rampEnd === run.from || before === own.setting) {
    return [{ from: run.from, until: run.until, ...steady }];
  }
  const { min } = plan.station.pump.entered.settings;
  const from = Math.max(before, min);
  const key = `${run.phase} ${from} ${own.setting}`;
  const means = memory.ramps.get(key) ?? rampMeans({ from, to: own.setting }, one.dutyAt);
  memory.ramps.set(key, means);
  const width = (rampEnd - run.from) / RAMP_PIECES;
  const pieces = means.flatMap((duty, piece) => {
    const start = run.from + piece * width;
    const end = Math.min(start + width, run.until);
    return start < end ? [{ from: start, until: end, setting: own.setting, ...duty }] : [];
  });
  return rampEnd < run.until ? [...pieces, { from: rampEnd, until: run.until, ...steady }] : pieces;
}

/** The setting [% of full] that a run ends at. */
export function lastSetting(plan: SchedulePlan, run: PhaseRun, prices: Prices, memory: Memory): number {
  const one = planAt(plan, run.phase);
  if (one.volume === null) return lastOfPulses(one, run);
  const { blocks } = volumeRun(one, run, prices, volumesOf(memory, run.phase));
  return blocks.at(-1)?.setting ?? one.own.setting;
}

/** Each period of a pulse ends in its other part; a run may end before that. */
function lastOfPulses({ own, other, phase: { pulse } }: PhasePlan, { from, until }: PhaseRun): number {
  if (pulse === undefined || other === null) return own.setting;
  const period = pulse.periodMinutes * MS_PER_MINUTE;
  const rest = (until - from) % period;
  return rest === 0 || rest > (1 - pulse.share) * period ? other.setting : own.setting;
}
