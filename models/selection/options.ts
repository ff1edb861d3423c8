/** States what a caller may demand of a selection, and the defaults. */
import type { HeatTerms } from '../duty/heat.ts';
import type { LifeCycleTerms } from '../money/candidate-life-cycle.ts';

/** What a setting is limited by. */
export interface Limits {
  /** Highest velocity through the slots of a part-clogged intake screen [m/s]; null: not judged. */
  readonly throughSlotVelocity: number | null;
  /** Share of the open area of a screen that is clogged [-], 0 up to, not including, 1. */
  readonly cloggedFraction: number;
  /** Which velocity of a screen rejects: its mean, or that of its busiest slots. */
  readonly screenBasis: 'mean' | 'peak';
  /** Velocity in a pipe above which a caution is given [m/s]. */
  readonly pipeVelocity: number;
  /** Wire-to-water efficiency above which the entered points cannot be right [-]. */
  readonly efficiency: number;
  /** Whether a pump whose NPSH is not met is rejected. */
  readonly npsh: boolean;
  /** Whether a duty beyond 1.1 times the largest entered flow is accepted. */
  readonly extrapolation: boolean;
}

/** 0.1524 m/s (0.5 ft/s): 40 CFR 125.84(b)(2), written for swimming fish, used as a borrowed yardstick. */
export const THROUGH_SLOT_VELOCITY = 0.1524;

export const DEFAULT_LIMITS: Limits = {
  throughSlotVelocity: THROUGH_SLOT_VELOCITY,
  cloggedFraction: 0.5,
  screenBasis: 'mean',
  pipeVelocity: 1.5,
  efficiency: 0.85,
  npsh: false,
  extrapolation: false,
};

export type Balancing = 'as-built' | 'trimmed';

/** Facts of the site and the running of the pump that a selection is priced by. */
export interface Running {
  /** How the water is kept at its temperature; undefined: not asked. */
  readonly heat?: HeatTerms | undefined;
  /** Undefined: candidates rank by what their energy costs, else by their life-cycle cost. */
  readonly lifeCycle?: LifeCycleTerms | undefined;
  /** [money/kWh]; null where no price is known. May be negative. */
  readonly price: number | null;
  /** Hours a day at the chosen setting [h], 0..24; the rest on standby. */
  readonly hoursPerDay: number;
  /** Of the site above sea level [m]. */
  readonly elevation: number;
}
