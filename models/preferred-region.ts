/** The flows at which a pump is best kept. */
import { bestEfficiencyPoint } from './best-efficiency.ts';
import type { PumpFit } from './pump-model.ts';

/** Shares of the best-efficiency flow. */
const REGION = { from: 0.7, to: 1.2 } as const;
/** A best point this near to the largest entered flow may as well lie beyond it. */
const AT_THE_END = 0.999;

/**
 * The preferred operating region of a pump at full speed [m3/s]: 70 to 120 % of its best-efficiency flow.
 *
 * Null where power does not depend on flow. `max` is infinite where efficiency still rises at the largest entered flow.
 * Source: ANSI/HI 9.6.3 (as trade articles give it), for pumps of low and middle specific speed.
 */
export function preferredRegion(
  fit: PumpFit,
  { density }: { readonly density: number },
): { readonly min: number; readonly max: number } | null {
  const best = bestEfficiencyPoint(fit, { density });
  if (best === null) return null;
  const isBeyondData = best.flow >= AT_THE_END * fit.headCurve.range.max;
  return {
    min: REGION.from * best.flow,
    max: isBeyondData ? Number.POSITIVE_INFINITY : REGION.to * best.flow,
  };
}
