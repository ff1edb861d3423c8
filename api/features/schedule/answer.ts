/** Answers a schedule with its figures of a year. */

import type { z } from '@hono/zod-openapi';
import { loopCautions } from '../../../models/cautions/loop-cautions.ts';
import { scheduleCautions } from '../../../models/cautions/time.ts';
import { WATTS_PER_KILOWATT } from '../../../models/physics/unit-factors.ts';
import type { PhaseDuty } from '../../../models/schedule/phase-duty.ts';
import type { PhasePlan } from '../../../models/schedule/phase-plan.ts';
import { volumeStride } from '../../../models/schedule/volume-choices.ts';
import type { PhaseUse, Use } from '../../../models/schedule/year-use.ts';
import { recordBody } from '../../fields/record-fields.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import { dataBasisOf } from '../../records/loop/data-basis.ts';
import type { ScheduleRecord } from '../../records/schedule/kind.ts';
import { dangerWords } from '../../wording/dangers.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';
import type { scheduleSchema } from './answer-schema.ts';
import { infeasibleAnswer } from './infeasible-fields.ts';
import { outletAnswers } from './outlet-answers.ts';
import type { PlannedLoop } from './planned-loop.ts';
import type { ConstantRunning, YearFigures } from './year.ts';

type ScheduleAnswer = WithoutUnits<z.output<ReturnType<typeof scheduleSchema>>>;

export function scheduleAnswer(
  planned: PlannedLoop,
  record: ScheduleRecord,
  { year, hours, total, phases, constantHighest, installed }: YearFigures,
): ScheduleAnswer {
  const { plan, fallback, basis, sources, isPriced } = planned;
  const money = (cost: number): number | null => (isPriced ? cost : null);
  const { currency } = sources.site.document;
  const infeasible = plan.phases.flatMap((one, place) =>
    phases[place]?.feasible === false ? [one.phase.name] : [],
  );
  const cost = isPriced ? `they cost ${sayNumber(total.cost)} ${currency}` : 'no price is set';
  const { emergency, ...body } = recordBody(record);
  const ofLoop = loopCautions(sources.model);
  return {
    ...body,
    phases: plan.phases.map((one, place) => phaseAnswer(one, phases[place], money)),
    ...(plan.emergency === null || emergency === undefined
      ? {}
      : { emergency: { ...emergency, ...emergencyFigures(plan.emergency, emergency.batteryEnergy) } }),
    year,
    hoursPerYear: hours,
    currency,
    annualEnergy: total.energy,
    annualCost: money(total.cost),
    against: {
      constantHighest: againstAnswer(constantHighest, total, money),
      installed: againstAnswer(installed, total, money),
    },
    fallback: { ...fallback, phasesBelowRequired: [...fallback.phasesBelowRequired] },
    summary: `${dangerWords(ofLoop)}The phases use ${sayNumber(total.energy)} kWh in ${year}; ${cost}.${
      infeasible.length === 0 ? '' : ` No setting is feasible in ${phasesInWords(infeasible)}.`
    }`,
    cautions: [
      ...scheduleCautions({
        infeasible,
        hasBattery: emergency?.batteryEnergy !== undefined,
        hasVolume: plan.phases.some(({ volume }) => volume !== null),
        stride: volumeStride(plan.station.pump.entered.settings),
      }),
      ...ofLoop,
    ],
    dataBasis: dataBasisOf(sources.loop),
    basis,
  };
}

function phaseAnswer(
  one: PhasePlan,
  use: (PhaseUse & { readonly feasible: boolean; readonly gap: number | null }) | undefined,
  money: (cost: number) => number | null,
): ScheduleAnswer['phases'][number] {
  if (use === undefined) throw new Error(`invariant: ${one.phase.name} has no use`);
  const { own, other, volume, phase } = one;
  const setting = volume === null ? own.setting : use.usualSetting;
  const outletFlows = setting > 0 ? one.dutyAt(setting).outletFlows : one.loop.system.outlets.map(() => 0);
  return {
    ...phase,
    setting,
    feasible: use.feasible,
    ...(use.feasible ? {} : infeasibleAnswer(faultOf(one))),
    power: use.power,
    flow: use.flow,
    hoursPerYear: use.hours,
    annualEnergy: use.energy,
    annualCost: money(use.cost),
    outlets: outletAnswers(one.loop, outletFlows, use.feasible),
    otherSetting: other?.setting ?? null,
    gap: use.gap,
  };
}

/** The infeasible part of a phase. */
const faultOf = ({ own, other }: PhasePlan): PhaseDuty => (own.feasible && other !== null ? other : own);

const phasesInWords = (names: readonly string[]): string =>
  `${names.length === 1 ? 'phase' : 'phases'} ${names.map((name) => `"${name}"`).join(', ')}`;

function emergencyFigures({ own, loop }: PhasePlan, batteryEnergy: number | undefined) {
  const { setting, feasible, duty } = own;
  return {
    setting,
    feasible,
    ...infeasibleAnswer(own),
    power: duty.power,
    flow: duty.flow,
    outlets: outletAnswers(loop, duty.outletFlows, feasible),
    batteryHours: batteryEnergy === undefined ? null : (WATTS_PER_KILOWATT * batteryEnergy) / duty.power,
  };
}

/** Differences of this share are rounding of long sums. */
const SAME = 1e-9;

const saving = (constant: number, scheduled: number): number =>
  Math.abs(constant - scheduled) <= SAME * Math.abs(constant) ? 0 : constant - scheduled;

const againstAnswer = (
  { setting, use }: ConstantRunning,
  total: Pick<Use, 'energy' | 'cost'>,
  money: (cost: number) => number | null,
) => ({
  setting,
  power: use.power,
  flow: use.flow,
  annualEnergy: use.energy,
  annualCost: money(use.cost),
  savedEnergy: saving(use.energy, total.energy),
  savedCost: money(saving(use.cost, total.cost)),
});
