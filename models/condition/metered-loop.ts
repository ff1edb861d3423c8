/** States what the rules of condition need to know of a loop: what its meters show, as entered and with a fault. */

/** Totals over the pumps, SI; pressures [Pa] above that of the air, null where the suction side is not known. */
export interface Shown {
  readonly flow: number;
  readonly head: number;
  readonly power: number;
  readonly suctionPressure: number | null;
  readonly dischargePressure: number | null;
  /** In the order of the outlets of the loop. */
  readonly outletFlows: readonly number[];
  /** Of the pump at no flow [m]. */
  readonly shutoffHead: number;
}

export const CLOGS = ['clogged-intake', 'clogged-discharge', 'clogged-branch'] as const;
/** Faults of the loop or its pump that have a magnitude. */
export const FAULTS = [...CLOGS, 'worn-pump', 'speed-low', 'draws-more', 'less-resistance'] as const;

export interface Fault {
  readonly cause: (typeof FAULTS)[number];
  /** Of a clogged branch: the outlets behind it, and its place in the network. */
  readonly outletNames?: readonly string[];
  readonly branch?: number;
}

/** What a fault of some magnitude shows at the installed setting. */
export interface Magnified {
  /** Of a clog its loss of flow, of a branch that of its outlets. */
  readonly magnitude: number;
  readonly shown: Shown;
}

/** What it takes to hold the flow as it was, of a clogged branch that of its outlets. */
export interface Held {
  readonly magnitude: number;
  /** At the lowest setting that holds it, else at the highest [W]. */
  readonly power: number;
  /** Flow at the highest setting over that wanted, less 1: below 0 no setting restores the flow. */
  readonly spare: number;
}

export interface MeteredLoop {
  /** [%], installed. */
  readonly setting: number;
  readonly settings: { readonly min: number; readonly max: number };
  readonly outlets: readonly { readonly name: string; readonly requiredFlow: number | null }[];
  readonly count: number;
  /** Of all pumps [W]. */
  readonly standbyPower: number;
  /** rho g [Pa/m]. */
  readonly pressurePerHead: number;
  /** Share of the head by which the pump may differ from its curve. */
  readonly headTolerance: number;
  /** Settings that are solved for in time: those read most often. */
  readonly settingsMost: number;
  /** Those that the loop can have: of a branch each. */
  readonly faults: readonly Fault[];
  /** As entered, at a setting [%]; null where no water moves. */
  shownAt(setting: number): Shown | null;
  /** By rising magnitude, up to 0.55 or more where the fault can be so large. */
  shownWith(fault: Fault): readonly Magnified[];
  /** With fewer pumps running than installed; null where no water moves. */
  shownWithPumps(running: number): Shown | null;
  /** By rising magnitude. */
  heldWith(fault: Fault): readonly Held[];
  /** The first of some outlets to get less than it requires as the total falls, and the total then [m3/s]; null where none requires any. */
  limitingTotal(
    isAsked: (outlet: string) => boolean,
  ): { readonly outlet: string; readonly flow: number } | null;
}
