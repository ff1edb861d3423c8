/** Describes a loop as its user enters it, in SI: one intake, one pump position, its pipework and outlets. */

import type { WaterState } from '../physics/water.ts';
import type { BoreChanges } from './bore-changes.ts';
import type { StatedLimits } from './limits.ts';
import type { HolePattern } from './open-fraction.ts';

/** A pipe that is not a standard size. */
export interface PipeBore {
  /** Bore [m], above 0. */
  readonly insideDiameter: number;
  /** Absolute [m]; undefined: that of smooth plastic pipe. */
  readonly roughness?: number | undefined;
}

/**
 * An element of a run, which acts on the flow of the run: a length [m] of pipe; a count [-] of fittings; a valve with
 * an opening [%] and perhaps a kv [m3/h at 1 bar] or cv [US gal/min at 1 psi]; a loss coefficient [-]; an equivalent
 * length [m] of pipe of some roughness [m]; a head [m] lost at a flow [m3/s]. `diameter` [m] is the bore its velocity
 * is taken in.
 */
export type RunElement =
  | { readonly pipe: string | PipeBore; readonly length: number }
  | { readonly fitting: string; readonly count?: number | undefined; readonly diameter?: number | undefined }
  | {
      readonly valve: string | { readonly kv: number } | { readonly cv: number };
      readonly opening?: number | undefined;
      readonly diameter?: number | undefined;
    }
  | ({ readonly lossCoefficient: number; readonly diameter?: number | undefined } & JoinsBores)
  | {
      readonly equivalentLength: number;
      readonly diameter?: number | undefined;
      readonly roughness?: number | undefined;
    }
  | ({ readonly loss: { readonly head: number; readonly flow: number } } & JoinsBores);

/** Whether a loss is that of the step between the pipes before and after it, which is then charged nothing else. */
interface JoinsBores {
  readonly boreChange?: boolean | undefined;
}

/** What a stream must still do far away. */
export interface Reach {
  /** From the nozzle on its axis [m]. */
  readonly distance: number;
  /** There [m/s]. */
  readonly velocity: number;
}

/** Where water leaves. */
export interface Outlet {
  readonly name: string;
  /** [m3/s]; 0: closed when flows are trimmed; undefined: nothing is required. */
  readonly requiredFlow?: number | undefined;
  /** [m3/s]; undefined: no maximum. */
  readonly maximumFlow?: number | undefined;
  readonly reach?: Reach | undefined;
  /** [m]; undefined: water leaves through the bore of the last pipe. */
  readonly nozzleDiameter?: number | undefined;
  /** Equal nozzles [-]; undefined: 1. */
  readonly nozzleCount?: number | undefined;
  /** [-] on the velocity in the nozzles, else in the last pipe; undefined: one velocity head. */
  readonly lossCoefficient?: number | undefined;
  /** Of this outlet above the surface that the loop delivers to [m]; undefined: 0. */
  readonly staticHead?: number | undefined;
  /** Where the water leaves: below a surface, from which it may be drawn back, or into air. Undefined: see `exitOf`. */
  readonly exit?: Exit | undefined;
}

export type Exit = 'submerged' | 'free';

/**
 * A run of elements that ends in an outlet or in further branches. The first branch of a `tee-90` is the straight
 * run.
 */
export interface Branch {
  readonly run: readonly RunElement[];
  readonly outlet?: Outlet | undefined;
  readonly branches?: readonly Branch[] | undefined;
  readonly split?: 'tee-90' | undefined;
  /** Highest point of the run above the surface drawn from [m]; undefined: not known. */
  readonly highestElevation?: number | undefined;
}

interface ScreenFace {
  /** Open area over whole area [-], unclogged, however it was entered: as itself, by slots or by holes. */
  readonly openFraction: number;
  /** Width of its slots [m], where known. */
  readonly slot?: number | undefined;
  /** Diameter of its holes [m], where known. */
  readonly hole?: number | undefined;
  /** Of slots or holes [m], where known. */
  readonly pitch?: number | undefined;
  readonly pattern?: HolePattern | undefined;
  /** Equal screens that share the flow [-]. */
  readonly count: number;
}

