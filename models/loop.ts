/** A loop as its user describes it, in SI: one intake, one pump position, its pipework and outlets. */

/** Temperature [degC] 0..45; salinity [g/kg] 0..60. */
export interface WaterState {
  readonly temperature: number;
  readonly salinity: number;
}

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

/** Lengths in m; `slot` [m] is informative; `openFraction` and velocities are of the unclogged screen. */
export type IntakeScreen =
  | {
      readonly shape: 'cylinder';
      readonly diameter: number;
      readonly length: number;
      readonly openFraction: number;
      readonly slot?: number | undefined;
      readonly count: number;
    }
  | {
      readonly shape: 'flat';
      readonly width: number;
      readonly length: number;
      readonly openFraction: number;
      readonly slot?: number | undefined;
      readonly count: number;
    };

export interface Intake {
  readonly lossCoefficient: number;
  readonly depth?: number | undefined;
  readonly screen?: IntakeScreen | undefined;
}

/** Volume [m3], plan area [m2], lengths [m]. */
export interface Tank {
  readonly volume?: number | undefined;
  readonly area?: number | undefined;
  readonly width?: number | undefined;
  readonly depth?: number | undefined;
}

export interface InstalledPump {
  readonly pump: string;
  readonly count: number;
  readonly setting: number;
  readonly checkValves?: boolean | undefined;
  readonly since?: string | undefined;
}

interface LoopCommon {
  readonly name: string;
  readonly water: WaterState;
  /** Pump centreline above the surface drawn from [m]; negative is flooded. */
  readonly pumpElevation: number;
  readonly tank?: Tank | undefined;
  readonly intake?: Intake | undefined;
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
