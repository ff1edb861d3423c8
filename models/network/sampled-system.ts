/** Samples a system at flows in a geometric row, and interpolates between them. */
import { at } from '../../curves/at.ts';
import type { System, SystemState } from './system.ts';

/** Neighbouring samples are this ratio of flow apart. */
const SAMPLE_RATIO = 1.06;
const LOG_RATIO = Math.log(SAMPLE_RATIO);
/** Flow of sample 0 [m3/s]. */
const BASE_FLOW = 1e-5;
/** A slope that exceeds that of a square by no more than this share is rounding. */
const SQUARE = 1e-9;
/** Below sample -LEAST_SAMPLE the system is solved as asked, not interpolated. */
const LEAST_SAMPLE = 120;

/** Total flows between two ends. */
export interface FlowRange {
  /** [m3/s] */
  readonly from: number;
  /** [m3/s] */
  readonly to: number;
}

export interface SampledSystem {
  /** Needed head [m] and its slope [s/m2] at a total flow [m3/s] of 0 or more. */
  headAt(flow: number): { readonly head: number; readonly slope: number };
  /** Flows of the outlets [m3/s] at a total flow [m3/s]. */
  outletFlowsAt(flow: number): readonly number[];
  /** A state to start an exact solve from, at a total flow [m3/s]; undefined below the least sample. */
  near(flow: number): SystemState | undefined;
  /** Whether no outlet falls with the total flow at any sample around a range of it [m3/s]. */
  outletsRise(range: FlowRange): boolean;
  /** Whether the needed head rises nowhere faster than the square of the flow, at the samples around a range of flows. */
  risesAtMostSquare(range: FlowRange): boolean;
}

interface Interval {
  readonly lower: SystemState;
  readonly upper: SystemState;
}

/**
 * Cubic Hermite interpolation of head and outlet flows over the total flow, from exact states and slopes at flows in
 * a geometric row, each solved when first needed.
 *
 * Accuracy: 1e-6 relative where the flow regime of every pipe is one; up to 1e-4 where a pipe changes regime between
 *   samples (test/models/network/sampled-system.test.ts). So decisions closer than that are taken on an exact state.
 * Errors: throws `SolveFailure` where a sample does not settle.
 */
export function sampledSystem(system: System): SampledSystem {
  const samples = new Map<number, SystemState>();
  let latest: Interval | null = null;
  const sample = (index: number): SystemState => {
    const known = samples.get(index);
    if (known !== undefined) return known;
    const neighbour = samples.get(index - 1) ?? samples.get(index + 1);
    const state = system.stateAt(BASE_FLOW * SAMPLE_RATIO ** index, neighbour);
    samples.set(index, state);
    return state;
  };
  const around = (flow: number): Interval | null => {
    // Newton steps of one pump, and neighbouring settings, mostly stay in one interval.
    if (latest !== null && flow >= latest.lower.flow && flow < latest.upper.flow) return latest;
    const index = indexBelow(flow);
    if (index < -LEAST_SAMPLE) return null;
    latest = { lower: sample(index), upper: sample(index + 1) };
    return latest;
  };
  const everySample = (isOf: (state: SystemState) => boolean) => {
    const known = new Map<number, boolean>();
    return ({ from, to }: FlowRange): boolean => {
      const first = indexBelow(from);
      if (first < -LEAST_SAMPLE) return false;
      const last = indexBelow(to) + 1;
      for (let index = first; index <= last; index++) {
        const holds = known.get(index) ?? isOf(sample(index));
        known.set(index, holds);
        if (!holds) return false;
      }
      return true;
    };
  };
  return {
    headAt: (flow) => {
      const interval = around(flow);
      if (interval === null) return system.stateAt(flow);
      return hermite(interval, flow);
    },
    outletFlowsAt: (flow) => {
      const interval = around(flow);
      if (interval === null) return system.stateAt(flow).outletFlows;
      return interpolated(interval, flow, outletsOf);
    },
    near: (flow) => {
      const interval = around(flow);
      return interval === null ? undefined : stateBetween(interval, flow);
    },
    outletsRise: everySample(({ outletSlopes }) => outletSlopes.every((slope) => slope >= 0)),
    risesAtMostSquare: everySample(({ flow, head, slope }) => flow * slope <= 2 * head * (1 + SQUARE)),
  };
}

const indexBelow = (flow: number): number => Math.floor(Math.log(flow / BASE_FLOW) / LOG_RATIO);

/** Head and its slope at a flow inside an interval. */
function hermite(
  { lower, upper }: Interval,
  flow: number,
): { readonly head: number; readonly slope: number } {
  const width = upper.flow - lower.flow;
  const t = (flow - lower.flow) / width;
  const a = lower.slope * width;
  const b = upper.slope * width;
  const rise = upper.head - lower.head;
  const quadratic = 3 * rise - 2 * a - b;
  const cubic = a + b - 2 * rise;
  return {
    head: lower.head + t * (a + t * (quadratic + t * cubic)),
    slope: (a + t * (2 * quadratic + 3 * t * cubic)) / width,
  };
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

/** The lower state with its branch flows carried to the flow: nearer than either. */
function stateBetween(interval: Interval, flow: number): SystemState {
  const { lower, upper } = interval;
  const [from, to] = [lower.network, upper.network];
  if (from === null || to === null) return lower;
  const flows = interpolated(interval, flow, (state) => (state === lower ? from : to));
  return { ...lower, flow, network: { ...from, flows } };
}
