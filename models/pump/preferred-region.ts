/** Finds the flows at which a pump is best kept. */
import { type BestEfficiencyPoint, bestEfficiencyPoint } from './best-efficiency.ts';
import type { PumpFit } from './pump-model.ts';

/** Shares of the best-efficiency flow. */
const REGION = { from: 0.7, to: 1.2 } as const;
/** A best point this near to the largest entered flow may as well lie beyond it. */
const AT_THE_END = 0.999;
/** Shares of the best-efficiency flow, and without one of the largest entered flow, below which a pump runs at hardly any flow. */
const LOW_FLOW = { ofBest: 0.2, ofLargest: 0.1 } as const;

interface Water {
  /** [kg/m3] */
  readonly density: number;
}

interface PreferredRegion {
  readonly min: number;
  readonly max: number;
}

/** That of the water asked about last: every duty of a pump asks. */
const latest = new WeakMap<PumpFit, Water & { readonly best: BestEfficiencyPoint | null }>();

function bestPoint(fit: PumpFit, { density }: Water): BestEfficiencyPoint | null {
  const before = latest.get(fit);
  if (before?.density === density) return before.best;
  const best = bestEfficiencyPoint(fit, { density });
  latest.set(fit, { density, best });
  return best;
}

/**
 * The preferred operating region of a pump at full speed [m3/s]: 70 to 120 % of its best-efficiency flow.
 *
 * @param water density [kg/m3].
 * @returns null where power does not depend on flow; `max` is infinite where efficiency still rises at the largest
 *   entered flow.
 * Source: ANSI/HI 9.6.3 (as trade articles give it), for pumps of low and middle specific speed.
 */
export function preferredRegion(fit: PumpFit, water: Water): PreferredRegion | null {
  const best = bestPoint(fit, water);
  if (best === null) return null;
  const isBeyondData = best.flow >= AT_THE_END * fit.headCurve.range.max;
  return {
    min: REGION.from * best.flow,
    max: isBeyondData ? Number.POSITIVE_INFINITY : REGION.to * best.flow,
  };
}

/**
 * The flow at full speed [m3/s] below which a pump heats its water and shakes: 20 % of its best-efficiency flow, where that is
 * not known 10 % of its largest entered flow. Common practice; not looked up.
 */
export function leastFlow(fit: PumpFit, water: Water): number {
  const best = bestPoint(fit, water);
  return best === null ? LOW_FLOW.ofLargest * fit.headCurve.range.max : LOW_FLOW.ofBest * best.flow;
}
