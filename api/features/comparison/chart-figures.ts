/** Names the figures that the chart of a comparison shows. */
import type { ByElement } from '../../../models/money/option-costs.ts';

export interface ChartedOption {
  readonly name: string;
  /** Whether all that it runs serves. */
  readonly feasible: boolean;
  readonly presentValue: number;
  /** Present values, adding up to that of the option. */
  readonly elements: ByElement;
  /** Present value of all costs up to and with a year, and of what runs through it; the rest is paid at its end. */
  readonly years: readonly { readonly year: number; readonly running: number; readonly cumulated: number }[];
  /** Against the first option; null for that one, and for one that costs the same. */
  readonly payback: { readonly discounted: number | null } | null;
}

export interface ChartedComparison {
  readonly name: string;
  readonly currency: string;
  /** The others are compared with the first. */
  readonly options: readonly ChartedOption[];
}
