/** Prices what it costs to let a fault go on, against ending it. */
import { interpolate } from '../../curves/interpolate.ts';
import type { Held } from './metered-loop.ts';

/** What ends a fault: a cleaning of the loop, a service of its pump. */
export type Remedy = 'cleaning' | 'service';

/** Over this many days costs are followed. */
const FOLLOWED_DAYS = 3650;
const YEAR_DAYS = 365;
const KWH_PER_WATT_DAY = 0.024;

export interface WaitingQuestion {
  /** Magnitude so many days after now; of days before now too. */
  readonly magnitudeAt: (day: number) => number;
  /** Days from the onset to now. */
  readonly grown: number;
  readonly grows: boolean;
  /** By rising magnitude: what it takes to hold the flow. */
  readonly held: readonly Held[];
  /** Without the fault [W]. */
  readonly power: number;
  /** Money per kWh. */
  readonly price: number;
  readonly remedy: Remedy;
  /** Of ending it once; null: not known. */
  readonly cost: number | null;
  /** Days from the onset to the first shortfall; null: none is foretold. */
  readonly shortfallAfter: number | null;
}

export interface CheapestInterval {
  readonly everyDays: number;
  /** Of one remedy. */
  readonly cost: number;
  /** Remedies and excess together. */
  readonly annualCost: number;
  /** Whether an outlet would get less than it requires before they are cheapest. */
  readonly limitedByShortfall: boolean;
}

export interface Waiting {
  readonly remedy: Remedy;
  readonly annualExcessCost: number;
  readonly nextYearCost: number;
  /** Days from now from which on no setting restores the flow, below 0 in the past; null: none foreseen. */
  readonly capReached: number | null;
  readonly cheapestInterval: CheapestInterval | null;
}

/** The power is never beyond that of the highest setting: past the cap the flow falls instead. */
export function waitingCost(question: WaitingQuestion): Waiting {
  const { magnitudeAt, grown, held, power, price } = question;
  const [xs, ys] = [
    [0, ...held.map(({ magnitude }) => magnitude)],
    [power, ...held.map((one) => one.power)],
  ];
  const excessAt = (day: number): number =>
    KWH_PER_WATT_DAY * price * Math.max(0, interpolate(xs, ys, magnitudeAt(day)) - power);
  const year = Array.from({ length: YEAR_DAYS }, (_, day) => excessAt(day + 0.5));
  const cap = capOf(held);
  const followed = Array.from({ length: FOLLOWED_DAYS }, (_, i) => i - Math.floor(grown));
  return {
    remedy: question.remedy,
    annualExcessCost: YEAR_DAYS * excessAt(0),
    nextYearCost: year.reduce((sum, one) => sum + one, 0),
    capReached: cap === null ? null : (followed.find((day) => magnitudeAt(day) >= cap) ?? null),
    cheapestInterval: cheapestInterval(excessAt, question),
  };
}

/** The magnitude from which on the highest setting does not restore the flow; null where it always does. */
function capOf(held: readonly Held[]): number | null {
  const place = held.findIndex(({ spare }) => spare < 0);
  if (place < 0) return null;
  const around = held.slice(Math.max(0, place - 1), place + 1);
  return interpolate(
    around.map(({ spare }) => -spare),
    around.map(({ magnitude }) => magnitude),
    0,
  );
}

/** The days T that make (C + excess of T days from clean)/T least; null where it does not grow or C is not known. */
function cheapestInterval(
  excessAt: (day: number) => number,
  { cost, grows, grown, shortfallAfter }: WaitingQuestion,
): CheapestInterval | null {
  if (cost === null || !grows) return null;
  const most = Math.max(1, Math.floor(shortfallAfter ?? FOLLOWED_DAYS));
  let [excess, everyDays, cheapest, limitedByShortfall] = [0, 1, Number.POSITIVE_INFINITY, false];
  for (let days = 1; days <= FOLLOWED_DAYS; days += 1) {
    excess += excessAt(days - 0.5 - grown);
    const daily = (cost + excess) / days;
    if (daily >= cheapest) continue;
    limitedByShortfall = days > most;
    if (limitedByShortfall) break;
    [everyDays, cheapest] = [days, daily];
  }
  return { everyDays, cost, annualCost: YEAR_DAYS * cheapest, limitedByShortfall };
}
