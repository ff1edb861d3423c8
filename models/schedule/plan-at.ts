/** Reads the plan of a phase by its place in the schedule. */
import type { PhasePlan, SchedulePlan } from './phase-plan.ts';

/** The plan of the phase at a place of the schedule [-]; throws where there is none, which is a bug. */
export function planAt({ phases }: SchedulePlan, place: number): PhasePlan {
  const plan = phases[place];
  if (plan === undefined) throw new Error(`there is no phase ${place}`);
  return plan;
}
