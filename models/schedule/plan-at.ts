/** Reads the plan of a phase by its place in the schedule. */
import type { PhasePlan, SchedulePlan } from './phase-plan.ts';

export function planAt({ phases }: SchedulePlan, place: number): PhasePlan {
  const plan = phases[place];
  if (plan === undefined) throw new Error(`there is no phase ${place}`);
  return plan;
}
