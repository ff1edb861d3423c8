/** Finds the duty point of a pump at a setting on a loop. */
import { type Intersection, intersections } from '../../curves/intersections.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { SolveFailure } from '../network/solve-failure.ts';
import type { SystemState } from '../network/system.ts';
import { GRAVITY } from '../physics/gravity.ts';
import type { PumpAtSetting } from '../pump/pump-at-setting.ts';

/** The figures of a duty that limits, ranking and answers are made of; totals over parallel pumps. */
export interface DutyFigures {
  /** [% of full] */
  readonly setting: number;
  /** True speed over full speed [-]. */
  readonly speedRatio: number;
  /** Equal pumps in parallel [-]. */
  readonly count: number;
  /** [m3/s] */
  readonly flow: number;
  /** [m] */
  readonly head: number;
  /** Electrical [W], standby included. */
  readonly power: number;
  /** Wire to water: rho g Q H/P [-]. */
  readonly efficiency: number;
  /** Head lost from the surface drawn from to the pump [m]. */
  readonly suctionLoss: number;
  /** By outlet [m3/s]. */
  readonly outletFlows: readonly number[];
  /** The pump does not lift the water to the outlets, or has no way to move it. */
  readonly deadHead: boolean;
}

/** Figures taken on a solved state of the loop. */
export interface ExactDuty extends DutyFigures {
  /** Null where no water passes at all. */
  readonly state: SystemState | null;
}

export interface DutyPoint extends ExactDuty {
  /** Every crossing of pump and system curve, by rising flow. */
  readonly crossings: readonly Intersection[];
}

/**
 * The duty point: n pumps at speed ratio r give r^2 H0(Q/(n r)) = Hsys(Q), at the stable crossing of least flow,
 * where a pump starting from rest arrives.
 *
 * Where the pump's shutoff head does not exceed the head needed at no flow, the flow is 0 with the outlets open.
 * @param near a state of the same loop, which saves time and changes nothing else.
 * @returns flows [m3/s], heads [m], power [W].
 * Accuracy: 1e-9 of the flow against formulas by hand (test/models/duty/duty-point.test.ts).
 * Errors: throws `SolveFailure` where network or search reach a limit.
 */
export function dutyPoint(loop: CompiledLoop, pump: PumpAtSetting, near?: SystemState): DutyPoint {
  const { system } = loop;
  if (!system.passesWater) return { ...deadHead(loop, pump, null), crossings: [], state: null };
  let state = near;
  let atRest: SystemState | undefined;
  const stateAt = (flow: number): SystemState => {
    if (flow === 0 && atRest !== undefined) return atRest;
    if (state?.flow !== flow || state === near) state = system.stateAt(flow, state);
    if (flow === 0) atRest = state;
    return state;
  };
  const found = intersections({
    ...pump,
    pumpHead: pump.headAt,
    systemHead: stateAt,
    guess: near?.flow,
  });
  if (!found.ok) throw new SolveFailure(found.failure);
  const crossings = found.value;
  const rest = stateAt(0);
  const duty = pump.headAt(0).head > rest.head ? crossings.find((crossing) => crossing.stable) : undefined;
  if (duty === undefined) return { ...deadHead(loop, pump, rest), crossings, state: rest };
  const landed = stateAt(duty.flow);
  return { ...figuresAt(loop, pump, landed), crossings, state: landed };
}

/** The figures of a duty at a known state of the loop: flow [m3/s], head and suction loss [m], outlet flows [m3/s]. */
export function figuresAt(
  { water }: CompiledLoop,
  pump: PumpAtSetting,
  {
    flow,
    head,
    suctionLoss,
    outletFlows,
  }: Pick<DutyFigures, 'flow' | 'head' | 'suctionLoss' | 'outletFlows'>,
): DutyFigures {
  const power = pump.powerAt(flow);
  return {
    setting: pump.setting,
    speedRatio: pump.speedRatio,
    count: pump.count,
    flow,
    head,
    power,
    efficiency: (water.density * GRAVITY * flow * head) / power,
    suctionLoss,
    outletFlows,
    deadHead: false,
  };
}

/** The figures of a pump that moves nothing: it gives its shutoff head at flow 0. */
export function deadHead(
  loop: CompiledLoop,
  pump: PumpAtSetting,
  atRest: Pick<DutyFigures, 'outletFlows'> | null,
): DutyFigures {
  const outletFlows = atRest?.outletFlows ?? loop.system.outlets.map(() => 0);
  const state = { flow: 0, head: pump.headAt(0).head, suctionLoss: 0, outletFlows };
  return { ...figuresAt(loop, pump, state), deadHead: true };
}
