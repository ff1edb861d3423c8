/** States what a setting must meet, and how far a duty is from it. */
import type { DutyFigures } from '../duty/duty-point.ts';

/** In the order in which answers give them. */
export const CRITERION_REASONS = [
  'gravity-suffices',
  'efficiency-impossible',
  'dead-head',
  'not-enough-head',
  'reverse-flow',
  'outside-data',
  'outlet-above-maximum',
  'screen-velocity',
  'pump-below-minimum',
  'pump-above-maximum',
  'npsh',
] as const;

export type CriterionReason = (typeof CRITERION_REASONS)[number];

/** A criterion as found at one duty. */
export interface Judgement {
  readonly reason: CriterionReason;
  /** The outlet that decides, where one does. */
  readonly outlet: string | null;
  /** Of the duty [% of full]. */
  readonly setting: number;
  /** Judged: a flow [m3/s], a velocity [m/s], a head [m] or an efficiency [-]. */
  readonly value: number;
  /** In the unit of the value [as value]. */
  readonly limit: number;
  /** Relative distance to the limit [-]: the criterion holds where it is not negative. */
  readonly clearance: number;
}

/** A criterion that a duty is judged by. */
export interface Criterion {
  readonly reason: CriterionReason;
  /** What it follows: the flow, and every outlet's with it, or the flow of one pump brought to full speed; or neither. */
  readonly by: 'flow' | 'flow-at-full-speed' | null;
  /** Where that rises with the setting: held from some setting on, up to some setting, or neither. */
  readonly along: 'from' | 'up-to' | null;
  judge(duty: DutyFigures): Judgement;
}

/** Whether a criterion holds as judged. */
export const holds = ({ clearance }: Pick<Judgement, 'clearance'>): boolean => clearance >= 0;

/** Flows count as equal within this. */
export const EQUAL = 1e-9;

/** Clearance of what either holds or does not. */
export const HOLDS = 1;
export const FAILS = -1;

/** Relative distance [-] of a value below its limit, both in one unit; the distance itself from a limit of 0. */
export const upTo = (value: number, limit: number): number =>
  limit === 0 ? -value : (limit - value) / Math.abs(limit);
/** Relative distance [-] of a value above its limit, both in one unit; the distance itself from a limit of 0. */
export const from = (value: number, limit: number): number =>
  limit === 0 ? value : (value - limit) / Math.abs(limit);
