/** States what a loop demands of its pumps besides the flows of its outlets, and the defaults. */

/** What a setting is limited by. */
export interface Limits {
  /** Highest velocity through the slots of a part-clogged intake screen [m/s]; null: not judged. */
  readonly throughSlotVelocity: number | null;
  /** Share of the open area of a screen that is clogged [-], 0 up to, not including, 1. */
  readonly cloggedFraction: number;
  /** Which velocity of a screen rejects: its mean, or that of its busiest slots. */
  readonly screenBasis: 'mean' | 'peak';
  /** Velocity in a pipe above which a caution is given [m/s]. */
  readonly pipeVelocity: number;
  /** Wire-to-water efficiency above which the entered points cannot be right [-]. */
  readonly maximumEfficiency: number;
  /** Whether a pump whose NPSH is not met is rejected. */
  readonly enforceNpsh: boolean;
  /** Whether a duty beyond 1.1 times the largest entered flow is accepted. */
  readonly allowExtrapolation: boolean;
  /** Whether a duty with water running backwards through an outlet is accepted. */
  readonly allowReverseFlow: boolean;
  /** What is done where gravity alone serves every outlet: say so, or reject every pump. */
  readonly gravity: 'report' | 'reject';
}

/** 0.1524 m/s (0.5 ft/s): 40 CFR 125.84(b)(2), written for swimming fish, used as a borrowed yardstick. */
export const THROUGH_SLOT_VELOCITY = 0.1524;

export const DEFAULT_LIMITS: Limits = {
  throughSlotVelocity: THROUGH_SLOT_VELOCITY,
  cloggedFraction: 0.5,
  screenBasis: 'mean',
  pipeVelocity: 1.5,
  maximumEfficiency: 0.85,
  enforceNpsh: false,
  allowExtrapolation: false,
  allowReverseFlow: false,
  gravity: 'report',
};

/** Limits of which any may be left out. */
export type StatedLimits = { readonly [Name in keyof Limits]?: Limits[Name] | undefined };

/** The limits that hold: of each the first that is stated, a request's before its loop's, else the default. */
export function limitsOf(...stated: readonly (StatedLimits | undefined)[]): Limits {
  const first = <Name extends keyof Limits>(name: Name): Limits[Name] => {
    for (const one of stated) {
      const limit = one?.[name];
      if (limit !== undefined) return limit;
    }
    return DEFAULT_LIMITS[name];
  };
  return {
    throughSlotVelocity: first('throughSlotVelocity'),
    cloggedFraction: first('cloggedFraction'),
    screenBasis: first('screenBasis'),
    pipeVelocity: first('pipeVelocity'),
    maximumEfficiency: first('maximumEfficiency'),
    enforceNpsh: first('enforceNpsh'),
    allowExtrapolation: first('allowExtrapolation'),
    allowReverseFlow: first('allowReverseFlow'),
    gravity: first('gravity'),
  };
}
