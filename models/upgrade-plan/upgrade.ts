/** States what an upgrade plan chooses among, under which budget. */

export interface Upgrade {
  readonly name: string;
  /** Paid at the start of its year [money]. */
  readonly cost: number;
  /** At the end of its year and of each later one [money/year]. */
  readonly yearlySaving: number;
  /** [years] */
  readonly lifeYears: number;
  /** Of the upgrades of one group at most one is made. */
  readonly group?: string | undefined;
  /** First year in which it may be made [years]; undefined: 1. */
  readonly notBefore?: number | undefined;
  /** Last year in which it may be made [years]; undefined: the last. */
  readonly notAfter?: number | undefined;
  readonly must?: boolean | undefined;
}

export interface PlanQuestion {
  /** Length of the plan [years]. */
  readonly years: number;
  /** For years 1, 2, .. [money]; nothing for those beyond its end. */
  readonly budget: readonly number[];
  /** Whether money that is not spent may be spent in a later year. */
  readonly carryOver: boolean;
  /** [1/year], above -1. */
  readonly discountRate: number;
  readonly candidates: readonly Upgrade[];
}

/** An upgrade, by its place among the candidates [-], made in a year [years]. */
export interface PlanItem {
  readonly candidate: number;
  readonly year: number;
}

/** The candidate at a place [-]; throws where there is none, which is a bug. */
export function candidateAt({ candidates }: PlanQuestion, place: number): Upgrade {
  const upgrade = candidates[place];
  if (upgrade === undefined) throw new Error(`invariant: there is no candidate ${place}`);
  return upgrade;
}
