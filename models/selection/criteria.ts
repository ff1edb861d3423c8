/** Judges a setting by criteria, each named by the reason it gives when it fails. */

import type { DutyFigures } from '../duty/duty-point.ts';
import { npshAvailable, npshRequired } from '../duty/npsh.ts';
import { screenVelocities } from '../intake/screen.ts';
import type { Limits } from '../loop/limits.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { type Criterion, type CriterionReason, EQUAL, FAILS, from, HOLDS, upTo } from './criterion.ts';
import type { Gravity } from './gravity.ts';
import { noneReversed, outletsBelowMaximum, outletsServed } from './outlet-criteria.ts';

/** What a duty is judged by. */
export interface CriteriaContext {
  readonly loop: CompiledLoop;
  readonly pump: PumpModel;
  readonly limits: Limits;
  /** Of the site above sea level [m]. */
  readonly elevation: number;
  /** Undefined or null: not judged, or gravity does not serve the loop. */
  readonly gravity?: Gravity | null | undefined;
}

/** Beyond this many times the largest entered flow a curve is a guess. */
const DATA_REACH = 1.1;

/** The criteria that apply to a pump on a loop, in the order of their reasons. */
export function criteriaFor(context: CriteriaContext): readonly Criterion[] {
  const { loop, pump, limits, gravity = null } = context;
  const { outlets } = loop.system;
  return [
    ...(limits.gravity === 'reject' && gravity !== null ? [pumpNeeded(gravity)] : []),
    efficiencyPossible(limits.maximumEfficiency),
    pumpMovesWater(),
    ...outletsServed(outlets),
    ...(limits.allowReverseFlow ? [] : [noneReversed(outlets)]),
    ...(limits.allowExtrapolation ? [] : [insideData(pump)]),
    ...outletsBelowMaximum(outlets),
    ...screenGentle(context),
    ...flowLimits(pump),
    ...npshMet(context),
  ];
}

function efficiencyPossible(limit: number): Criterion {
  return {
    reason: 'efficiency-impossible',
    by: null,
    along: null,
    judge: ({ efficiency, setting }) => ({
      reason: 'efficiency-impossible',
      outlet: null,
      setting,
      value: efficiency,
      limit,
      clearance: upTo(efficiency, limit),
    }),
  };
}

function pumpMovesWater(): Criterion {
  const reason = 'dead-head';
  return {
    reason,
    by: 'flow',
    along: 'from',
    judge: ({ flow: value, deadHead, setting }) => ({
      ...{ reason, outlet: null, setting, value, limit: 0 },
      clearance: deadHead ? FAILS : HOLDS,
    }),
  };
}

/** Holds at no setting, since no pump is needed. */
function pumpNeeded({ flow: value, required: limit }: Gravity): Criterion {
  const reason = 'gravity-suffices';
  return {
    ...{ reason, by: null, along: null },
    judge: ({ setting }) => ({ reason, outlet: null, setting, value, limit, clearance: FAILS }),
  };
}

/** Flow of one pump brought to full speed, where its points lie. */
const atFullSpeed = ({ flow, count, speedRatio }: DutyFigures): number => flow / (count * speedRatio);

function insideData({ fit }: PumpModel): Criterion {
  const limit = DATA_REACH * fit.headCurve.range.max;
  return flowBound('outside-data', 'up-to', limit);
}

function flowLimits({ entered: pump }: PumpModel): readonly Criterion[] {
  const { min, max } = pump.flowLimits ?? {};
  return [
    ...(min === undefined ? [] : [flowBound('pump-below-minimum', 'from', min)]),
    ...(max === undefined ? [] : [flowBound('pump-above-maximum', 'up-to', max)]),
  ];
}

function flowBound(reason: CriterionReason, along: 'from' | 'up-to', limit: number): Criterion {
  const clear = along === 'from' ? from : upTo;
  return {
    reason,
    by: 'flow-at-full-speed',
    along,
    judge: (duty) => {
      const value = atFullSpeed(duty);
      return {
        reason,
        outlet: null,
        setting: duty.setting,
        value,
        limit,
        clearance: clear(value, limit) + EQUAL,
      };
    },
  };
}

function screenGentle({ loop: { entered: loop }, limits }: CriteriaContext): readonly Criterion[] {
  const screen = loop.intake?.screen;
  const { throughSlotVelocity: limit, cloggedFraction, screenBasis } = limits;
  if (screen === undefined || limit === null) return [];
  const reason = 'screen-velocity';
  return [
    {
      reason,
      by: 'flow',
      along: 'up-to',
      judge: ({ flow, setting }) => {
        const value = screenVelocities({ screen, flow, cloggedFraction })[screenBasis];
        return { reason, outlet: null, setting, value, limit, clearance: upTo(value, limit) + EQUAL };
      },
    },
  ];
}

/** Without points for what the pump requires, that the water does not boil before it: NPSH available of 0 or more. */
function npshMet(context: CriteriaContext): readonly Criterion[] {
  if (!context.limits.enforceNpsh) return [];
  const reason = 'npsh';
  const figuresAt = npshFigures(context);
  return [
    {
      reason,
      by: null,
      along: null,
      judge: (duty) => {
        const { available, required } = figuresAt(duty);
        const limit = required ?? 0;
        const clearance = from(available, limit);
        return { reason, outlet: null, setting: duty.setting, value: available, limit, clearance };
      },
    },
  ];
}

/** NPSH available [m] at a duty, and required; null where the pump has no points for it. */
export function npshFigures({
  loop,
  pump: { entered: pump },
  elevation,
}: Pick<CriteriaContext, 'loop' | 'pump' | 'elevation'>): (duty: DutyFigures) => {
  readonly available: number;
  readonly required: number | null;
} {
  const points = pump.npshPoints ?? [];
  const { temperature } = loop.entered.water;
  const { pumpElevation } = loop.entered;
  const { density } = loop.water;
  return ({ flow, count, speedRatio, suctionLoss }) => ({
    available: npshAvailable({ elevation, temperature, density, pumpElevation, suctionLoss }),
    required: npshRequired({ points, flow: flow / count, speedRatio }),
  });
}
