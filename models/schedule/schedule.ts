/** Describes the phases of a loop's day as their user enters them, in SI. */
import type { DayKind } from '../calendar/day-kind.ts';

/** A volume to move in each run of a phase, at most a day long. */
export interface VolumeDemand {
  /** [m3] */
  readonly perDay: number;
  /** Least flow while it runs [m3/s]; undefined: none. */
  readonly floor?: number | undefined;
  /** Greatest flow [m3/s]; undefined: none. */
  readonly ceiling?: number | undefined;
  readonly mayStop: boolean;
  /** Whether a slot may be shared in time by two settings. */
  readonly splits: boolean;
}

/** A part of each period is run at other flows. */
export interface Pulse {
  /** Times the flows of the loop, or of the phase's `requiredFlows` [-]. */
  readonly otherFactor: number;
  /** [min] */
  readonly periodMinutes: number;
  /** Of each period, run at those [-], 0..1. */
  readonly share: number;
}

/** Exactly one of `factor`, `requiredFlows` and `volume`. */
export interface Phase {
  readonly name: string;
  /** Wall clock, `22:00`. */
  readonly from: string;
  /** Days on which it begins; undefined: all. A holiday is none of the weekdays. */
  readonly days?: readonly DayKind[] | undefined;
  /** Times the flow that each outlet of the loop requires [-]. */
  readonly factor?: number | undefined;
  /** [m3/s] by outlet; the outlets that are not named keep their own. */
  readonly requiredFlows?: Readonly<Record<string, number>> | undefined;
  readonly volume?: VolumeDemand | undefined;
  /** [%] by outlet: 0 is shut, 100 as built. */
  readonly openings?: Readonly<Record<string, number>> | undefined;
  /** That the setting takes to change at the start of a run [min]. */
  readonly rampMinutes?: number | undefined;
  readonly pulse?: Pulse | undefined;
}

export interface Emergency {
  /** Times the flow that each outlet of the loop requires [-]. */
  readonly factor: number;
  /** What a battery gives to the pump [kWh]. */
  readonly batteryEnergy?: number | undefined;
}

export interface Schedule {
  /** Id of a tariff; null: that of the site. */
  readonly tariff: string | null;
  readonly phases: readonly Phase[];
  readonly emergency?: Emergency | undefined;
}
