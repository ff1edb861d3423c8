/** What a loop and its pump would show on a gauge, with friction, head and power multiplied. */

import { at } from '../../curves/at.ts';
import type { ExactDuty } from '../duty/duty-point.ts';
import { estimateDuty, exactDuty, type SampledLoop } from '../duty/sampled-loop.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { withMoreFriction } from '../network/more-friction.ts';
import { sampledSystem } from '../network/sampled-system.ts';
import { shutOff } from '../network/shut-off.ts';
import { calibratedFit } from '../pump/calibrated-fit.ts';
import type { Factors } from '../pump/factors.ts';
import { type PumpAtSetting, pumpAtSetting } from '../pump/pump-at-setting.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import type { Gauge } from './row-collector.ts';

export interface Installation {
  readonly loop: CompiledLoop;
  readonly pump: PumpModel;
  readonly count: number;
}

/** [m3/s], [m] or [W]; 0 where the pump does not lift the water. Throws `SolveFailure` where a limit is reached. */
export type Prediction = (gauge: Gauge, factors: Factors) => number;

/** Loops of one friction and one state of the valves are kept: slopes and steps ask for few at a time. */
const KEPT_LOOPS = 60;

export function prediction({ loop, pump, count }: Installation): Prediction {
  const kept = new Map<string, SampledLoop>();
  const sampledAt = (friction: number, shut: readonly string[]): SampledLoop => {
    const key = JSON.stringify([friction, shut]);
    const known = kept.get(key);
    if (known !== undefined) return known;
    if (kept.size >= KEPT_LOOPS) kept.clear();
    const made = sampled(withMoreFriction(withShut(loop, shut), friction));
    kept.set(key, made);
    return made;
  };
  // Factors move little from one question to the next, and so does the duty.
  const flows = new Map<string, number>();
  return (gauge, factors) => {
    const { setting, shut, zeroFlow } = gauge;
    const running = pumpAtSetting(
      { entered: pump.entered, fit: calibratedFit(pump.fit, factors) },
      { setting, count },
    );
    if (zeroFlow) return running.headAt(0).head;
    const place = JSON.stringify([setting, shut]);
    const duty = land(sampledAt(factors.friction, shut), running, flows.get(place));
    flows.set(place, duty.flow);
    return shownOn(gauge, duty, loop);
  };
}

function withShut(loop: CompiledLoop, shut: readonly string[]): CompiledLoop {
  const changed = shutOff(loop, shut);
  if (changed === null) throw new Error('invariant: outlets are shut on known pipework alone');
  return changed;
}

function sampled(loop: CompiledLoop): SampledLoop {
  const { system } = loop;
  return {
    loop,
    samples: sampledSystem(system),
    atRest: system.passesWater ? system.stateAt(0) : null,
    required: null,
    requiredIsLeast: false,
  };
}

const land = (on: SampledLoop, running: PumpAtSetting, guess: number | undefined): ExactDuty =>
  exactDuty(on, running, estimateDuty(on, running, guess));

function shownOn({ measure, outlet }: Gauge, duty: ExactDuty, { system }: CompiledLoop): number {
  switch (measure) {
    case 'flow':
      return duty.flow;
    case 'outletFlow':
      return at(
        duty.outletFlows,
        system.outlets.findIndex(({ name }) => name === outlet),
      );
    case 'head':
      return duty.head;
    case 'power':
      return duty.power;
  }
}
