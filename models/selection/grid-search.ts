/** Finds the smallest grid setting at which every criterion holds, for one candidate. */
import type { DutyFigures, ExactDuty } from '../duty/duty-point.ts';
import { estimateDuty, exactDuty, type SampledLoop } from '../duty/sampled-loop.ts';
import { hasRequirement } from '../network/margins.ts';
import { type PumpAtSetting, type PumpMaker, pumpAtSetting } from '../pump/pump-at-setting.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { gridSize, settingAt } from '../pump/settings-grid.ts';
import { type Criterion, type CriterionReason, holds, type Judgement } from './criterion.ts';
import { NOTHING_RISES, type Rises, risesOf } from './rising-flows.ts';
import { tighterJudgements } from './tighter-judgements.ts';

/** Two criteria that hold at no setting together. */
export type Clash = readonly [Judgement, Judgement];

/** What a search of the grid found; `settings` [-] were looked at. */
export type GridOutcome =
  | { readonly feasible: true; readonly duty: ExactDuty }
  | {
      readonly feasible: false;
      /** One a criterion that holds at no setting, as judged where it comes nearest; empty when each holds somewhere. */
      readonly failing: readonly Judgement[];
      readonly clash: Clash | null;
      readonly settings: number;
    };

/** Judgements nearer to their limit than this are taken on the exact duty: ten times what samples may be off. */
export const CLOSE = 1e-3;

interface Judged<Duty extends DutyFigures = DutyFigures> {
  readonly duty: Duty;
  readonly judgements: readonly Judgement[];
}

interface Search {
  readonly sampled: SampledLoop;
  at(index: number): PumpAtSetting;
  readonly size: number;
  readonly criteria: readonly Criterion[];
  readonly drooping: boolean;
  /** What rises with the setting: where a criterion follows it, `along` says where the criterion holds. */
  rises(): Rises;
  judged(index: number): Judged;
  exact(index: number): Judged<ExactDuty>;
}

/** The loop, the pump and the criteria as they are searched: as entered, or in the worst case. */
export interface SearchedEnd {
  readonly sampled: SampledLoop;
  readonly criteria: readonly Criterion[];
  readonly pumpAt?: PumpMaker | undefined;
}

/**
 * Searches the grid of a candidate's settings for the smallest at which every criterion holds.
 *
 * Every setting is judged at its own duty. Where flows rise with the setting, criteria that hold from some flow on,
 * or up to some flow, are found by bisection; otherwise all settings are looked at. The answer's duty is exact. With
 * a `worstCase` each criterion, of the same list, must hold there too; the duty given is the one as entered.
 * @param search count [-] of equal pumps in parallel.
 * Errors: throws `SolveFailure` where network or search reach a limit.
 */
export function searchGrid({
  pump,
  count,
  worstCase,
  ...end
}: SearchedEnd & {
  readonly pump: PumpModel;
  readonly count: number;
  readonly worstCase?: SearchedEnd | undefined;
}): GridOutcome {
  const plain = startSearch({ ...end, pump, count });
  const worst = worstCase === undefined ? null : startSearch({ ...worstCase, pump, count });
  const search = worst === null ? plain : inBothCases(plain, worst);
  const start = Math.max(firstServed(plain), worst === null ? 0 : firstServed(worst));
  for (let index = start; index < search.size; index++) {
    const { judgements } = search.judged(index);
    if (judgements.every(holds)) return { feasible: true, duty: search.exact(index).duty };
    if (judgements.some((one) => !holds(one) && alongOf(search, one.reason) === 'up-to')) break;
  }
  return rejection(search);
}

/** Each criterion as judged where it has less to spare: as entered or in the worst case. */
function inBothCases(plain: Search, worst: Search): Search {
  return {
    ...plain,
    rises() {
      const [entered, against] = [plain.rises(), worst.rises()];
      return {
        flow: entered.flow && against.flow,
        'flow-at-full-speed': entered['flow-at-full-speed'] && against['flow-at-full-speed'],
      };
    },
    judged: remembered((index) => {
      const { duty, judgements } = plain.judged(index);
      return { duty, judgements: tighterJudgements(judgements, worst.judged(index).judgements) };
    }),
    exact: remembered((index) => {
      const { duty, judgements } = plain.exact(index);
      return { duty, judgements: tighterJudgements(judgements, worst.exact(index).judgements) };
    }),
  };
}

/** Where a criterion holds, as far as is known before all settings are judged. */
function alongOf({ criteria, rises }: Search, reason: CriterionReason): Criterion['along'] {
  const criterion = criteria.find((one) => one.reason === reason);
  return criterion === undefined || criterion.by === null || !rises()[criterion.by] ? null : criterion.along;
}

function startSearch({
  sampled,
  pump,
  count,
  criteria,
  pumpAt = pumpAtSetting,
}: SearchedEnd & { readonly pump: PumpModel; readonly count: number }): Search {
  const { settings } = pump.entered;
  const size = gridSize(settings);
  const at = remembered((index) => pumpAt(pump, { setting: settingAt(settings, index), count }));
  const judge = <Duty extends DutyFigures>(duty: Duty): Judged<Duty> => ({
    duty,
    judgements: criteria.map((one) => one.judge(duty)),
  });
  let guess = sampled.required?.flow;
  const estimated = remembered((index) => {
    const duty = estimateDuty(sampled, at(index), guess);
    // Settings are mostly looked at side by side.
    if (duty.flow > 0) guess = duty.flow;
    return duty;
  });
  const exact = remembered((index) => judge(exactDuty(sampled, at(index), estimated(index))));
  const judged = remembered((index): Judged<DutyFigures> => {
    const estimate = judge(estimated(index));
    const isClose = estimate.judgements.some(({ clearance }) => Math.abs(clearance) < CLOSE);
    return isClose ? exact(index) : estimate;
  });
  const headAtRest = sampled.atRest?.head ?? Number.POSITIVE_INFINITY;
  const { drooping } = pump.fit.headCurve;
  const rises = remembered((): Rises => {
    if (drooping) return NOTHING_RISES;
    const firstMoving = firstIndex(size, (index) => at(index).headAt(0).head > headAtRest);
    return risesOf({ sampled, dutyAt: estimated, firstMoving, last: size - 1 });
  });
  return { sampled, at, size, criteria, drooping, rises: () => rises(0), judged, exact };
}

