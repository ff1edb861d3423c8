/** Answers what a controller is to set. */

import type { z } from '@hono/zod-openapi';
import type { ZoneOffsets } from '../../../models/calendar/zone-offsets.ts';
import { dutyCautions } from '../../../models/cautions/duty-cautions.ts';
import { loopCautions } from '../../../models/cautions/loop-cautions.ts';
import { setpointCautions } from '../../../models/cautions/time.ts';
import type { ExactDuty } from '../../../models/duty/duty-point.ts';
import { outletFigures } from '../../../models/network/margins.ts';
import type { PhasePlan } from '../../../models/schedule/phase-plan.ts';
import { planAt } from '../../../models/schedule/plan-at.ts';
import type { Step } from '../../../models/schedule/setpoints.ts';
import { withOffset } from '../../clock/site-time.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import { dataBasisOf } from '../../records/loop/data-basis.ts';
import { dangerWords } from '../../wording/dangers.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';
import type { PlannedLoop } from './planned-loop.ts';
import type { setpointSchema, setpointsSchema } from './setpoint-schema.ts';

type Setpoint = WithoutUnits<z.output<ReturnType<typeof setpointSchema>>>;
type Setpoints = WithoutUnits<z.output<ReturnType<typeof setpointsSchema>>>;

export const outletAnswers = (
  { loop }: Pick<PhasePlan, 'loop'>,
  { outletFlows }: Pick<ExactDuty, 'outletFlows'>,
): z.output<ReturnType<typeof setpointSchema>>['outlets'] =>
  outletFigures(loop.system.outlets, outletFlows).map(({ name, flow, requiredFlow, margin, velocity }) => ({
    name,
    flow,
    requiredFlow,
    margin,
    velocity,
  }));

/** The running of a step; stopped, nothing flows and the pump draws its standby power. */
export function runningOf({ plan }: PlannedLoop, { phase, setting }: Step) {
  const one = planAt(plan, phase);
  if (setting > 0) {
    const duty = one.dutyAt(setting);
    return { one, duty, power: duty.power, flow: duty.flow, outletFlows: duty.outletFlows };
  }
  const { count, pump } = plan.station;
  const outletFlows = one.loop.system.outlets.map(() => 0);
  return { one, duty: null, power: count * pump.entered.standbyPower, flow: 0, outletFlows };
}

function stepAnswer(planned: PlannedLoop, step: Step, zone: ZoneOffsets) {
  const { one, power, flow } = runningOf(planned, step);
  return {
    setting: step.setting,
    feasible: step.feasible,
    phase: planned.schedule === null ? null : one.phase.name,
    from: withOffset(zone, step.from),
    until: withOffset(zone, step.until),
    power,
    flow,
  };
}

export function setpointAnswer(planned: PlannedLoop, step: Step, zone: ZoneOffsets): Setpoint {
  const { plan, fallback, sources, basis } = planned;
  const { one, duty, outletFlows } = runningOf(planned, step);
  const answer = stepAnswer(planned, step, zone);
  const context = { ...plan.station, loop: one.loop };
  const named = answer.phase === null ? '' : ` (${answer.phase})`;
  const shortage = step.feasible ? '' : ' It does not give what is required.';
  const found = [...(duty === null ? [] : dutyCautions(context, duty)), ...loopCautions(sources.model)];
  return {
    ...answer,
    outlets: outletAnswers(one, { outletFlows }),
    fallback: { setting: fallback },
    summary: `${dangerWords(found)}Set ${sayNumber(step.setting)} % until ${answer.until}${named}.${shortage}`,
    cautions: [...setpointCautions(answer), ...found],
    dataBasis: dataBasisOf(sources.loop),
    basis,
  };
}

export const setpointsAnswer = (
  planned: PlannedLoop,
  steps: readonly Step[],
  zone: ZoneOffsets,
): Setpoints => ({
  items: steps.map((step) => stepAnswer(planned, step, zone)),
  fallback: { setting: planned.fallback },
  dataBasis: dataBasisOf(planned.sources.loop),
  basis: planned.basis,
});
