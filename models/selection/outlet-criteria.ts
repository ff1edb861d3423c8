/** Judges the flows of the outlets of a loop: enough, not too much, not backwards. */
import { at } from '../../curves/at.ts';
import type { DutyFigures } from '../duty/duty-point.ts';
import type { SystemOutlet } from '../network/system.ts';
import {
  type Criterion,
  type CriterionReason,
  EQUAL,
  FAILS,
  from,
  HOLDS,
  type Judgement,
  upTo,
} from './criterion.ts';

/** What such a criterion asks of a duty. */
type OutletsOfDuty = Pick<DutyFigures, 'setting' | 'outletFlows' | 'deadHead'>;

interface OutletCriterion extends Omit<Criterion, 'judge'> {
  judge(duty: OutletsOfDuty): Judgement;
}

interface Bound {
  readonly name: string;
  readonly index: number;
  readonly flow: number;
}

/** Every outlet has its required flow; a pump that moves nothing gives none, whatever outlets exchange. */
export function outletsServed(outlets: readonly SystemOutlet[]): readonly OutletCriterion[] {
  const needs = outlets.flatMap(({ name, requiredFlow: flow }, index) =>
    flow === null ? [] : [{ name, index, flow }],
  );
  const flowOf = ({ outletFlows, deadHead }: OutletsOfDuty, { index, flow }: Bound) =>
    deadHead && flow > 0 ? 0 : at(outletFlows, index);
  return needs.length === 0 ? [] : [worstOutlet('not-enough-head', 'from', needs, { flowOf, clear: from })];
}

/** No outlet has more than its maximum; a pump that moves nothing does no harm by it. */
export function outletsBelowMaximum(outlets: readonly SystemOutlet[]): readonly OutletCriterion[] {
  const most = outlets.flatMap(({ name, maximumFlow: flow }, index) =>
    flow === null ? [] : [{ name, index, flow }],
  );
  const flowOf = ({ outletFlows, deadHead }: OutletsOfDuty, { index }: Bound) =>
    deadHead ? 0 : at(outletFlows, index);
  return most.length === 0
    ? []
    : [worstOutlet('outlet-above-maximum', 'up-to', most, { flowOf, clear: upTo })];
}

/** The outlet nearest to breaking its bound decides. */
function worstOutlet(
  reason: CriterionReason,
  along: Criterion['along'],
  bounds: readonly Bound[],
  {
    flowOf,
    clear,
  }: {
    readonly flowOf: (duty: OutletsOfDuty, bound: Bound) => number;
    readonly clear: (value: number, limit: number) => number;
  },
): OutletCriterion {
  return {
    reason,
    by: 'flow',
    along,
    judge: (duty) => {
      let worst = bounds[0];
      let clearance = Number.POSITIVE_INFINITY;
      for (const bound of bounds) {
        const cleared = clear(flowOf(duty, bound), bound.flow) + EQUAL;
        if (!(cleared < clearance)) continue;
        worst = bound;
        clearance = cleared;
      }
      if (worst === undefined) throw new Error(`${reason} has no outlet to judge`);
      const { name, flow: limit } = worst;
      const { setting } = duty;
      return { reason, outlet: name, setting, value: flowOf(duty, worst), limit, clearance };
    },
  };
}

/** No water runs backwards through an outlet, by 1e-9 of the greatest flow of any. */
export function noneReversed(outlets: readonly SystemOutlet[]): OutletCriterion {
  const reason = 'reverse-flow';
  return {
    reason,
    by: null,
    along: null,
    judge: ({ outletFlows, setting }) => {
      let index = 0;
      let greatest = 0;
      for (const [place, flow] of outletFlows.entries()) {
        if (flow < at(outletFlows, index)) index = place;
        greatest = Math.max(greatest, Math.abs(flow));
      }
      const value = at(outletFlows, index);
      // Outlets at rest are at rest in every state around: their clearance is no matter of rounding.
      const clearance = value >= 0 ? HOLDS : Math.max(FAILS, value / greatest + EQUAL);
      return { reason, outlet: outlets[index]?.name ?? null, setting, value, limit: 0, clearance };
    },
  };
}
