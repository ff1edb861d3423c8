/** Samples a system at flows in a geometric row, and interpolates between them. */
import { headBetween, type Interval, outletFlowsBetween, stateBetween } from './interval.ts';
import { type RefinedInterval, refinedInterval, smoothPart, statesOf } from './refined-interval.ts';
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

/**
 * Cubic Hermite interpolation of head and outlet flows over the total flow, from exact states and slopes at flows in
 * a geometric row, each solved when first needed; a system with kinks is sampled more closely where they are.
 *
 * Accuracy: 1e-6 relative where the flow regime of every pipe is one; up to 1e-4 where a pipe changes regime between
 *   samples (test/models/network/sampled-system.test.ts); 1e-5 near kinks. So decisions closer than that are taken on
 *   an exact state.
 * Errors: throws `SolveFailure` where a sample does not settle.
 */
export function sampledSystem(system: System): SampledSystem {
  const { sample, refined } = rememberedStates(system);
  let latest: Interval | null = null;
  const around = (flow: number): Interval | null => {
    // Newton steps of one pump, and neighbouring settings, mostly stay in one interval.
    if (latest !== null && flow >= latest.lower.flow && flow < latest.upper.flow) return latest;
    const index = indexBelow(flow);
    if (index < -LEAST_SAMPLE) return null;
    latest = system.hasKinks
      ? smoothPart(refined(index), flow)
      : { lower: sample(index), upper: sample(index + 1) };
    return latest;
  };
  /** Below the least sample, and next to a kink. */
  const solved = (flow: number): SystemState => {
    const index = indexBelow(flow);
    return system.stateAt(flow, index < -LEAST_SAMPLE ? undefined : sample(index));
  };
  /** The exact states that are known from one sample to the next. */
  const statesFrom = (index: number): readonly SystemState[] =>
    system.hasKinks ? statesOf(refined(index)) : [sample(index), sample(index + 1)];
  return {
    headAt: (flow) => {
      const interval = around(flow);
      if (interval === null) return solved(flow);
      return headBetween(interval, flow);
    },
    outletFlowsAt: (flow) => {
      const interval = around(flow);
      if (interval === null) return solved(flow).outletFlows;
      return outletFlowsBetween(interval, flow);
    },
    near: (flow) => {
      const interval = around(flow);
      return interval === null ? undefined : stateBetween(interval, flow);
    },
    outletsRise: everySample(statesFrom, ({ outletSlopes }) => outletSlopes.every((slope) => slope >= 0)),
    risesAtMostSquare: everySample(
      statesFrom,
      ({ flow, head, slope }) => flow * slope <= 2 * head * (1 + SQUARE),
    ),
  };
}

/** The samples of a system by their index [-], and the intervals that begin at them, each worked out once. */
function rememberedStates(system: System) {
  const samples = new Map<number, SystemState>();
  const sample = (index: number): SystemState => {
    const known = samples.get(index);
    if (known !== undefined) return known;
    const neighbour = samples.get(index - 1) ?? samples.get(index + 1);
    const state = system.stateAt(BASE_FLOW * SAMPLE_RATIO ** index, neighbour);
    samples.set(index, state);
    return state;
  };
  const intervals = new Map<number, RefinedInterval>();
  const refined = (index: number): RefinedInterval => {
    const interval =
      intervals.get(index) ?? refinedInterval(system, { lower: sample(index), upper: sample(index + 1) });
    intervals.set(index, interval);
    return interval;
  };
  return { sample, refined };
}

/** Whether something holds of every state around a range of flows, worked out once for each sample. */
function everySample(
  statesFrom: (index: number) => readonly SystemState[],
  isOf: (state: SystemState) => boolean,
): (range: FlowRange) => boolean {
  const known = new Map<number, boolean>();
  return ({ from, to }) => {
    const first = indexBelow(from);
    if (first < -LEAST_SAMPLE) return false;
    for (let index = first; index <= indexBelow(to); index++) {
      const holds = known.get(index) ?? statesFrom(index).every(isOf);
      known.set(index, holds);
      if (!holds) return false;
    }
    return true;
  };
}

const indexBelow = (flow: number): number => Math.floor(Math.log(flow / BASE_FLOW) / LOG_RATIO);
