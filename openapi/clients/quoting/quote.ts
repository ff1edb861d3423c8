/** What a client is quoted: each way to serve a loop, priced for a year and for its life. */
import {
  type Comparison,
  compared,
  type Duty,
  type Loop,
  type Pump,
  type Recommendation,
  recommended,
  type Service,
} from './service.ts';

/** A pump with how many of it would run side by side. */
export interface Offer {
  readonly pump: Pump;
  readonly count: number;
  /** Years that it has run already; 0 where it is to be bought. */
  readonly ageYears: number;
}

/** How money of several years is made comparable; rates are fractions a year. */
export interface Terms {
  readonly years: number;
  readonly discountRate: number;
  readonly inflation: number;
  readonly energyInflation: number;
  /** Money per hour. */
  readonly labourRate: number;
}

export interface QuoteRequest {
  readonly client: string;
  readonly loop: Loop;
  /** What is there now first: the others are measured against it. */
  readonly offers: readonly [Offer, ...Offer[]];
  readonly terms: Terms;
  /** Money per kWh. */
  readonly price: number;
  readonly currency: string;
}

export interface QuoteLine {
  readonly pump: string;
  readonly count: number;
  readonly setting: number;
  readonly power: number;
  readonly annualEnergy: number;
  readonly annualCost: number | null;
  /** Of all pumps of the line; null where none is stated, 0 where they are there already. */
  readonly purchase: number | null;
  /** Of all that it costs over the years. */
  readonly presentValue: number;
  /** Years after which what it costs more to buy has come back, discounted; null where it never has, or is there already. */
  readonly payback: number | null;
  readonly outlets: readonly {
    readonly name: string;
    readonly flow: number;
    readonly margin: number | null;
  }[];
  readonly cautions: readonly string[];
}

export interface Quote {
  readonly client: string;
  readonly loop: string;
  readonly summary: string;
  /** Which costs least over the years, in the words of the service. */
  readonly lifeCycle: string;
  readonly years: number;
  readonly price: number;
  readonly currency: string;
  readonly flowUnit: string;
  /** Cheapest to run first. */
  readonly lines: readonly QuoteLine[];
  readonly leftOut: readonly { readonly pump: string; readonly count: number; readonly why: string }[];
  readonly cautions: readonly string[];
  readonly basis: string;
}

const optionName = ({ pump, count }: Pick<Offer, 'pump' | 'count'>): string =>
  count === 1 ? pump.name : `${count} x ${pump.name}`;

/** Those that serve, in the order of the offers. */
function comparisonOf(
  { loop, offers, terms, price }: QuoteRequest,
  { ranking }: Recommendation,
): Parameters<typeof compared>[1] {
  const serving = offers.filter((_, place) => ranking.some(({ candidate }) => candidate === place));
  return {
    name: `${loop.name}: pumps compared`,
    ...terms,
    price,
    options: serving.map((offer) => ({
      name: optionName(offer),
      assemblies: [
        {
          loop,
          pump: offer.pump,
          count: offer.count,
          new: offer.ageYears === 0,
          ...(offer.ageYears === 0 ? {} : { ageYears: offer.ageYears }),
        },
      ],
    })),
  };
}

function lineOf(duty: Duty, { offers }: QuoteRequest, { options }: Comparison): QuoteLine {
  const offer = offers[duty.candidate];
  const option = options.find(({ name }) => offer !== undefined && name === optionName(offer));
  if (offer === undefined || option === undefined) throw new Error(`the service compared other pumps`);
  const { price } = offer.pump;
  const { name: pump } = duty.pump;
  const { count, setting, power, annualEnergy, annualCost } = duty;
  return {
    ...{ pump, count, setting, power, annualEnergy, annualCost },
    purchase: offer.ageYears > 0 ? 0 : price === undefined ? null : price * count,
    presentValue: option.presentValue,
    payback: option.payback?.discounted ?? null,
    outlets: duty.outlets.map(({ name, flow, margin }) => ({ name, flow, margin })),
    cautions: duty.cautions.map(({ detail }) => detail),
  };
}

function quoteOf(asked: QuoteRequest, recommendation: Recommendation, comparison: Comparison): Quote {
  const { client, loop, terms, price, currency } = asked;
  const { ranking, rejected, summary, cautions, basis, units } = recommendation;
  return {
    ...{ client, loop: loop.name, price, currency, summary },
    lifeCycle: comparison.summary,
    years: terms.years,
    flowUnit: units.flow ?? '',
    lines: ranking.map((duty) => lineOf(duty, asked, comparison)),
    leftOut: rejected.map(({ pump, count, detail }) => ({ pump: pump.name, count, why: detail })),
    cautions: [...cautions, ...comparison.cautions].map(({ detail }) => detail),
    basis: basis.modelVersion,
  };
}

/** Sends loop and pumps along; of them the service keeps the comparison alone. */
export async function quote(service: Service, asked: QuoteRequest): Promise<Quote> {
  const { loop, offers, price, currency } = asked;
  const pumps = offers.map(({ pump, count }) => ({ pump, count }));
  const recommendation = await recommended(service, { loop, pumps, price, currency });
  const comparison = await compared(service, comparisonOf(asked, recommendation));
  return quoteOf(asked, recommendation, comparison);
}
