/** Compares a reading with the setting that was due, so that a pump that does not follow is seen. */
import { dutyPoint } from '../duty/duty-point.ts';
import { GRAVITY } from '../physics/gravity.ts';
import { pumpAtSetting } from '../pump/pump-at-setting.ts';
import { velocityRise } from '../readings/gauges.ts';
import { headOfReading } from '../readings/head-of-reading.ts';
import type { Reading } from '../readings/reading.ts';
import { isStopped } from '../readings/stopped.ts';
import { totalFlow } from '../readings/total-flow.ts';
import type { SchedulePlan } from './phase-plan.ts';
import { planAt } from './plan-at.ts';
import type { Step } from './setpoints.ts';

/** The first that applies. */
export const READING_STATES = ['stopped', 'other-setting', 'differs', 'as-set'] as const;

export type ReadingState = (typeof READING_STATES)[number];

/** What a reading shows of the setpoint. */
export interface ReadingVerdict {
  readonly state: ReadingState;
  /** The setting that was due [% of full]. */
  readonly due: number;
  /** What the setting of the reading should give: flow [m3/s], power [W]; null where the pump does not offer it. */
  readonly predicted: { readonly flow: number; readonly power: number } | null;
}

/** Measured power or flow that is farther from the predicted differs [-]. */
export const DIFFERS = 0.2;
/** Settings are equal within this [% of full]. */
const SAME_SETTING = 1e-9;

/**
 * What a reading shows of the setpoint of its time.
 *
 * @param due the step that held at its time.
 * Errors: throws `SolveFailure` where network or search reach a limit.
 */
export function readingState(plan: SchedulePlan, reading: Reading, due: Step): ReadingVerdict {
  const predicted = predictedAt(plan, due, reading.setting);
  const verdict = (state: ReadingState): ReadingVerdict => ({ state, due: due.setting, predicted });
  if (predicted !== null && showsStopped(plan, reading, due.phase, predicted)) return verdict('stopped');
  if (Math.abs(reading.setting - due.setting) > SAME_SETTING) return verdict('other-setting');
  if (predicted === null) return verdict('as-set');
  const differs =
    isOff(reading.power, predicted.power) || isOff(flowOf(plan, reading, due.phase), predicted.flow);
  return verdict(differs ? 'differs' : 'as-set');
}

interface Predicted {
  readonly flow: number;
  readonly power: number;
  readonly head: number;
}

/** Settings that nobody asked for are not remembered: a device may report any. */
function predictedAt(plan: SchedulePlan, due: Step, setting: number): Predicted | null {
  const { pump, count } = plan.station;
  const one = planAt(plan, due.phase);
  const { settings, standbyPower } = pump.entered;
  if (setting === 0) return { flow: 0, power: count * standbyPower, head: 0 };
  if (setting < settings.min || setting > settings.max) return null;
  if (setting === due.setting) return one.dutyAt(setting);
  return dutyPoint(one.loop, pumpAtSetting(pump, { setting, count }));
}

function showsStopped(plan: SchedulePlan, reading: Reading, phase: number, predicted: Predicted): boolean {
  const { loop } = planAt(plan, phase);
  const { pump, count } = plan.station;
  const flow = flowOf(plan, reading, phase);
  const head = headOfReading(reading, {
    pressurePerHead: loop.water.density * GRAVITY,
    rise: velocityRise(loop.entered.gauges, flow ?? predicted.flow),
  });
  return isStopped({
    setting: reading.setting,
    measured: { flow, power: reading.power, head },
    predicted,
    standbyPower: count * pump.entered.standbyPower,
  });
}

const flowOf = (plan: SchedulePlan, reading: Reading, phase: number): number | undefined =>
  totalFlow(
    reading,
    planAt(plan, phase).loop.system.outlets.map(({ name }) => name),
  );

const isOff = (measured: number | undefined, predicted: number): boolean =>
  measured !== undefined && Math.abs(measured - predicted) > DIFFERS * Math.abs(predicted);
