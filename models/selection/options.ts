/** States what a caller may demand of a selection, and the defaults. */
import type { HeatTerms } from '../duty/heat.ts';
import type { LifeCycleTerms } from '../money/candidate-life-cycle.ts';

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
