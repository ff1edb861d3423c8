/** The cautions that apply to one pump at one duty on a loop. */

import type { ExactDuty } from '../duty/duty-point.ts';
import { coveredIntake } from '../intake/covered-intake.ts';
import { screenVelocities } from '../intake/screen.ts';
import { outletFigures } from '../network/margins.ts';
import { preferredRegion } from '../pump/preferred-region.ts';
import { pumpAtSetting } from '../pump/pump-at-setting.ts';
import { isOnGrid } from '../pump/settings-grid.ts';
import { type ConditionContext, EQUAL } from '../selection/criteria.ts';
import { type Caution, caution } from './catalogue.ts';
import { fitCautions } from './fit-cautions.ts';
import { flowCautions } from './flow-cautions.ts';
import { reachCautions } from './jet-cautions.ts';
import { parallelCautions } from './parallel-cautions.ts';
import { startCautions } from './start-cautions.ts';
import { suctionCautions } from './suction-cautions.ts';

const LOW_SPEED = 0.5;

/**
 * Cautions about pump, setting, suction and screen, then about the flows in pipes and outlets.
 * @param reachVelocity [m/s] that the reach of every outlet was asked to; null: the reaches that outlets state.
 */
export function dutyCautions(
  context: ConditionContext,
  duty: ExactDuty,
  reachVelocity: number | null = null,
): readonly Caution[] {
  return [
    ...(duty.deadHead ? [caution('dead-head')] : []),
    ...startCautions(context, duty),
    ...pumpCautions(context, duty),
    ...parallelCautions(context.loop, duty),
    ...suctionCautions(context, duty),
    ...screenCautions(context, duty),
    ...requirementCautions(context, duty),
    ...flowCautions(context, duty),
    ...reachCautions(context.loop, duty.outletFlows, reachVelocity),
    ...peopleCautions(context, duty),
    ...overflowCautions(context, duty),
  ];
}

function peopleCautions({ loop, pump, elevation }: ConditionContext, duty: ExactDuty): readonly Caution[] {
  if (loop.loop.intake?.reachable !== true) return [];
  return coveredIntake(loop, pumpAtSetting(pump, duty), { elevation }) === null
    ? []
    : [caution('intake-holds-fast')];
}

function overflowCautions({ loop: { loop } }: ConditionContext, { flow }: ExactDuty): readonly Caution[] {
  const capacity = loop.overflowCapacity ?? Number.POSITIVE_INFINITY;
  return flow > capacity * (1 + EQUAL) ? [caution('overflow-exceeded')] : [];
}

function pumpCautions({ pump: model, loop }: ConditionContext, duty: ExactDuty): readonly Caution[] {
  const { pump, fit } = model;
  const { speedRatio, setting } = duty;
  const atFullSpeed = duty.flow / (duty.count * speedRatio);
  const hasLowPoint = pump.powerPoints.some((point) => point.setting <= setting);
  const { min, max } = pump.flowLimits ?? {};
  const isOutsideLimits =
    atFullSpeed < (min ?? 0) * (1 - EQUAL) || atFullSpeed > (max ?? Infinity) * (1 + EQUAL);
  const preferred = preferredRegion(fit, loop.water);
  const isOffPreferred =
    preferred !== null &&
    !duty.deadHead &&
    (atFullSpeed < preferred.min * (1 - EQUAL) || atFullSpeed > preferred.max * (1 + EQUAL));
  return [
    ...(isOffPreferred ? [caution('off-preferred-region')] : []),
    ...(atFullSpeed > fit.headCurve.range.max * (1 + EQUAL) ? [caution('extrapolated')] : []),
    ...(isOutsideLimits ? [caution('pump-flow-limits')] : []),
    ...(speedRatio < LOW_SPEED && !hasLowPoint ? [caution('low-speed')] : []),
    ...(isOnGrid(pump.settings, setting) ? [] : [caution('off-grid')]),
    ...fitCautions(model),
  ];
}

function screenCautions(
  { loop: { loop }, limits }: ConditionContext,
  { flow }: ExactDuty,
): readonly Caution[] {
  const screen = loop.intake?.screen;
  const { throughSlotVelocity: limit, cloggedFraction } = limits;
  if (screen === undefined || limit === null) return [];
  const { mean, peak } = screenVelocities({ screen, flow, cloggedFraction });
  if (mean > limit * (1 + EQUAL)) return [caution('screen-velocity'), caution('screen-yardstick')];
  return [...(peak > limit * (1 + EQUAL) ? [caution('screen-uneven')] : []), caution('screen-yardstick')];
}

function requirementCautions({ loop: { system } }: ConditionContext, duty: ExactDuty): readonly Caution[] {
  const figures = outletFigures(system.outlets, duty.outletFlows);
  const short = figures.filter(({ flow, requiredFlow }) => flow < (requiredFlow ?? -Infinity) * (1 - EQUAL));
  const above = figures.filter(({ flow, maximumFlow }) => flow > (maximumFlow ?? Infinity) * (1 + EQUAL));
  const largest = Math.max(...figures.map(({ flow }) => Math.abs(flow)));
  const reversed = figures.filter(({ flow }) => flow < -EQUAL * largest);
  return [
    ...(short.length > 0
      ? [
          caution(
            'outlet-short',
            short.map(({ name }) => name),
          ),
        ]
      : []),
    ...(above.length > 0
      ? [
          caution(
            'outlet-above-maximum',
            above.map(({ name }) => name),
          ),
        ]
      : []),
    ...(reversed.length > 0
      ? [
          caution(
            'reverse-flow',
            reversed.map(({ name }) => name),
          ),
        ]
      : []),
  ];
}
