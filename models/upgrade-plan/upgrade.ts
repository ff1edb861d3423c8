/** What an upgrade plan chooses among, under which budget. */

export interface Upgrade {
  readonly name: string;
  /** Money, paid at the start of the year in which it is made. */
  readonly cost: number;
  /** Money at the end of each year from then on; negative where it costs more to run. */
  readonly yearlySaving: number;
  readonly lifeYears: number;
  /** Of the upgrades of one group at most one is made. */
  readonly group?: string | undefined;
  /** First and last year in which it may be made; years count from 1. */
  readonly notBefore?: number | undefined;
  readonly notAfter?: number | undefined;
  readonly must?: boolean | undefined;
}

export interface PlanQuestion {
  /** Length of the plan. */
  readonly years: number;
  /** Money for years 1, 2, ..; nothing for those beyond its end. */
  readonly budget: readonly number[];
  /** Whether money that is not spent may be spent in a later year. */
  readonly carryOver: boolean;
  /** A year, above -1. */
  readonly discountRate: number;
  readonly candidates: readonly Upgrade[];
}

/** An upgrade, by its place among the candidates, made in a year. */
export interface PlanItem {
  readonly candidate: number;
  readonly year: number;
}

export function candidateAt({ candidates }: PlanQuestion, place: number): Upgrade {
  const upgrade = candidates[place];
  if (upgrade === undefined) throw new Error(`invariant: there is no candidate ${place}`);
  return upgrade;
}