/** A screen with its lengths [m]. A box is closed on one of its width x length sides, on which it is fixed. */
export type IntakeScreen = ScreenFace &
  (
    | { readonly shape: 'cylinder'; readonly diameter: number; readonly length: number }
    | { readonly shape: 'flat'; readonly width: number; readonly length: number }
    | { readonly shape: 'box'; readonly width: number; readonly length: number; readonly height: number }
  );

export interface Intake {
  /** Of the entrance [-], on the velocity in the first suction pipe. */
  readonly lossCoefficient: number;
  /** Of the intake below the surface [m]. */
  readonly depth?: number | undefined;
  readonly screen?: IntakeScreen | undefined;
  /** Width of the smallest animal in the tank [m]. */
  readonly smallestAnimal?: number | undefined;
  /** Whether people can reach the intake; undefined: not known. */
  readonly reachable?: boolean | undefined;
}

/** The tank that a loop draws from. */
export interface Tank {
  /** [m3] */
  readonly volume?: number | undefined;
  /** Plan area [m2]. */
  readonly area?: number | undefined;
  /** [m] */
  readonly width?: number | undefined;
  /** [m] */
  readonly depth?: number | undefined;
}

/** What collects the water of a return system below the tank. */
export interface Basin {
  /** Of its surface [m2]. */
  readonly area: number;
  /** Height that its water may still rise by while the pump runs [m]. */
  readonly freeboard: number;
}

export interface InstalledPump {
  readonly pump: string;
  /** Equal pumps in parallel [-], 1 or more. */
  readonly count: number;
  /** [% of full] */
  readonly setting: number;
  readonly checkValves?: boolean | undefined;
  readonly since?: string | undefined;
}

/** Pipes that the pressure gauges before and behind the pump are tapped into. */
export interface Gauges {
  /** Bore [m]. */
  readonly suctionDiameter: number;
  /** Bore [m]. */
  readonly dischargeDiameter: number;
}

interface LoopCommon {
  readonly name: string;
  readonly water: WaterState;
  /** Pump centreline above the surface drawn from [m]; negative is flooded. */
  readonly pumpElevation: number;
  readonly tank?: Tank | undefined;
  readonly intake?: Intake | undefined;
  readonly basin?: Basin | undefined;
  /** How far below the tank's surface air breaks the siphon of a return when the pump stops [m]. */
  readonly siphonBreakDepth?: number | undefined;
  /** Flow that the overflow of the tank carries [m3/s]. */
  readonly overflowCapacity?: number | undefined;
  readonly gauges?: Gauges | undefined;
  /** Of the losses of pipes, fittings, valves and tees [-]; 1: as computed. */
  readonly frictionMultiplier: number;
  readonly installed?: InstalledPump | undefined;
  /** What holds in every answer about the loop that does not state otherwise. */
  readonly limits?: StatedLimits | undefined;
}

/** A loop whose pipework is known. */
export interface PipeworkLoop extends LoopCommon {
  /** Rise from the surface drawn from to the surface delivered to [m]. */
  readonly staticHead: number;
  readonly suction: readonly RunElement[];
  readonly discharge: Branch;
  /** Undefined: `BORE_CHANGES`. */
  readonly boreChanges?: BoreChanges | undefined;
}

/** An outlet of a loop whose pipework is not known: it takes a fixed share of the total flow. */
export interface ShareOutlet {
  readonly name: string;
  /** Of the total flow [-]. */
  readonly share: number;
  /** [m3/s] */
  readonly requiredFlow?: number | undefined;
  /** [m3/s] */
  readonly maximumFlow?: number | undefined;
}

/** A loop known by points of its system curve: flow [m3/s], head [m]. */
export interface SystemCurveLoop extends LoopCommon {
  readonly systemCurve: {
    readonly staticHead?: number | undefined;
    readonly points: readonly { readonly flow: number; readonly head: number }[];
  };
  readonly outlets: readonly ShareOutlet[];
}

export type Loop = PipeworkLoop | SystemCurveLoop;
