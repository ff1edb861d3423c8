/** States what a setting must meet, and how far a duty is from it. */
import type { DutyFigures } from '../duty/duty-point.ts';

/** In the order in which they are told. */
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

/** A criterion as found at one duty: it holds when `clearance`, the relative distance to the limit, is not negative. */
export interface Judgement {
  readonly reason: CriterionReason;
  /** The outlet that decides, where one does. */
  readonly outlet: string | null;
  readonly setting: number;
  readonly value: number;
  readonly limit: number;
  readonly clearance: number;
}

export interface Criterion {
  readonly reason: CriterionReason;
  /** What it goes by: the flow, and every outlet's with it, or the flow of one pump brought to full speed; or neither. */
  readonly by: 'flow' | 'flow-at-full-speed' | null;
  /** Where that rises with the setting: held from some setting on, up to some setting, or neither. */
  readonly along: 'from' | 'up-to' | null;
  judge(duty: DutyFigures): Judgement;
}

export const holds = ({ clearance }: Pick<Judgement, 'clearance'>): boolean => clearance >= 0;

/** Flows count as equal within this. */
export const EQUAL = 1e-9;

/** Clearance of what either holds or does not. */
export const HOLDS = 1;
export const FAILS = -1;

/** Relative distances of a value below and above a limit, positive where the limit is kept. */
export const upTo = (value: number, limit: number): number =>
  limit === 0 ? -value : (limit - value) / Math.abs(limit);
export const from = (value: number, limit: number): number =>
  limit === 0 ? value : (value - limit) / Math.abs(limit);
