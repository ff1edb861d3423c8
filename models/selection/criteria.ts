/** Judges a setting by criteria, each named by the reason it gives when it fails. */

import { at } from '../../curves/at.ts';
import type { DutyFigures } from '../duty/duty-point.ts';
import { npshAvailable, npshRequired } from '../duty/npsh.ts';
import { screenVelocities } from '../intake/screen.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import type { Limits } from './options.ts';

/** In the order in which answers give them. */
export const CRITERION_REASONS = [
  'efficiency-impossible',
  'not-enough-head',
  'outside-data',
  'outlet-above-maximum',
  'screen-velocity',
  'pump-below-minimum',
  'pump-above-maximum',
  'npsh',
] as const;

export type CriterionReason = (typeof CRITERION_REASONS)[number];

/** A criterion as found at one duty. */
export interface Judgement {
  readonly reason: CriterionReason;
  /** The outlet that decides, where one does. */
  readonly outlet: string | null;
  /** Of the duty [% of full]. */
  readonly setting: number;
  /** Judged: a flow [m3/s], a velocity [m/s], a head [m] or an efficiency [-]. */
  readonly value: number;
  /** In the unit of the value [as value]. */
  readonly limit: number;
  /** Relative distance to the limit [-]: the criterion holds where it is not negative. */
  readonly clearance: number;
}

/** A criterion that a duty is judged by. */
export interface Criterion {
  readonly reason: CriterionReason;
  /** What it follows: the flow, and every outlet's with it, or the flow of one pump brought to full speed; or neither. */
  readonly by: 'flow' | 'flow-at-full-speed' | null;
  /** Where that rises with the setting: held from some setting on, up to some setting, or neither. */
  readonly along: 'from' | 'up-to' | null;
  judge(duty: DutyFigures): Judgement;
}

/** What a duty is judged by. */
export interface CriteriaContext {
  readonly loop: CompiledLoop;
  readonly pump: PumpModel;
  readonly limits: Limits;
  /** Of the site above sea level [m]. */
  readonly elevation: number;
}

/** Flows count as equal within this. */
export const EQUAL = 1e-9;
/** Beyond this many times the largest entered flow a curve is a guess. */
const DATA_REACH = 1.1;

/** The criteria that apply to a pump on a loop, in the order of their reasons. */
export function criteriaFor(context: CriteriaContext): readonly Criterion[] {
  const { pump, limits } = context;
  return [
    efficiencyPossible(limits.efficiency),
    ...outletsServed(context),
    ...(limits.extrapolation ? [] : [insideData(pump)]),
    ...outletsBelowMaximum(context),
    ...screenGentle(context),
    ...flowLimits(pump),
    ...npshMet(context),
  ];
}

/** Relative distance [-] of a value below its limit; negative above it. */
export const upTo = (value: number, limit: number): number =>
  limit === 0 ? -value : (limit - value) / Math.abs(limit);
const from = (value: number, limit: number): number =>
  limit === 0 ? value : (value - limit) / Math.abs(limit);

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

function outletsServed({ loop }: CriteriaContext): readonly Criterion[] {
  const needs = loop.system.outlets.flatMap(({ name, requiredFlow }, index) =>
    requiredFlow === null ? [] : [{ name, index, flow: requiredFlow }],
  );
  return needs.length === 0 ? [] : [worstOutlet('not-enough-head', 'from', needs, from)];
}

function outletsBelowMaximum({ loop }: CriteriaContext): readonly Criterion[] {
  const most = loop.system.outlets.flatMap(({ name, maximumFlow }, index) =>
    maximumFlow === null ? [] : [{ name, index, flow: maximumFlow }],
  );
  return most.length === 0 ? [] : [worstOutlet('outlet-above-maximum', 'up-to', most, upTo)];
}

/** The outlet nearest to breaking its bound decides. */
function worstOutlet(
  reason: CriterionReason,
  along: Criterion['along'],
  bounds: readonly { readonly name: string; readonly index: number; readonly flow: number }[],
  clear: (value: number, limit: number) => number,
): Criterion {
  return {
    reason,
    by: 'flow',
    along,
    judge: ({ outletFlows, setting }) => {
      let worst = bounds[0];
      let clearance = Number.POSITIVE_INFINITY;
      for (const bound of bounds) {
        const cleared = clear(at(outletFlows, bound.index), bound.flow) + EQUAL;
        if (!(cleared < clearance)) continue;
        worst = bound;
        clearance = cleared;
      }
      if (worst === undefined) throw new Error(`${reason} has no outlet to judge`);
      const { name, index, flow: limit } = worst;
      return { reason, outlet: name, setting, value: at(outletFlows, index), limit, clearance };
    },
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
  if (!context.limits.npsh) return [];
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
