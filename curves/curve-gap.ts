/** Finds by how much the head of a pump exceeds the head that a system needs. */
import { findRoot } from './find-root.ts';

/** Head [m] and its slope [m/(m3/s)] at a flow [m3/s]. */
export type CurveAt = (flow: number) => { readonly head: number; readonly slope: number };

export interface Gap {
  /** [m3/s] */
  readonly flow: number;
  /** Pump head less system head [m]. */
  readonly difference: number;
  /** Of the difference [m/(m3/s)]. */
  readonly slope: number;
}

/** The gap between a pump curve and a system curve, as a function of flow [m3/s]. */
export const gapBetween =
  ({ pumpHead, systemHead }: { readonly pumpHead: CurveAt; readonly systemHead: CurveAt }) =>
  (flow: number): Gap => {
    const [pump, system] = [pumpHead(flow), systemHead(flow)];
    return { flow, difference: pump.head - system.head, slope: pump.slope - system.slope };
  };

/**
 * The extreme between two gaps of one sign at which the difference [m] comes nearest to zero and may have crossed it.
 *
 * @param gapAt the gap at a flow [m3/s].
 * @param ends the gaps at either end of a range of flows.
 * @returns a list of one, or of none where the slopes at the ends show no such extreme.
 */
export function hiddenExtreme(
  gapAt: (flow: number) => Gap,
  { low, high }: { readonly low: Gap; readonly high: Gap },
): readonly Gap[] {
  const above = low.difference > 0;
  const turnsAway = above ? low.slope < 0 && high.slope > 0 : low.slope > 0 && high.slope < 0;
  if (above !== high.difference > 0 || !turnsAway) return [];
  const extreme = findRoot({
    evaluate: (flow) => ({ value: gapAt(flow).slope }),
    low: low.flow,
    high: high.flow,
    lowValue: low.slope,
    highValue: high.slope,
  });
  return extreme.ok ? [gapAt(extreme.value.root)] : [];
}
