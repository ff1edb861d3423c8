/** Describes a pump as its user enters it, in SI: points read off its curves, the settings of its controller, its limits. */

/** A point read off the head curve. */
export interface HeadPoint {
  /** [m3/s] of 0 or more. */
  readonly flow: number;
  /** [m] */
  readonly head: number;
  /** [% of full] */
  readonly setting: number;
}

/** A measured electrical power. */
export interface PowerPoint {
  /** [% of full] */
  readonly setting: number;
  /** [W], standby included. */
  readonly power: number;
  /** [m3/s], where it was noted. */
  readonly flow?: number | undefined;
}

/** The grid that a controller offers: min, min + step, .. and max. */
export interface Settings {
  /** [% of full] */
  readonly min: number;
  /** [% of full] */
  readonly max: number;
  /** [% of full], above 0. */
  readonly step: number;
}

export interface Pump {
  readonly name: string;
  /** Speed at 100 % [rev/min]. */
  readonly ratedSpeed?: number | undefined;
  readonly headPoints: readonly HeadPoint[];
  readonly powerPoints: readonly PowerPoint[];
  readonly settings: Settings;
  /** True speed [% of full] at settings [%]; undefined: speed equals setting. */
  readonly speedMap?: readonly { readonly setting: number; readonly speed: number }[] | undefined;
  /** Drawn while it is stopped [W], 0 or more. */
  readonly standbyPower: number;
  /** The most electrical power [W] that one pump may draw for long; undefined: not known. */
  readonly ratedPower?: number | undefined;
  /** Head required [m] at flows [m3/s], at full speed. */
  readonly npshPoints?: readonly { readonly flow: number; readonly head: number }[] | undefined;
  /** Of the flow at full speed [m3/s]; undefined: not limited. */
  readonly flowLimits?: { readonly min?: number | undefined; readonly max?: number | undefined } | undefined;
  /** Acceptance grade of ISO 9906; undefined: the points are taken as they are. */
  readonly grade?: '1B' | '1E' | '1U' | '2B' | '2U' | '3B' | undefined;
  /** Where its heat goes; undefined: taken as dry. */
  readonly mounting?: 'dry' | 'submerged' | undefined;
  /** Shaft power over electrical power [-], 0..1. */
  readonly motorEfficiency?: number | undefined;
  /** Of one [money]. */
  readonly price?: number | undefined;
  /** [years] */
  readonly expectedLifeYears?: number | undefined;
  /** `count` failures [-] seen of `devices` [-], each watched for `years` [years]. */
  readonly failures?:
    | { readonly count: number; readonly devices: number; readonly years: number }
    | undefined;
  /** Every so many months [months], with minutes of work [min] and parts [money] each time. */
  readonly service?:
    | { readonly everyMonths: number; readonly minutes: number; readonly parts: number }
    | undefined;
}
