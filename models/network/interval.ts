/** Interpolates a system between two exact states of it. */
import { at } from '../../curves/at.ts';
import type { SystemState } from './system.ts';

/** Two states of one system. */
export interface Interval {
  readonly lower: SystemState;
  readonly upper: SystemState;
}

/** A figure with its slope against the total flow. */
export interface Sloping {
  /** [any] */
  readonly value: number;
  /** [that s/m3] */
  readonly slope: number;
}

/** The cubic through both ends with their slopes, at a share t [-] of the width [m3/s] between them. */
export function cubic(
  { from, to, width }: { readonly from: Sloping; readonly to: Sloping; readonly width: number },
  t: number,
): Sloping {
  const a = from.slope * width;
  const b = to.slope * width;
  const rise = to.value - from.value;
  const second = 3 * rise - 2 * a - b;
  const third = a + b - 2 * rise;
  return {
    value: from.value + t * (a + t * (second + t * third)),
    slope: (a + t * (2 * second + 3 * t * third)) / width,
  };
}

const headOf = ({ head, slope }: SystemState): Sloping => ({ value: head, slope });

/** Head [m] and its slope [s/m2] at a flow inside an interval. */
export function headBetween(
  { lower, upper }: Interval,
  flow: number,
): { readonly head: number; readonly slope: number } {
  const width = upper.flow - lower.flow;
  const { value, slope } = cubic(
    { from: headOf(lower), to: headOf(upper), width },
    (flow - lower.flow) / width,
  );
  return { head: value, slope };
}

interface Flows {
  readonly flows: readonly number[];
  /** Of each by the total flow. */
  readonly flowSlopes: readonly number[];
}

const outletsOf = ({ outletFlows, outletSlopes }: SystemState): Flows => ({
  flows: outletFlows,
  flowSlopes: outletSlopes,
});

/** By outlet [m3/s], at a flow inside an interval. */
export const outletFlowsBetween = (interval: Interval, flow: number): readonly number[] =>
  interpolated(interval, flow, outletsOf);

/** Several flows at a total flow inside an interval. */
function interpolated(
  { lower, upper }: Interval,
  flow: number,
  flowsOf: (state: SystemState) => Flows,
): readonly number[] {
  const from = flowsOf(lower);
  const to = flowsOf(upper);
  const width = upper.flow - lower.flow;
  const t = (flow - lower.flow) / width;
  const u = 1 - t;
  const towards = t * t * (3 - 2 * t);
  const leaving = width * t * u * u;
  const arriving = -width * t * t * u;
  return from.flows.map(
    (start, i) =>
      start +
      towards * (at(to.flows, i) - start) +
      leaving * at(from.flowSlopes, i) +
      arriving * at(to.flowSlopes, i),
  );
}

/** The lower state with its branch flows carried to the flow [m3/s]: nearer than either. */
export function stateBetween(interval: Interval, flow: number): SystemState {
  const { lower, upper } = interval;
  const [from, to] = [lower.network, upper.network];
  if (from === null || to === null) return lower;
  const flows = interpolated(interval, flow, (state) => (state === lower ? from : to));
  return { ...lower, flow, network: { ...from, flows } };
}
