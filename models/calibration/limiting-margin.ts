/** How far the outlet that is served last is above its requirement, and in what doubt the factors leave that. */

import { type Factors, factorOf } from '../pump/factors.ts';
import { type Assessment, covarianceBehindRatio, type LinearRow, quadraticForm } from './assess.ts';
import { slopesAt } from './linear-rows.ts';
import type { Gauge } from './measured-rows.ts';
import type { Installation, Prediction } from './prediction.ts';

export interface LimitingMargin {
  /** Null where no outlet requires a flow: then it is the total flow that is in doubt. */
  readonly outlet: string | null;
  readonly setting: number;
  /** flow/requiredFlow - 1; null without a requirement. */
  readonly margin: number | null;
  /** d margin/d factor; without a requirement that of the relative total flow. */
  readonly slopes: Factors;
}

export interface Doubt {
  readonly standardError: number;
  /** Of the margin; null without one. */
  readonly interval: { readonly low: number; readonly high: number } | null;
}

export function limitingMargin(
  { loop: { system } }: Installation,
  { setting, factors, predict }: { setting: number; factors: Factors; predict: Prediction },
): LimitingMargin {
  const gaugeOf = (outlet: string | null): Gauge => ({
    ...{ setting, outlet, shut: [], zeroFlow: false },
    measure: outlet === null ? 'flow' : 'outletFlow',
  });
  const margins = system.outlets.flatMap(({ name, requiredFlow }) =>
    requiredFlow === null || requiredFlow === 0
      ? []
      : [{ outlet: name, margin: predict(gaugeOf(name), factors) / requiredFlow - 1 }],
  );
  const [least] = margins.toSorted((a, b) => a.margin - b.margin);
  const outlet = least?.outlet ?? null;
  const relative = slopesAt(gaugeOf(outlet), factors, predict);
  const flow = 1 + (least?.margin ?? 0);
  const slopes = {
    friction: flow * relative.friction,
    head: flow * relative.head,
    power: flow * relative.power,
  };
  return { outlet, setting, margin: least?.margin ?? null, slopes };
}

/**
 * Null where what was fitted says nothing about flows: then nothing is known of the margin. Where friction over head alone is
 * told, what that leaves open of the two counts too, since it moves the shares of the outlets.
 */
export function doubtOf(
  { margin, slopes }: LimitingMargin,
  assessment: Assessment,
  rows: readonly LinearRow[],
): Doubt | null {
  if (!assessment.names.some((name) => factorOf(name) !== 'power')) return null;
  const { names, covariance } = covarianceBehindRatio(rows, assessment) ?? assessment;
  const variance = quadraticForm(
    covariance,
    names.map((name) => slopes[factorOf(name)]),
  );
  const standardError = Math.sqrt(Math.max(0, variance));
  const half = assessment.t * standardError;
  return { standardError, interval: margin === null ? null : { low: margin - half, high: margin + half } };
}
