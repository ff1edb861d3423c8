/** A pump as its user enters it, in SI: points read off its curves, the settings its controller knows, its limits. */

/** Flow [m3/s], head [m] at a setting [% of full]. */
export interface HeadPoint {
  readonly flow: number;
  readonly head: number;
  readonly setting: number;
}

/** Electrical power [W] at a setting [%], at a flow [m3/s] where it was noted. */
export interface PowerPoint {
  readonly setting: number;
  readonly power: number;
  readonly flow?: number | undefined;
}

/** The grid that a controller offers: min, min + step, .. and max, all in %. */
export interface Settings {
  readonly min: number;
  readonly max: number;
  readonly step: number;
}

export interface Pump {
  readonly name: string;
  readonly ratedSpeed?: number | undefined;
  readonly headPoints: readonly HeadPoint[];
  readonly powerPoints: readonly PowerPoint[];
  readonly settings: Settings;
  /** True speed, % of full, at settings; absent: speed equals setting. */
  readonly speedMap?: readonly { readonly setting: number; readonly speed: number }[] | undefined;
  readonly standbyPower: number;
  readonly npshPoints?: readonly { readonly flow: number; readonly head: number }[] | undefined;
  readonly flowLimits?: { readonly min?: number | undefined; readonly max?: number | undefined } | undefined;
  readonly grade?: '1B' | '1E' | '1U' | '2B' | '2U' | '3B' | undefined;
  readonly mounting?: 'dry' | 'submerged' | undefined;
  readonly motorEfficiency?: number | undefined;
  readonly price?: number | undefined;
  readonly expectedLifeYears?: number | undefined;
  readonly failures?:
    | { readonly count: number; readonly devices: number; readonly years: number }
    | undefined;
  readonly service?:
    | { readonly everyMonths: number; readonly minutes: number; readonly parts: number }
    | undefined;
}
