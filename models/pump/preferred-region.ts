/** Finds the flows at which a pump is best kept. */
import { bestEfficiencyPoint } from './best-efficiency.ts';
import type { PumpFit } from './pump-model.ts';

/** Shares of the best-efficiency flow. */
const REGION = { from: 0.7, to: 1.2 } as const;
/** A best point this near to the largest entered flow may as well lie beyond it. */
const AT_THE_END = 0.999;

interface PreferredRegion {
  readonly min: number;
  readonly max: number;
}

/** That of the water asked about last: every duty of a pump asks. */
const latest = new WeakMap<PumpFit, { readonly density: number; readonly region: PreferredRegion | null }>();

/**
 * The preferred operating region of a pump at full speed [m3/s]: 70 to 120 % of its best-efficiency flow.
 *
 * @param water density [kg/m3].
 * @returns null where power does not depend on flow; `max` is infinite where efficiency still rises at the largest
 *   entered flow.
 * Source: ANSI/HI 9.6.3 (as trade articles give it), for pumps of low and middle specific speed.
 */
export function preferredRegion(
  fit: PumpFit,
  { density }: { readonly density: number },
): PreferredRegion | null {
  const before = latest.get(fit);
  if (before?.density === density) return before.region;
  const region = regionOf(fit, density);
  latest.set(fit, { density, region });
  return region;
}

function regionOf(fit: PumpFit, density: number): PreferredRegion | null {
  const best = bestEfficiencyPoint(fit, { density });
  if (best === null) return null;
  const isBeyondData = best.flow >= AT_THE_END * fit.headCurve.range.max;
  return {
    min: REGION.from * best.flow,
    max: isBeyondData ? Number.POSITIVE_INFINITY : REGION.to * best.flow,
  };
}
