/** Plans a volume without splitting slots, and finds the gap that this leaves. */
import { type Result, success } from '../../../curves/result.ts';
import {
  type Choice,
  costOf,
  planVolume,
  SAME_VOLUME,
  type Slot,
  type SlotPart,
  type VolumeOutOfReach,
  type VolumePlan,
  volumeOf,
} from './volume-plan.ts';

/** Rounds of improvement; each lowers the cost, so that few are ever needed. */
const ROUNDS = 50;
/** A change that saves less than this share of the cost saves nothing but rounding. */
const NO_SAVING = 1e-12;

interface Task {
  readonly choices: readonly Choice[];
  readonly slots: readonly Slot[];
}

/**
 * The plan of `planVolume` with its one split slot moved up to the cheapest choice that still moves the volume, then
 * slots changed one at a time while that lowers the cost.
 *
 * @param volume [m3] of 0 or more.
 * @returns `cost` less `bound` is what the whole slots may cost too much at most [money].
 * Errors: `volume-out-of-reach`.
 */
export function planWholeSlots(task: Task, volume: number): Result<VolumePlan, VolumeOutOfReach> {
  const split = planVolume(task, volume);
  if (!split.ok) return split;
  const { bound } = split.value;
  const chosen = split.value.slots.map((parts) => parts.at(-1)?.choice ?? 0);
  for (let round = 0; round < ROUNDS; round++) {
    if (!improve(task, volume, chosen)) break;
  }
  const slots = chosen.map((choice): readonly SlotPart[] => [{ choice, share: 1 }]);
  const totals = totalsOf(task, chosen);
  return success({ slots, ...totals, bound });
}

/** Makes the one change of one slot that saves most, or says that there is none. */
function improve(task: Task, volume: number, chosen: number[]): boolean {
  const now = totalsOf(task, chosen);
  let best = { slot: -1, choice: -1, saved: NO_SAVING * Math.abs(now.cost) };
  for (const [slot, current] of chosen.entries()) {
    const before = figures(task, slot, current);
    for (const choice of task.choices.keys()) {
      const after = figures(task, slot, choice);
      if (now.volume - before.volume + after.volume < volume * (1 - SAME_VOLUME)) continue;
      const saved = before.cost - after.cost;
      if (saved > best.saved) best = { slot, choice, saved };
    }
  }
  if (best.slot < 0) return false;
  chosen[best.slot] = best.choice;
  return true;
}

function figures({ choices, slots }: Task, slot: number, choice: number) {
  const [where, what] = [slots[slot], choices[choice]];
  if (where === undefined || what === undefined)
    throw new Error(`there is no choice ${choice} of slot ${slot}`);
  return { volume: volumeOf(what, where), cost: costOf(what, where) };
}

function totalsOf(task: Task, chosen: readonly number[]): { readonly volume: number; readonly cost: number } {
  let volume = 0;
  let cost = 0;
  for (const [slot, choice] of chosen.entries()) {
    const one = figures(task, slot, choice);
    volume += one.volume;
    cost += one.cost;
  }
  return { volume, cost };
}
