/** Finds the upgrades and years of a plan that are worth most under its budget. */
import { failed, type Result, success } from '../../curves/result.ts';
import { type Choice, usefulChoices } from './choices.ts';
import { fillPlan } from './fill-plan.ts';
import {
  type BinaryProgram,
  choiceAt,
  overspentRow,
  type ProgramSolver,
  planProgram,
} from './integer-program.ts';
import {
  type Contradiction,
  conflictingMusts,
  overspentMusts,
  placedMusts,
  ruledOutMusts,
} from './must-plan.ts';
import { firstOverspent } from './spending.ts';
import { candidateAt, type PlanItem, type PlanQuestion, type Upgrade } from './upgrade.ts';
import { upgradeValue } from './upgrade-value.ts';
import { brokenRules, cashValue } from './verify-plan.ts';

export interface SolvedPlan {
  /** By year, then by place of the candidate. */
  readonly items: readonly PlanItem[];
  /** [money] */
  readonly presentValue: number;
  readonly status: 'optimal' | 'time-limit';
  /**
   * How much better a plan could still be, as a share of its value [-]; null where it is worth nothing. 0 where it is
   * proven best.
   */
  readonly gap: number | null;
}

export type PlanFailure =
  | Contradiction
  /** Within the time no plan was found that makes all musts, and none was proven impossible. */
  | { readonly code: 'no-plan-in-time' };

export interface SolvingMeans {
  readonly solve: ProgramSolver;
  /** A plan that is known to keep the rules. */
  readonly known?: readonly PlanItem[] | undefined;
}

/** Sets that overspend by less than the solver notices are ruled out one by one, this many at most. */
const CUTS_MOST = 20;

/** Two values of one plan, summed in different orders, agree to this share of the money that moves. */
const AGREEMENT = 1e-9;

/**
 * The best plan by the solver that is handed in, checked from itself alone.
 *
 * @returns present value [money].
 * Accuracy: values agree with trying out all plans to 1e-9 (test/models/upgrade-plan/solve-plan.test.ts: 200 small
 *   cases).
 * Errors: `contradictory-musts`; `no-plan-in-time`.
 */
export function solvePlan(question: PlanQuestion, means: SolvingMeans): Result<SolvedPlan, PlanFailure> {
  const contradiction = ruledOutMusts(question) ?? (question.carryOver ? overspentMusts(question) : null);
  if (contradiction !== null) return failed(contradiction);
  const musts = placedMusts(question);
  const start = means.known ?? (musts === null ? null : fillPlan(question, musts));
  const choices = usefulChoices(question);
  const found = solveByCuts(question, choices, { ...means, start });
  // A plan that is known shows that the musts can be, whatever a solver takes for rounding.
  if (found.status === 'infeasible' && start === null) return failed(clash(question, means));
  const candidates = [start, found.items].filter((items) => items !== null);
  const best = candidates
    .map((items) => fillPlan(question, items))
    .toSorted((a, b) => worthOf(question, b) - worthOf(question, a))[0];
  if (best === undefined) return failed({ code: 'no-plan-in-time' });
  return success(answered(question, best, found));
}

interface Found {
  readonly status: 'optimal' | 'time-limit' | 'infeasible';
  readonly items: readonly PlanItem[] | null;
  readonly bound: number;
}

function solveByCuts(
  question: PlanQuestion,
  choices: readonly Choice[],
  { solve, start }: SolvingMeans & { readonly start: readonly PlanItem[] | null },
): Found {
  let program: BinaryProgram = planProgram(question, choices);
  const looseBound = boundWithoutBudget(question, choices);
  const startPlaces = start === null ? null : placesOf(choices, start);
  for (let cut = 0; cut < CUTS_MOST; cut++) {
    const { status, chosen, bound } = solve(program, startPlaces);
    const known = Math.min(bound ?? looseBound, looseBound);
    if (chosen === null)
      return { status: status === 'optimal' ? 'time-limit' : status, items: null, bound: known };
    const items = chosen.map((place) => itemOf(choiceAt(choices, place)));
    const year = firstOverspent(question, items);
    if (year === null) return { status, items, bound: known };
    program = { ...program, rows: [...program.rows, overspentRow(question, choices, { year, chosen })] };
  }
  return { status: 'time-limit', items: null, bound: looseBound };
}

const itemOf = ({ candidate, year }: Choice): PlanItem => ({ candidate, year });

/** Null where an item is none of the choices: then the solver begins without a start. */
function placesOf(choices: readonly Choice[], items: readonly PlanItem[]): readonly number[] | null {
  const places = items.map((item) =>
    choices.findIndex(({ candidate, year }) => candidate === item.candidate && year === item.year),
  );
  return places.includes(-1) ? null : places;
}

/** Each candidate, or of a group its best, in its best year. */
function boundWithoutBudget(question: PlanQuestion, choices: readonly Choice[]): number {
  const best = new Map<string, number>();
  for (const { candidate, value } of choices) {
    const { group, must } = candidateAt(question, candidate);
    const key = group === undefined || must === true ? `candidate ${candidate}` : `group ${group}`;
    best.set(key, Math.max(best.get(key) ?? Number.NEGATIVE_INFINITY, value));
  }
  return [...best.values()].reduce((sum, value) => sum + value, 0);
}

function clash(question: PlanQuestion, { solve }: SolvingMeans): Contradiction {
  return conflictingMusts(question, (musts) => {
    const alone = {
      ...question,
      candidates: question.candidates.map((one, place) => aloneAs(one, musts.includes(place))),
    };
    const { status } = solve(planProgram(alone, usefulChoices(alone)), null);
    return status === 'time-limit' ? null : status === 'optimal';
  });
}

/** Only its must-do counts, or nothing of it. */
const aloneAs = (upgrade: Upgrade, isMust: boolean): Upgrade =>
  isMust ? upgrade : { ...upgrade, must: false, cost: 0, yearlySaving: -1 };

const worthOf = (question: PlanQuestion, items: readonly PlanItem[]): number =>
  items.reduce(
    (sum, { candidate, year }) => sum + upgradeValue(candidateAt(question, candidate), year, question),
    0,
  );

/** Pair assertion: a plan that breaks a rule, or is worth other than its yearly cash, is never answered. */
function answered(
  question: PlanQuestion,
  unsorted: readonly PlanItem[],
  { status, bound }: Found,
): SolvedPlan {
  const items = unsorted.toSorted((a, b) => a.year - b.year || a.candidate - b.candidate);
  const broken = brokenRules(question, items);
  if (broken.length > 0) throw new Error(`invariant: the plan breaks its rules: ${broken.join('; ')}`);
  const presentValue = worthOf(question, items);
  const cash = cashValue(question, items);
  if (Math.abs(cash - presentValue) > AGREEMENT * moneyMoved(question, items)) {
    throw new Error(`invariant: the plan is worth ${presentValue} by its parts, ${cash} by its years`);
  }
  if (status === 'optimal') return { items, presentValue, status, gap: 0 };
  const more = Math.max(0, bound - presentValue);
  return { items, presentValue, status: 'time-limit', gap: presentValue > 0 ? more / presentValue : null };
}

function moneyMoved(question: PlanQuestion, items: readonly PlanItem[]): number {
  const highest = Math.max(1, (1 + question.discountRate) ** -question.years);
  return items.reduce((sum, { candidate }) => {
    const { cost, yearlySaving } = candidateAt(question, candidate);
    return sum + highest * (cost + question.years * Math.abs(yearlySaving));
  }, 0);
}
