/** States how far the outlet that is served last is above its requirement, and how surely. */
import { DEVIATE_95 } from '../../curves/theil-sen.ts';
import { type Factors, factorOf } from '../pump/factors.ts';
import { type Covariance, errorAlong, timesGradient } from './covariance.ts';
import type { Installation, Prediction } from './prediction.ts';
import { slopesAt } from './robust-fit.ts';
import type { Gauge } from './row-collector.ts';

export interface SmallestMargin {
  /** Null where no outlet requires a flow: then it is the total flow that is uncertain. */
  readonly outlet: string | null;
  readonly setting: number;
  /** flow/requiredFlow - 1; null without a requirement. */
  readonly margin: number | null;
  /** d margin/d factor; without a requirement that of the relative total flow. */
  readonly gradient: Factors;
}

export interface Uncertainty {
  readonly standardError: number;
  /** Of the margin; null without one. */
  readonly interval: { readonly low: number; readonly high: number } | null;
}

/** No pump is taken to give less of its head, and no loop to be as good as without friction, or as good as closed. */
const WITHIN = { friction: { low: 0.02, high: 1e3 }, head: { low: 0.05, high: 10 } } as const;

export function smallestMargin(
  { loop: { system } }: Installation,
  place: { readonly setting: number; readonly factors: Factors; readonly predict: Prediction },
): SmallestMargin {
  const { setting, factors, predict } = place;
  const gaugeOf = (outlet: string | null): Gauge => ({
    ...{ setting, outlet, shut: [], zeroFlow: false },
    measure: outlet === null ? 'flow' : 'outletFlow',
  });
  const [least] = system.outlets
    .flatMap(({ name, requiredFlow }) =>
      requiredFlow === null || requiredFlow === 0
        ? []
        : [{ outlet: name, margin: predict(gaugeOf(name), factors) / requiredFlow - 1 }],
    )
    .toSorted((a, b) => a.margin - b.margin);
  const outlet = least?.outlet ?? null;
  const logs = slopesAt(gaugeOf(outlet), place);
  const flow = 1 + (least?.margin ?? 0);
  const gradient = {
    friction: (flow * logs.friction) / factors.friction,
    head: (flow * logs.head) / factors.head,
    power: 0,
  };
  return { outlet, setting, margin: least?.margin ?? null, gradient };
}

const along = ({ names }: Covariance, { gradient }: SmallestMargin): readonly number[] =>
  names.map((name) => gradient[factorOf(name)]);

/** Null where what was determined says nothing about flows. */
export function uncertaintyOf(margin: SmallestMargin, covariance: Covariance): Uncertainty | null {
  if (covariance.names.every((name) => name === 'power')) return null;
  const standardError = errorAlong(covariance, along(covariance, margin));
  const half = DEVIATE_95 * standardError;
  const middle = margin.margin;
  return { standardError, interval: middle === null ? null : { low: middle - half, high: middle + half } };
}

/** theta - 1.96 C g/sqrt(g'C g): where the margin is at the low end of its interval, on the ellipse of friction and head. */
export function worstCaseOf(
  factors: Factors,
  covariance: Covariance,
  margin: SmallestMargin,
): Pick<Factors, 'friction' | 'head'> {
  const gradient = along(covariance, margin);
  const [moved, error] = [timesGradient(covariance, gradient), errorAlong(covariance, gradient)];
  const at = (wanted: 'friction' | 'head'): number => {
    const place = covariance.names.findIndex((name) => factorOf(name) === wanted);
    const step = error > 0 ? (DEVIATE_95 * (moved[place] ?? 0)) / error : 0;
    const { low, high } = WITHIN[wanted];
    return Math.min(high, Math.max(low, factors[wanted] - step));
  };
  return { friction: at('friction'), head: at('head') };
}
