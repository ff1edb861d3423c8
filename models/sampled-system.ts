/** A system known at sample flows and interpolated between them: what many pumps share when one loop is looked at. */
import { at } from './network/linear-tree.ts';
import type { System, SystemState } from './system.ts';

/** Neighbouring samples are this ratio of flow apart. */
const SAMPLE_RATIO = 1.06;
const LOG_RATIO = Math.log(SAMPLE_RATIO);
/** Flow of sample 0 [m3/s]. */
const BASE_FLOW = 1e-5;
/** Below sample -LEAST_SAMPLE the system is solved as asked, not interpolated. */
const LEAST_SAMPLE = 120;

export interface SampledSystem {
  /** Needed head [m] and its slope [s/m2] at a total flow of 0 or more [m3/s]. */
  headAt(flow: number): { readonly head: number; readonly slope: number };
  /** By outlet [m3/s]. */
  outletFlowsAt(flow: number): Float64Array;
  /** A state to start an exact solve from; undefined below the least sample. */
  near(flow: number): SystemState | undefined;
  /** Whether no outlet falls with the total flow at any sample around a range of it [m3/s]. */
  outletsRise(range: { readonly from: number; readonly to: number }): boolean;
}

interface Interval {
  readonly lower: SystemState;
  readonly upper: SystemState;
}

/**
 * Cubic Hermite interpolation of head and outlet flows over the total flow, from exact states and slopes at flows in
 * a geometric row, each solved when first needed.
 * Accuracy: 1e-6 relative where the flow regime of every pipe is one; up to 1e-4 where a pipe changes regime between
 * samples. So decisions closer than that are taken on an exact state.
 */
export function sampledSystem(system: System): SampledSystem {
  const samples = new Map<number, SystemState>();
  const rises = new Map<number, boolean>();
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
  const sampleRises = (index: number): boolean => {
    const known = rises.get(index) ?? sample(index).outletSlopes.every((slope) => slope >= 0);
    rises.set(index, known);
    return known;
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
      const values = new Float64Array(interval.lower.outletFlows.length);
      interpolate(interval, { flow, flowsOf: outletsOf, into: values });
      return values;
    },
    near: (flow) => {
      const interval = around(flow);
      return interval === null ? undefined : stateBetween(interval, flow);
    },
    outletsRise: ({ from, to }) => {
      const first = indexBelow(from);
      if (first < -LEAST_SAMPLE) return false;
      const last = indexBelow(to) + 1;
      for (let index = first; index <= last; index++) if (!sampleRises(index)) return false;
      return true;
    },
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
  readonly flows: Float64Array;
  /** Of each by the total flow. */
  readonly flowSlopes: Float64Array;
}

const outletsOf = ({ outletFlows, outletSlopes }: SystemState): Flows => ({
  flows: outletFlows,
  flowSlopes: outletSlopes,
});

/** Several flows at a total flow inside an interval, written `into` an array. */
function interpolate(
  { lower, upper }: Interval,
  {
    flow,
    flowsOf,
    into,
  }: {
    readonly flow: number;
    readonly flowsOf: (state: SystemState) => Flows;
    readonly into: Float64Array;
  },
): void {
  const from = flowsOf(lower);
  const to = flowsOf(upper);
  const width = upper.flow - lower.flow;
  const t = (flow - lower.flow) / width;
  const u = 1 - t;
  const towards = t * t * (3 - 2 * t);
  const leaving = width * t * u * u;
  const arriving = -width * t * t * u;
  for (let i = 0; i < into.length; i++) {
    const start = at(from.flows, i);
    into[i] =
      start +
      towards * (at(to.flows, i) - start) +
      leaving * at(from.flowSlopes, i) +
      arriving * at(to.flowSlopes, i);
  }
}

/** The lower state with its branch flows carried to the flow: nearer than either. */
function stateBetween(interval: Interval, flow: number): SystemState {
  const { lower, upper } = interval;
  const [from, to] = [lower.network, upper.network];
  if (from === null || to === null) return lower;
  const flows = new Float64Array(from.flows.length);
  interpolate(interval, { flow, flowsOf: (state) => (state === lower ? from : to), into: flows });
  return { ...lower, flow, network: { ...from, flows } };
}
