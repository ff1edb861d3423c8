/** States what a pump works against: the head needed at a total flow, and what each outlet then receives. */
import type { NetworkSolution } from './solve-network.ts';

/** An outlet as a pump sees it. */
export interface SystemOutlet {
  readonly name: string;
  /** [m3/s]; null where nothing is required, 0 where the outlet may be closed. */
  readonly requiredFlow: number | null;
  /** [m3/s]; null without one. */
  readonly maximumFlow: number | null;
  /** Area that the stream leaves through [m2]; null where it is not known. */
  readonly area: number | null;
}

/** A loop at a total flow. */
export interface SystemState {
  /** Total flow [m3/s]. */
  readonly flow: number;
  /** Head needed, suction losses included [m]. */
  readonly head: number;
  /** d head/d flow [s/m2]. */
  readonly slope: number;
  /** Head lost from the surface drawn from to the pump [m]. */
  readonly suctionLoss: number;
  /** By outlet [m3/s]. */
  readonly outletFlows: readonly number[];
  /** d(outlet flow)/d(total flow), by outlet [-]. */
  readonly outletSlopes: readonly number[];
  /** The branch flows behind it; null for a loop known by its system curve alone. */
  readonly network: NetworkSolution | null;
}

export interface System {
  readonly outlets: readonly SystemOutlet[];
  /** False where a closed valve or closed outlets leave the water no way. */
  readonly passesWater: boolean;
  /** Whether every outlet's flow is known to rise with the total flow (losses at tees may break it). */
  readonly outletsRise: boolean;
  /** Whether slopes may change at once at some flow: where a valve opens, or an outlet begins to flow. */
  readonly hasKinks: boolean;
  /**
   * The state at a total flow [m3/s] of 0 or more; `near`, an earlier state, only saves time.
   * Throws `SolveFailure` where the network does not settle; undefined behaviour unless `passesWater`.
   */
  stateAt(flow: number, near?: SystemState): SystemState;
  /** Head lost from the surface drawn from to the pump [m] at a total flow; 0 where it is not known by itself. */
  suctionLossAt(flow: number): number;
}
