/** States an upgrade plan as a program of yes and no: what to make largest, under which rows. */
import type { Choice } from './choices.ts';
import { budgetUpTo, mostWithin } from './spending.ts';
import { candidateAt, type PlanQuestion } from './upgrade.ts';

/**
 * A rule: least <= sum of coefficient x variable <= most, in the unit of the coefficients [any], over the variables
 * named by their places [-].
 */
export interface ProgramRow {
  readonly places: readonly number[];
  readonly coefficients: readonly number[];
  readonly least: number;
  readonly most: number;
}

/** Find variables of 0 or 1 that keep all rows and make the sum of gain [money] x variable largest. */
export interface BinaryProgram {
  readonly gains: readonly number[];
  readonly rows: readonly ProgramRow[];
}

export interface ProgramSolution {
  readonly status: 'optimal' | 'time-limit' | 'infeasible';
  /** The places of the variables that are 1 [-]; null where none was found. */
  readonly chosen: readonly number[] | null;
  /** No solution gains more [money]; null where no bound was found. */
  readonly bound: number | null;
}

/** Solves a program within the time that it keeps to itself, from the places that are 1 in a solution known, null for none. */
export type ProgramSolver = (program: BinaryProgram, start: readonly number[] | null) => ProgramSolution;

const NO_LEAST = Number.NEGATIVE_INFINITY;

/** One variable a choice: each candidate once at most, a must once, a group once at most, each year within its budget. */
export function planProgram(question: PlanQuestion, choices: readonly Choice[]): BinaryProgram {
  return {
    gains: choices.map(({ value }) => value),
    rows: [
      ...candidateRows(question, choices),
      ...groupRows(question, choices),
      ...budgetRows(question, choices),
    ],
  };
}

function placesBy<Key>(choices: readonly Choice[], keyOf: (choice: Choice) => Key | undefined) {
  const places = new Map<Key, number[]>();
  for (const [place, choice] of choices.entries()) {
    const key = keyOf(choice);
    if (key === undefined) continue;
    const known = places.get(key);
    if (known === undefined) places.set(key, [place]);
    else known.push(place);
  }
  return places;
}

const ones = (places: readonly number[]): readonly number[] => places.map(() => 1);

/** A must that no year's budget reaches has a row over nothing, which cannot hold. */
function candidateRows(question: PlanQuestion, choices: readonly Choice[]): readonly ProgramRow[] {
  const placesOf = placesBy(choices, ({ candidate }) => candidate);
  return question.candidates.flatMap(({ must }, candidate) => {
    const places = placesOf.get(candidate) ?? [];
    if (places.length === 0 && must !== true) return [];
    return [{ places, coefficients: ones(places), least: must === true ? 1 : NO_LEAST, most: 1 }];
  });
}

const groupRows = (question: PlanQuestion, choices: readonly Choice[]): readonly ProgramRow[] =>
  [...placesBy(choices, ({ candidate }) => candidateAt(question, candidate).group).values()].map(
    (places) => ({
      places,
      coefficients: ones(places),
      least: NO_LEAST,
      most: 1,
    }),
  );

const counts =
  ({ carryOver }: PlanQuestion, year: number) =>
  (choice: Choice): boolean =>
    carryOver ? choice.year <= year : choice.year === year;

function budgetRows(question: PlanQuestion, choices: readonly Choice[]): readonly ProgramRow[] {
  return Array.from({ length: question.years }, (_, place) => place + 1).flatMap((year) => {
    const counted = counts(question, year);
    const places = [...choices.keys()].filter((place) => counted(choiceAt(choices, place)));
    if (places.length === 0) return [];
    const coefficients = places.map((place) => costOf(question, choiceAt(choices, place)));
    return [{ places, coefficients, least: NO_LEAST, most: mostWithin(budgetUpTo(question, year)) }];
  });
}

/**
 * A row that rules out a set of choices which overspends a year [years] by less than a solver notices: of the
 * candidates that are paid for by then, one must go.
 */
export function overspentRow(
  question: PlanQuestion,
  choices: readonly Choice[],
  overspent: { readonly year: number; readonly chosen: readonly number[] },
): ProgramRow {
  const counted = counts(question, overspent.year);
  const paid = new Set(
    overspent.chosen
      .map((place) => choiceAt(choices, place))
      .filter(counted)
      .map(({ candidate }) => candidate),
  );
  const places = [...choices.keys()].filter((place) => {
    const choice = choiceAt(choices, place);
    return counted(choice) && paid.has(choice.candidate);
  });
  return { places, coefficients: ones(places), least: NO_LEAST, most: paid.size - 1 };
}

/** The choice at a place [-]; throws where there is none, which is a bug. */
export function choiceAt(choices: readonly Choice[], place: number): Choice {
  const choice = choices[place];
  if (choice === undefined) throw new Error(`invariant: there is no choice ${place}`);
  return choice;
}

const costOf = (question: PlanQuestion, { candidate }: Choice): number =>
  candidateAt(question, candidate).cost;