/** The first of `size` places at which a criterion holds that holds from somewhere on; `size` where it never does. */
function firstIndex(size: number, holdsAt: (index: number) => boolean): number {
  let low = 0;
  let high = size;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (holdsAt(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

function remembered<T>(compute: (index: number) => T): (index: number) => T {
  const known: T[] = [];
  return (index) => {
    const before = known[index];
    if (before !== undefined) return before;
    const value = compute(index);
    known[index] = value;
    return value;
  };
}

/**
 * The setting from which on the outlets may be served. Where the pump curve falls, its duty reaches the required flow when its
 * head at that flow reaches the required head; where that is close, the setting before is looked at as well, on its duty.
 */
function firstServed({ drooping, size, at, sampled: { required, requiredIsLeast, loop } }: Search): number {
  if (drooping || !requiredIsLeast || !hasRequirement(loop.system.outlets)) return 0;
  if (required === null) return size;
  // Outlets that feed one another are served by a pump that moves nothing.
  if (required.flow === 0) return 0;
  const spare = (index: number) =>
    (at(index).headAt(required.flow).head - required.head) / Math.abs(required.head);
  const first = firstIndex(size, (index) => spare(index) >= 0);
  return first > 0 && spare(first - 1) > -CLOSE ? first - 1 : first;
}

function rejection(search: Search): GridOutcome {
  const failing = search.criteria.flatMap(({ reason }) => {
    const index = nearestTo(search, reason);
    if (holds(judgementOf(search.judged(index), reason))) return [];
    // On the exact duty, so that the figures given are those of a duty point asked for.
    return [judgementOf(search.exact(index), reason)];
  });
  return {
    feasible: false,
    failing,
    clash: failing.length === 0 ? findClash(search) : null,
    settings: search.size,
  };
}

/** Index of the setting where a criterion first holds, else where it comes nearest to holding. */
function nearestTo(search: Search, reason: CriterionReason): number {
  let nearest = -1;
  let clearance = Number.NEGATIVE_INFINITY;
  for (const index of whereToLook(search, reason)) {
    const judgement = judgementOf(search.judged(index), reason);
    if (judgement.clearance > clearance || nearest < 0) ({ clearance } = judgement);
    else continue;
    nearest = index;
    if (holds(judgement)) break;
  }
  return nearest;
}

function whereToLook(search: Search, reason: CriterionReason): Iterable<number> {
  const along = alongOf(search, reason);
  const last = search.size - 1;
  if (along === 'from') return [last];
  if (along === 'up-to') return [0];
  return endsFirst(last);
}

/** Most criteria that hold anywhere hold at an end. */
function* endsFirst(last: number): Generator<number> {
  yield last;
  for (let index = 0; index < last; index++) yield index;
}

function judgementOf({ judgements }: Judged, reason: CriterionReason): Judgement {
  const found = judgements.find((one) => one.reason === reason);
  if (found === undefined) throw new Error(`no criterion gives ${reason}`);
  return found;
}

/** Wherever this fails `not-enough-head` fails too, which says more. */
const isImplied = ({ reason }: Pick<Judgement, 'reason'>): boolean => reason === 'dead-head';

/** Two criteria of which one holds from a setting on and the other only up to a lower one; else by looking at all settings. */
function findClash(search: Search): Clash | null {
  const isFrom = ({ reason }: Judgement) => alongOf(search, reason) === 'from';
  const first = firstIndex(search.size, (index) =>
    search.judged(index).judgements.every((one) => holds(one) || !isFrom(one)),
  );
  const { judgements } = search.judged(Math.min(first, search.size - 1));
  const met = judgements.find((one) => isFrom(one) && holds(one) && !isImplied(one));
  const broken = judgements.find((one) => !holds(one) && alongOf(search, one.reason) === 'up-to');
  return met === undefined || broken === undefined ? clashOfAll(search) : [met, broken];
}

/** The two criteria that hold together least often, judged at a setting where the first holds. */
function clashOfAll(search: Search): Clash | null {
  const all = Array.from({ length: search.size }, (_, index) =>
    search.judged(index).judgements.filter((one) => !isImplied(one)),
  );
  let clash: Clash | null = null;
  let fewest = Number.POSITIVE_INFINITY;
  const count = search.criteria.filter((one) => !isImplied(one)).length;
  for (let a = 0; a < count; a++) {
    for (let b = a + 1; b < count; b++) {
      const together = all.filter((one) => isHeld(one[a]) && isHeld(one[b])).length;
      const withFirst = all.find((one) => isHeld(one[a]) && !isHeld(one[b]));
      const [first, second] = [withFirst?.[a], withFirst?.[b]];
      if (together >= fewest || first === undefined || second === undefined) continue;
      fewest = together;
      clash = [first, second];
    }
  }
  return clash;
}

const isHeld = (judgement: Judgement | undefined): boolean => judgement !== undefined && holds(judgement);
