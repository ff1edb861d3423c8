/** Finds the life-cycle cost of an option, by element and year. */
import {
  type ByElement,
  COST_ELEMENTS,
  type CostElement,
  type ExtraCost,
  type OptionCosts,
  yearlyCosts,
} from './option-costs.ts';
import { purchasesOf } from './ownership.ts';
import { type MoneyTerms, presentFactor } from './terms.ts';

/** A year of the life cycle; its amounts in money [money] of that year. */
export interface CostYear {
  /** From 0, which is now [years]. */
  readonly year: number;
  /** In the money of that year. */
  readonly elements: ByElement;
  readonly total: number;
  /** [money] of today. */
  readonly presentValue: number;
  /** Present values up to and with this year [money]. */
  readonly cumulated: number;
  /** What paybacks count: what runs through the year, and what is paid at its end, what is left of devices apart. */
  readonly today: Spent;
  readonly discounted: Spent;
}

/** What a year spends [money]. */
export interface Spent {
  readonly running: number;
  readonly paid: number;
}

export interface LifeCycle {
  /** [money] */
  readonly presentValue: number;
  /** Present values; they add up to that of the whole. */
  readonly elements: ByElement;
  /** Years 0 to N. */
  readonly years: readonly CostYear[];
}

const byElement = (costOf: (element: CostElement) => number): ByElement => ({
  purchase: costOf('purchase'),
  installation: costOf('installation'),
  energy: costOf('energy'),
  operation: costOf('operation'),
  maintenance: costOf('maintenance'),
  downtime: costOf('downtime'),
  environment: costOf('environment'),
  disposal: costOf('disposal'),
});

const sumOf = (elements: ByElement): number => COST_ELEMENTS.reduce((sum, name) => sum + elements[name], 0);

interface PlainYear {
  readonly year: number;
  readonly elements: Record<CostElement, number>;
  /** What is left of devices at the end, below 0. */
  rest: number;
}

/** Years 0..N at which an extra is paid. */
function payments({ year, everyYears }: ExtraCost, years: readonly PlainYear[]): readonly PlainYear[] {
  return years.filter(
    ({ year: at }) =>
      at === year || (everyYears !== undefined && at > year && (at - year) % everyYears === 0),
  );
}

/** Today's money of every year. */
function plainYears(option: OptionCosts, years: number): readonly PlainYear[] {
  const { energy, maintenance, downtime } = yearlyCosts(option);
  const all: readonly PlainYear[] = Array.from({ length: years + 1 }, (_, year) => ({
    year,
    elements: { ...byElement(() => 0), ...(year === 0 ? {} : { energy, maintenance, downtime }) },
    rest: 0,
  }));
  for (const extra of option.extras) {
    for (const { elements } of payments(extra, all)) elements[extra.element] += extra.cost;
  }
  for (const devices of option.devices) {
    for (const { year, cost } of purchasesOf(devices, years)) {
      const at = all[year];
      if (at === undefined) throw new Error(`invariant: a purchase in year ${year} of ${years}`);
      at.elements.purchase += cost;
      at.rest += Math.min(0, cost);
    }
  }
  return all;
}

/** What runs through every year alike, extras of every year among it. */
function yearly(option: OptionCosts): ByElement {
  const elements = { ...byElement(() => 0), ...yearlyCosts(option) };
  for (const { element, cost, year, everyYears } of option.extras) {
    if (everyYears === 1 && year <= 1) elements[element] += cost;
  }
  return elements;
}

function spent(all: ByElement, running: ByElement, year: number, rest: number): Spent {
  const through = year === 0 ? 0 : sumOf(running);
  return { running: through, paid: sumOf(all) - rest - through };
}

/**
 * Life-cycle cost C = sum over the years n = 0..N and the elements of C_n ((1+p)/(1+i))^n, with p the rise of energy prices for
 * energy and of all others for the rest: purchase in year 0, replacements, what is left at the end, running costs at the end of
 * each year, extras in their years.
 *
 * Source: Hydraulic Institute and Europump, Pump Life Cycle Costs (2001), whose elements these are.
 */
export function lifeCycle(option: OptionCosts, terms: MoneyTerms): LifeCycle {
  const { discountRate, inflation, energyInflation } = terms;
  const riseOf = (element: CostElement) => (element === 'energy' ? energyInflation : inflation);
  const totals = { ...byElement(() => 0) };
  const running = yearly(option);
  const years: CostYear[] = [];
  let cumulated = 0;
  for (const { year, elements: plain, rest } of plainYears(option, terms.years)) {
    const elements = byElement((name) => plain[name] * (1 + riseOf(name)) ** year);
    const present = byElement(
      (name) => plain[name] * presentFactor({ year, rise: riseOf(name), discountRate }),
    );
    for (const name of COST_ELEMENTS) totals[name] += present[name];
    const presentValue = sumOf(present);
    cumulated += presentValue;
    years.push({
      ...{ year, elements, total: sumOf(elements), presentValue, cumulated },
      today: spent(
        byElement((name) => plain[name]),
        running,
        year,
        rest,
      ),
      discounted: spent(
        present,
        byElement((name) => running[name] * presentFactor({ year, rise: riseOf(name), discountRate })),
        year,
        rest * presentFactor({ year, rise: inflation, discountRate }),
      ),
    });
  }
  return { presentValue: sumOf(totals), elements: totals, years };
}
