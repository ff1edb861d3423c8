/** The conditions that a duty must meet, in the order in which a rejection names those that it breaks. */
import type { IntakeScreen } from '../../../models/loop/loop.ts';
import type { Need } from '../independent/requirements.ts';
import type { Duty, FittedPump } from './duty.ts';
import { openArea } from './screen.ts';

export const REASONS = [
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
  'no-setting',
] as const;
export type Reason = (typeof REASONS)[number];

export interface Limits {
  /** m/s; null for none. */
  readonly throughSlotVelocity: number | null;
  readonly cloggedFraction: number;
  readonly maximumEfficiency: number;
  readonly allowExtrapolation: boolean;
  readonly allowReverseFlow: boolean;
  readonly gravity: 'report' | 'reject';
}

export const DEFAULT_LIMITS: Limits = {
  throughSlotVelocity: 0.1524,
  cloggedFraction: 0.5,
  maximumEfficiency: 0.85,
  allowExtrapolation: false,
  allowReverseFlow: false,
  gravity: 'report',
};

/** What a duty is judged by. */
export interface Judge {
  readonly limits: Limits;
  readonly needs: readonly Need[];
  readonly fitted: FittedPump;
  readonly count: number;
  readonly screen: IntakeScreen | undefined;
  readonly gravitySuffices: boolean;
}

const ALLOWANCE = 1e-9;

/** An outlet's flow below 0 by more than a part of the greatest flow of any outlet. */
export function isReversed(outlets: Duty['outlets']): boolean {
  const greatest = Math.max(...outlets.map(({ flow }) => Math.abs(flow)));
  return outlets.some(({ flow }) => flow < -ALLOWANCE * greatest);
}

/** Flows that requirements and maxima are compared with. */
export function meetsNeeds(
  needs: readonly Need[],
  outlets: Duty['outlets'],
): { least: boolean; most: boolean } {
  const flows = new Map(outlets.map(({ name, flow }) => [name, flow]));
  const at = (need: Need): number => flows.get(need.name) ?? Number.NaN;
  return {
    least: needs.every((need) => at(need) >= (need.required ?? -Infinity) * (1 - ALLOWANCE)),
    most: needs.every((need) => at(need) <= (need.maximum ?? Infinity) * (1 + ALLOWANCE)),
  };
}

/** Conditions that a duty breaks; at dead head the efficiency and the upper limits hold. */
export function broken(
  { limits, needs, fitted, count, screen, gravitySuffices }: Judge,
  duty: Duty,
): readonly Reason[] {
  const reduced = duty.flow / (count * duty.ratio);
  const { least, most } = meetsNeeds(needs, duty.outlets);
  const { flowLimits } = fitted.pump;
  const limit = limits.throughSlotVelocity;
  const moves = !duty.deadHead;
  const faults: Record<Exclude<Reason, 'no-setting'>, boolean> = {
    'gravity-suffices': limits.gravity === 'reject' && gravitySuffices,
    'efficiency-impossible': moves && duty.efficiency > limits.maximumEfficiency,
    'dead-head': duty.deadHead,
    'not-enough-head': moves ? !least : needs.some(({ required = 0 }) => required > 0),
    'reverse-flow': !limits.allowReverseFlow && isReversed(duty.outlets),
    'outside-data': moves && !limits.allowExtrapolation && reduced > 1.1 * fitted.head.largestFlow,
    'outlet-above-maximum': moves && !most,
    'screen-velocity':
      moves &&
      screen !== undefined &&
      limit !== null &&
      duty.flow / (openArea(screen) * (1 - limits.cloggedFraction)) > limit,
    'pump-below-minimum': reduced < (flowLimits?.min ?? 0),
    'pump-above-maximum': moves && reduced > (flowLimits?.max ?? Infinity),
  };
  return REASONS.filter((reason) => reason !== 'no-setting' && faults[reason]);
}
