/** Answers what a controller is to set. */

import type { z } from '@hono/zod-openapi';
import type { ZoneOffsets } from '../../../models/calendar/zone-offsets.ts';
import { dutyCautions } from '../../../models/cautions/duty-cautions.ts';
import { loopCautions } from '../../../models/cautions/loop-cautions.ts';
import { setpointCautions } from '../../../models/cautions/time.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import { outletFigures } from '../../../models/network/margins.ts';
import { planAt } from '../../../models/schedule/plan-at.ts';
import { feasibilityOf, type Step } from '../../../models/schedule/setpoints.ts';
import { clockWords } from '../../clock/clock-words.ts';
import { withOffset } from '../../clock/site-time.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import { dataBasisOf } from '../../records/loop/data-basis.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { dangerWords } from '../../wording/dangers.ts';
import { infeasibleAnswer } from './infeasible-fields.ts';
import type { LatestReading } from './latest-reading.ts';
import { outletAnswers } from './outlet-answers.ts';
import type { PlannedLoop } from './planned-loop.ts';
import { readingWords } from './reading-words.ts';
import type { setpointSchema, setpointsSchema } from './setpoint-schema.ts';
import { feasibleWords, infeasibleWords } from './setpoint-sentence.ts';

type Setpoint = WithoutUnits<z.output<ReturnType<typeof setpointSchema>>>;
type Setpoints = WithoutUnits<z.output<ReturnType<typeof setpointsSchema>>>;

/** The running of a step; stopped, nothing flows and the pump draws its standby power. */
export function runningOf({ plan }: Pick<PlannedLoop, 'plan'>, { phase, setting, part }: Step) {
  const one = planAt(plan, phase);
  const loop: CompiledLoop = part === 'other' ? (one.otherLoop ?? one.loop) : one.loop;
  if (setting > 0) {
    const duty = one.dutyAt(setting);
    return { one, loop, duty, power: duty.power, flow: duty.flow, outletFlows: duty.outletFlows };
  }
  const { count, pump } = plan.station;
  const outletFlows = loop.system.outlets.map(() => 0);
  return { one, loop, duty: null, power: count * pump.entered.standbyPower, flow: 0, outletFlows };
}

function stepAnswer(planned: PlannedLoop, step: Step, zone: ZoneOffsets) {
  const { one, power, flow } = runningOf(planned, step);
  return {
    setting: step.setting,
    feasible: step.feasible,
    ...infeasibleAnswer(feasibilityOf(one, step)),
    phase: planned.schedule === null ? null : one.phase.name,
    from: withOffset(zone, step.from),
    until: withOffset(zone, step.until),
    power,
    flow,
  };
}

/** What the texts of a setpoint are written in. */
export interface SetpointContext {
  readonly zone: ZoneOffsets;
  readonly system: UnitSystem;
}

export function setpointAnswer(
  planned: PlannedLoop,
  { step, latest }: { readonly step: Step; readonly latest: LatestReading | null },
  context: SetpointContext,
): Setpoint {
  const { plan, fallback, sources, basis } = planned;
  const { loop, duty, outletFlows } = runningOf(planned, step);
  const answer = stepAnswer(planned, step, context.zone);
  const found = [
    ...(duty === null ? [] : dutyCautions({ ...plan.station, loop }, duty)),
    ...loopCautions(sources.model),
  ];
  const cautions = setpointCautions({ ...answer, isStopped: latest?.verdict.state === 'stopped' });
  const dangers = dangerWords([...cautions.filter(({ code }) => code !== 'phase-infeasible'), ...found]);
  const words = stepWords(planned, step, context);
  const read = latest === null ? '' : ` ${readingWords(latest, { ...context, near: step.from })}`;
  return {
    ...answer,
    outlets: outletAnswers(loop, outletFlows, step.feasible),
    fallback: { ...fallback, phasesBelowRequired: [...fallback.phasesBelowRequired] },
    ...(latest === null ? {} : { latestReading: readingAnswer(latest) }),
    summary: `${step.feasible || dangers !== '' ? dangers : 'Danger: '}${words}${read}`,
    cautions: [...cautions, ...found],
    dataBasis: dataBasisOf(sources.loop),
    basis,
  };
}

function readingAnswer({ reading, verdict }: LatestReading): Setpoint['latestReading'] {
  const { time, setting, power, flow } = reading;
  return {
    ...{ time: new Date(time).toISOString(), setting },
    ...(power === undefined ? {} : { power }),
    ...(flow === undefined ? {} : { flow }),
    state: verdict.state,
  };
}

function stepWords(planned: PlannedLoop, step: Step, { zone, system }: SetpointContext): string {
  const { one, loop, outletFlows } = runningOf(planned, step);
  const phase = planned.schedule === null ? null : one.phase.name;
  const feasibility = feasibilityOf(one, step);
  if (feasibility.feasible) {
    return feasibleWords(step.setting, { until: clockWords(zone, step.until, step.from), phase });
  }
  const end = step.part === 'other' ? one.other : one.own;
  return infeasibleWords(
    {
      ...{ infeasible: feasibility, phase, setting: step.setting, end: end?.setting ?? step.setting },
      movesVolume: one.volume !== null,
      outlets: outletFigures(loop.system.outlets, outletFlows),
    },
    system,
  );
}

export const setpointsAnswer = (
  planned: PlannedLoop,
  steps: readonly Step[],
  zone: ZoneOffsets,
): Setpoints => ({
  items: steps.map((step) => stepAnswer(planned, step, zone)),
  fallback: { ...planned.fallback, phasesBelowRequired: [...planned.fallback.phasesBelowRequired] },
  dataBasis: dataBasisOf(planned.sources.loop),
  basis: planned.basis,
});
