/** A priced duty is answered with its outlets, its surroundings and what holds with one pump at rest. */

import type { z } from '@hono/zod-openapi';
import { PERCENT } from '../../../curves/percent.ts';
import { SECONDS_PER_HOUR } from '../../../models/calendar/time-factors.ts';
import { dutyCautions } from '../../../models/cautions/duty-cautions.ts';
import { priceCautions } from '../../../models/cautions/money.ts';
import type { ExactDuty } from '../../../models/duty/duty-point.ts';
import { notChecked } from '../../../models/duty/not-checked.ts';
import { onePumpDown } from '../../../models/duty/one-pump-down.ts';
import { suctionPressure } from '../../../models/duty/suction-pressure.ts';
import { coveredIntake } from '../../../models/intake/covered-intake.ts';
import { screenVelocities } from '../../../models/intake/screen.ts';
import { limitingOutlet, outletFigures } from '../../../models/network/margins.ts';
import { outletReaches } from '../../../models/network/outlet-reach.ts';
import { solving } from '../../../models/network/solve-failure.ts';
import type { Trim } from '../../../models/network/trim.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { type CriteriaContext, npshFigures } from '../../../models/selection/criteria.ts';
import { EQUAL } from '../../../models/selection/criterion.ts';
import type { DutyHeat } from '../../../models/selection/duty-heat.ts';
import { toPointer } from '../../http/json-pointer.ts';
import type { dutySchema } from './duty-schema.ts';

export type DutyAnswer = z.output<ReturnType<typeof dutySchema>>;

interface DutyFacts {
  readonly candidate: number;
  readonly pump: DutyAnswer['pump'];
  readonly context: CriteriaContext;
  readonly duty: ExactDuty;
  readonly use: {
    readonly annualEnergy: number;
    readonly annualCost: number | null;
    readonly heat: DutyHeat;
    readonly lifeCycleCost?: number | null;
  };
  readonly trims: readonly Trim[];
  readonly uncertainty: DutyAnswer['uncertainty'];
  /** Velocity [m/s] down to which the reach of every outlet is given; null: that of the reach each states. */
  readonly reachVelocity?: number | null;
  /** Whether it has no price where the ranking is by life-cycle cost. */
  readonly isUnpriced?: boolean;
}

export function dutyAnswer({
  candidate,
  pump: reference,
  context,
  duty,
  use,
  trims,
  uncertainty,
  reachVelocity = null,
  isUnpriced = false,
}: DutyFacts): DutyAnswer {
  const { loop, pump } = context;
  const { count, flow, head, power, efficiency, setting } = duty;
  const figures = outletFigures(loop.system.outlets, duty.outletFlows);
  const reaches = outletReaches(loop, duty.outletFlows, reachVelocity);
  const tankVolume = loop.entered.tank?.volume;
  return {
    candidate,
    pump: reference,
    count,
    setting,
    speed: PERCENT * duty.speedRatio,
    flow,
    head,
    power,
    efficiency,
    turnover: tankVolume === undefined ? null : (SECONDS_PER_HOUR * flow) / tankVolume,
    annualEnergy: use.annualEnergy,
    annualCost: use.annualCost,
    lifeCycleCost: use.lifeCycleCost ?? null,
    limitingOutlet: limitingOutlet(figures),
    outlets: figures.map(({ maximumFlow, ...outlet }, i) => ({ ...outlet, reach: reaches[i] ?? null })),
    trims: trims.map(trimAnswer),
    perPump: { flow: flow / count, power: power / count },
    onePumpDown: onePumpDownAnswer(context, duty),
    uncertainty,
    ...surroundingsAnswer(context, duty),
    heat: use.heat,
    npsh: npshAnswer(context, duty),
    suctionPressure: suctionPressure(loop, duty),
    notChecked: [...notChecked(loop, pump.entered)],
    cautions: [
      ...dutyCautions(context, duty, { reachVelocity, year: use }),
      ...priceCautions({ isUnpriced }),
    ],
  };
}

function npshAnswer(context: CriteriaContext, duty: ExactDuty): DutyAnswer['npsh'] {
  const { available, required } = npshFigures(context)(duty);
  return required === null ? { available } : { available, required, ratio: available / required };
}

const trimAnswer = ({ path, outlets, valve, ...trim }: Trim): DutyAnswer['trims'][number] => ({
  branch: toPointer(path),
  outlets: [...outlets],
  ...trim,
  valve: valve === null ? null : toPointer(valve),
});

/** What the loop still gets with one pump at rest. */
function onePumpDownAnswer(
  { loop, pump }: Pick<CriteriaContext, 'loop' | 'pump'>,
  duty: ExactDuty,
): DutyAnswer['onePumpDown'] {
  if (duty.flow === 0) return null;
  const down = solving(() => onePumpDown(loop, pump, duty));
  if (!down.ok || down.value === null) return null;
  const { outletFlows, ...figures } = down.value;
  const outlets = outletFigures(loop.system.outlets, outletFlows);
  return {
    ...figures,
    served: outlets.every(({ flow, requiredFlow }) => flow >= (requiredFlow ?? -Infinity) * (1 - EQUAL)),
    outlets: outlets.map(({ name, flow, requiredFlow, margin }) => ({ name, flow, requiredFlow, margin })),
  };
}

/** What the duty does to the animals and the people around the loop. */
function surroundingsAnswer(
  { loop, pump, limits: { cloggedFraction }, elevation }: CriteriaContext,
  duty: ExactDuty,
): Pick<DutyAnswer, 'screen' | 'coveredIntake'> {
  const covered = coveredIntake(loop, pumpAtSetting(pump, duty), { elevation });
  const screen = loop.entered.intake?.screen;
  if (screen === undefined) return { screen: null, coveredIntake: covered };
  const { mean, peak } = screenVelocities({ screen, flow: duty.flow, cloggedFraction });
  return {
    screen: { meanVelocity: mean, peakVelocity: peak, cloggedFraction },
    coveredIntake: covered,
  };
}
