/** Names what the chart of a day shows, with instants in ms and the rest in SI. */
import type { UnitSystem } from '../../units/unit-system.ts';

export interface DayStep {
  readonly from: number;
  readonly until: number;
  /** What the clock of the site shows then: `07:00`. */
  readonly startsAt: string;
  /** Null where the loop has no schedule. */
  readonly phase: string | null;
  /** [%]; 0 is stopped. */
  readonly setting: number;
  readonly feasible: boolean;
  readonly flow: number;
  readonly power: number;
}

/** Money per kWh from one instant to another. */
export interface PriceStep {
  readonly from: number;
  readonly until: number;
  readonly price: number;
}

export interface DayFigures {
  readonly loopName: string;
  readonly pumpName: string;
  readonly count: number;
  readonly system: UnitSystem;
  /** `2026-01-15`. */
  readonly date: string;
  readonly timeZone: string;
  readonly from: number;
  readonly until: number;
  /** The hours that the clock of the site shows, every third, with the instant of each. */
  readonly clock: readonly { readonly at: number; readonly label: string }[];
  readonly steps: readonly DayStep[];
  /** Null where nothing is priced. */
  readonly prices: readonly PriceStep[] | null;
  readonly currency: string;
  /** [kWh] */
  readonly energy: number;
  readonly cost: number | null;
}
