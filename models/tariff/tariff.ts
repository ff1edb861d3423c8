/** Describes a tariff as its user enters it: what a kWh costs by the wall clock. */
import type { DayKind } from '../calendar/day-kind.ts';

export interface TariffPeriod {
  readonly name: string;
  /** [money/kWh]; negative where feeding in is paid. */
  readonly price: number;
  /** [month] 1..12; undefined: every month. */
  readonly months?: readonly number[] | undefined;
  /** Undefined: every day, holidays too. A holiday is none of the weekdays. */
  readonly days?: readonly DayKind[] | undefined;
  /** Both or neither, `17:00`; `to` at or before `from` runs over midnight, each instant by its own date. */
  readonly from?: string | undefined;
  readonly to?: string | undefined;
}

export interface Tariff {
  readonly name: string;
  /** `2026-12-25`. */
  readonly holidays: readonly string[];
  /** The first that matches wins. */
  readonly periods: readonly TariffPeriod[];
  /** Of all other times, its price [money/kWh]. */
  readonly otherwise: { readonly name: string; readonly price: number };
  /** [money/day] */
  readonly standingChargePerDay: number;
}
