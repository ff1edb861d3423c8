/** Samples a loop once for many candidates, and finds their duties on the samples. */

import { at } from '../../curves/at.ts';
import { type Intersection, intersections } from '../../curves/intersections.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { type RequiredDuty, requiredDuty } from '../network/required-duty.ts';
import { type SampledSystem, sampledSystem } from '../network/sampled-system.ts';
import { SolveFailure } from '../network/solve-failure.ts';
import type { SystemState } from '../network/system.ts';
import type { PumpAtSetting } from '../pump/pump-at-setting.ts';
import { type DutyFigures, deadHead, dutyPoint, type ExactDuty, figuresAt } from './duty-point.ts';

/** A loop as many candidates share it: its samples, its state at rest and the duty it requires, worked out once. */
export interface SampledLoop {
  readonly loop: CompiledLoop;
  readonly samples: SampledSystem;
  /** Null where no water passes. */
  readonly atRest: SystemState | null;
  /** Null where no total flow is enough for every outlet, or none requires a flow. */
  readonly required: RequiredDuty | null;
  /** Whether it is known that no total flow below the required duty's is enough for every outlet. */
  readonly requiredIsLeast: boolean;
}

/**
 * Makes a loop ready to be shared by many candidates.
 *
 * Errors: throws `SolveFailure` where the network does not settle.
 */
export function sampleLoop(loop: CompiledLoop): SampledLoop {
  const { system } = loop;
  const samples = sampledSystem(system);
  const required = requiredDuty(system);
  return {
    loop,
    samples,
    atRest: system.passesWater ? system.stateAt(0) : null,
    required,
    requiredIsLeast: system.outletsRise || (required !== null && risesUpTo(samples, required.flow)),
  };
}

/** From this share of the required flow on, outlets must rise up to it: what flows below circulates, and reaches no outlet. */
const RISING_FROM = 0.02;

const risesUpTo = (samples: SampledSystem, flow: number): boolean =>
  flow > 0 && samples.outletsRise({ from: RISING_FROM * flow, to: flow });

/** Newton steps tried before the full search is made instead. */
const NEWTON_STEPS = 12;
/** A step this small, as a share of the flow, was the last: the next would be its square. */
const LAST_STEP = 1e-7;
/** A state this near to the duty, as a share of the flow, is carried there along its slopes: 1e-10 is lost. */
const NEAR_ENOUGH = 1e-5;

/**
 * The duty on the samples of the loop: cheap, and as near as samples are (1e-6 of the flow, 1e-4 where a pipe changes
 * its regime).
 *
 * @param guess flow [m3/s] where to look first; where the pump curve falls there is one crossing, so that any way of
 *   finding it will do.
 * Errors: throws `SolveFailure` where network or search reach a limit.
 */
export function estimateDuty(sampled: SampledLoop, pump: PumpAtSetting, guess?: number): DutyFigures {
  const { loop, samples, atRest } = sampled;
  if (atRest === null || pump.headAt(0).head <= atRest.head) return deadHead(loop, pump, atRest);
  const crossing = quickCrossing(sampled, pump, guess) ?? searchedCrossing(sampled, pump);
  if (crossing === undefined) return deadHead(loop, pump, atRest);
  return figuresAt(loop, pump, {
    ...crossing,
    suctionLoss: loop.system.suctionLossAt(crossing.flow),
    outletFlows: samples.outletFlowsAt(crossing.flow),
  });
}

type Crossing = Pick<Intersection, 'flow' | 'head'>;

function quickCrossing(
  { samples }: SampledLoop,
  pump: PumpAtSetting,
  guess: number | undefined,
): Crossing | null {
  if (guess === undefined || pump.turningFlows.length > 0) return null;
  let flow = guess;
  for (let step = 0; step < NEWTON_STEPS; step++) {
    const needed = samples.headAt(flow);
    const change = newtonChange(pump, flow, needed);
    flow += change;
    if (!(flow > 0)) return null;
    if (Math.abs(change) <= LAST_STEP * flow) return { flow, head: needed.head + needed.slope * change };
  }
  return null;
}

function searchedCrossing({ samples }: SampledLoop, pump: PumpAtSetting): Crossing | undefined {
  const found = intersections({ ...pump, pumpHead: pump.headAt, systemHead: samples.headAt });
  if (!found.ok) throw new SolveFailure(found.failure);
  return found.value.find((crossing) => crossing.stable);
}

/** Newton's change of flow towards the crossing; NaN where the heads do not fall towards one. */
function newtonChange(
  pump: PumpAtSetting,
  flow: number,
  needed: { readonly head: number; readonly slope: number },
): number {
  const given = pump.headAt(flow);
  const slope = given.slope - needed.slope;
  return slope < 0 ? (needed.head - given.head) / slope : Number.NaN;
}

/**
 * The exact duty that an estimate approximates: one solve where the estimate is as good as it should be.
 *
 * Accuracy: 1e-10 of the flow against `dutyPoint` (test/models/duty/sampled-loop.test.ts).
 * Errors: throws `SolveFailure` where network or search reach a limit.
 */
export function exactDuty(sampled: SampledLoop, pump: PumpAtSetting, estimate: DutyFigures): ExactDuty {
  const { loop, samples, atRest } = sampled;
  if (estimate.deadHead) return { ...estimate, state: atRest };
  let flow = estimate.flow;
  let near = samples.near(flow);
  for (let step = 0; step < NEWTON_STEPS; step++) {
    const state = loop.system.stateAt(flow, near);
    const change = newtonChange(pump, flow, state);
    if (Math.abs(change) <= NEAR_ENOUGH * flow) {
      const duty = carriedAlong(state, change);
      return { ...figuresAt(loop, pump, duty), state: duty };
    }
    near = state;
    flow += change;
    if (!(flow > 0)) break;
  }
  return dutyPoint(loop, pump, samples.near(estimate.flow));
}

function carriedAlong(state: SystemState, change: number): SystemState {
  return {
    ...state,
    flow: state.flow + change,
    head: state.head + state.slope * change,
    outletFlows: state.outletFlows.map((flow, i) => flow + at(state.outletSlopes, i) * change),
  };
}
