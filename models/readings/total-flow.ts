/** Reads the total flow of a reading. */
import type { Reading } from './reading.ts';

/** The total flow of a reading [m3/s], or the sum of all outlets where each was measured; undefined where neither was. */
export function totalFlow(reading: Reading, outlets: readonly string[]): number | undefined {
  const { flow, outletFlows = {} } = reading;
  if (flow !== undefined) return flow;
  let sum = 0;
  for (const name of outlets) {
    const one = outletFlows[name];
    if (one === undefined) return undefined;
    sum += one;
  }
  return sum;
}
