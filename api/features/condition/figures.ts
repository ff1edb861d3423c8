/** Names what the chart of a loop's condition shows, with instants in ms. */

export interface Residual {
  readonly time: number;
  /** Measured less predicted, % of what the series is measured against. */
  readonly percent: number;
}

export interface ResidualSeries {
  /** What was measured: `flow`, `electrical power`. */
  readonly name: string;
  /** `% of predicted`. */
  readonly unit: string;
  readonly points: readonly Residual[];
  /** The ends of the robust trend; null where the points are too few for one. */
  readonly trend: {
    readonly from: Residual;
    readonly until: Residual;
    /** Points of per cent a year, with its interval. */
    readonly perYear: number;
    readonly low: number;
    readonly high: number;
  } | null;
}

export interface ConditionFigures {
  readonly loopName: string;
  /** What is found, in a word or two, and in sentences. */
  readonly verdict: string;
  readonly summary: string;
  readonly from: number;
  readonly until: number;
  readonly series: readonly ResidualSeries[];
}
