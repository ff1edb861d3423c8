/** A loop as its user describes it, in SI: one intake, one pump position, its pipework and outlets. */

import type { WaterState } from '../physics/water.ts';
import type { HolePattern } from './open-fraction.ts';

/** Bore [m] and absolute roughness [m] of a pipe that is not a standard size. */
export interface PipeBore {
  readonly insideDiameter: number;
  readonly roughness?: number | undefined;
}

/** Every element acts on the flow of its run; `diameter` [m] is the bore its velocity is taken in. */
export type RunElement =
  | { readonly pipe: string | PipeBore; readonly length: number }
  | { readonly fitting: string; readonly count?: number | undefined; readonly diameter?: number | undefined }
  | {
      readonly valve: string | { readonly kv: number } | { readonly cv: number };
      readonly opening?: number | undefined;
      readonly diameter?: number | undefined;
    }
  | { readonly lossCoefficient: number; readonly diameter?: number | undefined }
  | {
      readonly equivalentLength: number;
      readonly diameter?: number | undefined;
      readonly roughness?: number | undefined;
    }
  | { readonly loss: { readonly head: number; readonly flow: number } };

/** What a stream must still do far away: at `distance` [m] on its axis move at `velocity` [m/s]. */
export interface Reach {
  readonly distance: number;
  readonly velocity: number;
}

/** Where water leaves: flows in m3/s, lengths in m. `requiredFlow` 0 means closed when flows are trimmed. */
export interface Outlet {
  readonly name: string;
  readonly requiredFlow?: number | undefined;
  readonly maximumFlow?: number | undefined;
  readonly reach?: Reach | undefined;
  readonly nozzleDiameter?: number | undefined;
  readonly nozzleCount?: number | undefined;
  readonly lossCoefficient?: number | undefined;
  readonly staticHead?: number | undefined;
}

/** A run of elements that ends in an outlet or in further branches. The first branch of a `tee-90` is the straight run. */
export interface Branch {
  readonly run: readonly RunElement[];
  readonly outlet?: Outlet | undefined;
  readonly branches?: readonly Branch[] | undefined;
  readonly split?: 'tee-90' | undefined;
}

interface ScreenFace {
  /** Open area over whole area, unclogged, however its entry came: as itself, by slots or by holes. */
  readonly openFraction: number;
  /** Width of its slots [m] or diameter of its holes [m], and the pitch of either [m], where known. */
  readonly slot?: number | undefined;
  readonly hole?: number | undefined;
  readonly pitch?: number | undefined;
  readonly pattern?: HolePattern | undefined;
  /** Equal screens that share the flow. */
  readonly count: number;
}

/** Lengths in m. A box stands on one of its width x length sides, which is closed. */
export type IntakeScreen = ScreenFace &
  (
    | { readonly shape: 'cylinder'; readonly diameter: number; readonly length: number }
    | { readonly shape: 'flat'; readonly width: number; readonly length: number }
    | { readonly shape: 'box'; readonly width: number; readonly length: number; readonly height: number }
  );

export interface Intake {
  readonly lossCoefficient: number;
  readonly depth?: number | undefined;
  readonly screen?: IntakeScreen | undefined;
  /** Width [m] of the smallest animal in the tank. */
  readonly smallestAnimal?: number | undefined;
  /** Whether people can reach the intake; undefined: not known. */
  readonly reachable?: boolean | undefined;
}

/** Volume [m3], plan area [m2], lengths [m]. */
export interface Tank {
  readonly volume?: number | undefined;
  readonly area?: number | undefined;
  readonly width?: number | undefined;
  readonly depth?: number | undefined;
}

/** What stands below a return system: surface [m2], and the height [m] that its water may still rise by while the pump runs. */
export interface Basin {
  readonly area: number;
  readonly freeboard: number;
}

export interface InstalledPump {
  readonly pump: string;
  readonly count: number;
  readonly setting: number;
  readonly checkValves?: boolean | undefined;
  readonly since?: string | undefined;
}

/** Bores [m] of the pipes that the pressure gauges before and behind the pump are tapped into. */
export interface Gauges {
  readonly suctionDiameter: number;
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
  /** What the overflow of the tank carries [m3/s]. */
  readonly overflowCapacity?: number | undefined;
  readonly gauges?: Gauges | undefined;
  readonly frictionMultiplier: number;
  readonly installed?: InstalledPump | undefined;
}

/** A loop whose pipework is known. `staticHead` [m] is the rise from the surface drawn from to the surface delivered to. */
export interface PipeworkLoop extends LoopCommon {
  readonly staticHead: number;
  readonly suction: readonly RunElement[];
  readonly discharge: Branch;
}

/** An outlet of a loop whose pipework is not known takes a fixed share of the total flow. */
export interface ShareOutlet {
  readonly name: string;
  readonly share: number;
  readonly requiredFlow?: number | undefined;
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
