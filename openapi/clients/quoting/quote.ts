/** What a client is quoted: each way to serve a loop, priced for a year. */
import {
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
}

export interface QuoteRequest {
  readonly client: string;
  readonly loop: Loop;
  readonly offers: readonly Offer[];
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
  /** Of all pumps of the line; null where none is stated. */
  readonly purchase: number | null;
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
  readonly price: number;
  readonly currency: string;
  readonly flowUnit: string;
  /** Cheapest to run first. */
  readonly lines: readonly QuoteLine[];
  readonly leftOut: readonly { readonly pump: string; readonly count: number; readonly why: string }[];
  readonly cautions: readonly string[];
  readonly basis: string;
}

function lineOf(duty: Duty, offers: readonly Offer[]): QuoteLine {
  const price = offers[duty.candidate]?.pump.price;
  return {
    pump: duty.pump.name,
    count: duty.count,
    setting: duty.setting,
    power: duty.power,
    annualEnergy: duty.annualEnergy,
    annualCost: duty.annualCost,
    purchase: price === undefined ? null : price * duty.count,
    outlets: duty.outlets.map(({ name, flow, margin }) => ({ name, flow, margin })),
    cautions: duty.cautions.map(({ detail }) => detail),
  };
}

function quoteOf(
  { client, loop, offers, price, currency }: QuoteRequest,
  { ranking, rejected, summary, cautions, basis, units }: Recommendation,
): Quote {
  return {
    client,
    loop: loop.name,
    summary,
    price,
    currency,
    flowUnit: units.flow ?? '',
    lines: ranking.map((duty) => lineOf(duty, offers)),
    leftOut: rejected.map(({ pump, count, detail }) => ({ pump: pump.name, count, why: detail })),
    cautions: cautions.map(({ detail }) => detail),
    basis: basis.modelVersion,
  };
}

/** Sends loop and pumps along; nothing is stored. */
export async function quote(service: Service, asked: QuoteRequest): Promise<Quote> {
  const { loop, offers, price, currency } = asked;
  const pumps = offers.map(({ pump, count }) => ({ pump, count }));
  return quoteOf(asked, await recommended(service, { loop, pumps, price, currency }));
}
