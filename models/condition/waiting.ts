/** What it costs to put up with a drift, against what it costs to end it. */

/** Money and years. */
export interface Waiting {
  /** Residuals of flow and power that it rests on. */
  readonly flow: number;
  readonly drawn: number;
  /** What holding the flow costs a year now beyond what it cost by the data. */
  readonly excessCost: number;
  /** By how much that grows each year. */
  readonly growthPerYear: number;
  /** What waiting another year costs: the excess now, and half a year's growth. */
  readonly costOfAYear: number;
  /** Null without a cost of cleaning. */
  readonly cleaning: CheapestInterval | null;
}

export interface CheapestInterval {
  readonly cost: number;
  /** Years between cleanings at which they and the waste are cheapest together. */
  readonly everyYears: number;
  /** Cleaning and waste a year at that interval. */
  readonly annualCost: number;
  /** Whether an outlet would fall short before they are cheapest: the interval is then the time until it does. */
  readonly endsAtShortfall: boolean;
}

/** Of a year of 365 days, as everywhere. */
const KILOWATT_HOURS_PER_WATT_YEAR = 8.76;

interface Question {
  /** Power at the installed setting by the data [W]. */
  readonly power: number;
  /** Of that, what is drawn at any speed [W]. */
  readonly standbyPower: number;
  /** Of the speed, in the pump's power law. */
  readonly exponent: number;
  /** Share of flow and of power beyond the data now, and their slopes a year. */
  readonly flow: { readonly residual: number; readonly slope: number };
  readonly drawn: { readonly residual: number; readonly slope: number };
  /** Money per kWh. */
  readonly price: number;
  readonly cleaningCost: number | null;
  /** Years from clean until an outlet falls short, above 0; null: none does. */
  readonly longest: number | null;
}

/**
 * Flow down by R at a setting is won back by speed, which without static head raises what is drawn beyond standby Ps by
 * (1 + R)^-k: the excess is (P (1 + Rp) - Ps)(1 + R)^-k + Ps - P, Rp that of power, and grows by
 * P bp (1 + R)^-k - k b (P (1 + Rp) - Ps)(1 + R)^-(k+1) a year, b and bp the slopes of R and Rp. Null where there is no excess and none comes; without growth no interval is the cheapest.
 */
export function waiting({
  power,
  standbyPower,
  exponent,
  flow,
  drawn,
  price,
  cleaningCost,
  longest,
}: Question): Waiting | null {
  const worth = KILOWATT_HOURS_PER_WATT_YEAR * price;
  const raise = (1 + flow.residual) ** -exponent;
  const beyond = power * (1 + drawn.residual) - standbyPower;
  const excessCost = Math.max(0, worth * (beyond * raise + standbyPower - power));
  const slope = power * drawn.slope * raise - (exponent * flow.slope * beyond * raise) / (1 + flow.residual);
  const growthPerYear = Math.max(0, worth * slope);
  if (excessCost === 0 && growthPerYear === 0) return null;
  return {
    ...{ flow: flow.residual, drawn: drawn.residual },
    excessCost,
    growthPerYear,
    costOfAYear: excessCost + growthPerYear / 2,
    cleaning:
      cleaningCost === null || growthPerYear === 0
        ? null
        : cheapestInterval(cleaningCost, growthPerYear, longest),
  };
}

/**
 * The interval T that makes (C + g T^2/2)/T least, waste growing from 0 at g a year each year: T = sqrt(2 C/g), at which a
 * year costs sqrt(2 C g); exact for growth in a straight line. Where outlets allow only a shorter one, `longest`, that is it.
 *
 * Source: the square-root rule of periodic work against a linearly growing cost (Harris 1913, How many parts to make at once,
 *   for lots; here of cleanings; from memory).
 */
export function cheapestInterval(
  cost: number,
  growthPerYear: number,
  longest: number | null = null,
): CheapestInterval {
  const cheapest = Math.sqrt((2 * cost) / growthPerYear);
  const everyYears = Math.min(cheapest, longest ?? cheapest);
  return {
    cost,
    everyYears,
    annualCost: cost / everyYears + (growthPerYear * everyYears) / 2,
    endsAtShortfall: everyYears < cheapest,
  };
}
