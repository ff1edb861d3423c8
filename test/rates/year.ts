/** Simulates what the meters of a loop show day by day, and what is answered week by week. */
import type { BaselineEvent } from '../../models/condition/baseline.ts';
import { type Condition, judgeCondition } from '../../models/condition/judge-condition.ts';
import type { Fault, MeteredLoop, Shown } from '../../models/condition/metered-loop.ts';
import type { Reading } from '../../models/readings/reading.ts';
import { drawsFrom, mulberry32 } from '../random/draw.ts';
import { lasting, normals } from './random.ts';
import { type Actual, metered, type Site } from './stations.ts';

const MS_PER_DAY = 86_400_000;
/** 08:00 of the first day. */
const START = Date.UTC(2026, 3, 1, 8);
export const YEAR_DAYS = 364;

/** One standard deviation of a reading by meter, as a share of it; of pressures of the head. What is absent is not read. */
export interface Noise {
  readonly flow?: number;
  readonly power?: number;
  readonly head?: number;
  readonly pressures?: number;
  readonly outlets?: number;
}

/** Of days of the record. */
type ByDay<Value> = (day: number) => Value;

export interface Case {
  readonly site: Site;
  readonly noise: Noise;
  readonly days?: number;
  /** Correlation of errors from one day to the next. */
  readonly phi?: number;
  /** Share of readings that are off by 30 % or more, of days without a reading, and days between readings. */
  readonly outliers?: number;
  readonly missing?: number;
  readonly everyDays?: number;
  /** What the loop is off its entries by, from its seed; and by the day. */
  readonly actual?: (normal: () => number) => Actual;
  readonly season?: ByDay<Actual>;
  readonly fault?: Fault;
  readonly magnitude?: ByDay<number>;
  /** What the flow meter shows of what it did at first. */
  readonly drift?: ByDay<number>;
  /** Pumps that run; all where absent. */
  readonly running?: ByDay<number>;
}

/** One standard deviation of the gain of each meter, which stays. */
const GAIN = 0.02;
/** An outlier in its logarithm. */
const WILD = { low: 0.3, high: 1.5 } as const;

/** Of one loop, its errors by the seed. */
export function readingsOf(one: Case, seed: number): readonly Reading[] {
  const normal = normals(seed);
  const { chance, between } = drawsFrom(mulberry32(seed + 1e6));
  const { noise, phi = 0, days = YEAR_DAYS, everyDays = 1, outliers = 0, missing = 0 } = one;
  const actual = one.actual?.(normal) ?? {};
  const meter = () => ({ gain: Math.exp(GAIN * normal()), error: lasting(normal, phi) });
  const [flow, power, head, suction, discharge] = [meter(), meter(), meter(), meter(), meter()];
  const wild = () => (chance(outliers) ? Math.exp((chance(0.5) ? 1 : -1) * between(WILD.low, WILD.high)) : 1);
  const ratio = (value: number, deviation: number | undefined, { gain, error }: ReturnType<typeof meter>) => {
    const off = error();
    return deviation === undefined ? undefined : value * gain * wild() * Math.exp(deviation * off);
  };
  return Array.from({ length: days }, (_, day): Reading | null => {
    const loop = metered(one.site, { ...actual, ...one.season?.(day) });
    const shown = shownOn(loop, one, day);
    const scale = loop.pressurePerHead * shown.head;
    const pressure = (value: number | null, { gain, error }: ReturnType<typeof meter>) => {
      const off = error();
      return noise.pressures === undefined || value === null
        ? undefined
        : value + scale * (gain - 1 + noise.pressures * off);
    };
    const reading: Reading = {
      ...{ time: START + day * MS_PER_DAY, setting: one.site.setting },
      flow: ratio(shown.flow * (one.drift?.(day) ?? 1), noise.flow, flow),
      power: ratio(shown.power, noise.power, power),
      head: ratio(shown.head, noise.head, head),
      suctionPressure: pressure(shown.suctionPressure, suction),
      dischargePressure: pressure(shown.dischargePressure, discharge),
      ...(noise.outlets === undefined
        ? {}
        : { outletFlows: outletsOf(loop, shown, (value) => ratio(value, noise.outlets, flow)) }),
    };
    return day % everyDays !== 0 || chance(missing) ? null : reading;
  }).filter((reading) => reading !== null);
}

const outletsOf = (
  { outlets }: MeteredLoop,
  { outletFlows }: Shown,
  read: (value: number) => number | undefined,
) => Object.fromEntries(outlets.map(({ name }, i) => [name, read(outletFlows[i] ?? 0) ?? 0]));

/** What the loop does on a day, its fault between the magnitudes that are solved for. */
function shownOn(loop: MeteredLoop, { fault, magnitude, running, site }: Case, day: number): Shown {
  const entered = loop.shownAt(site.setting);
  const pumps = running?.(day) ?? site.count;
  const shown = pumps < site.count ? loop.shownWithPumps(pumps) : entered;
  const size = magnitude?.(day) ?? 0;
  if (shown === null) throw new Error('no water moves');
  return fault === undefined || size <= 0 ? shown : between(loop, { fault, size, shown });
}

function between(
  loop: MeteredLoop,
  { fault, size, shown }: { readonly fault: Fault; readonly size: number; readonly shown: Shown },
): Shown {
  const nodes = [{ magnitude: 0, shown }, ...loop.shownWith(fault)];
  const place = Math.max(
    1,
    nodes.findIndex((node) => node.magnitude >= size),
  );
  const [low, high] = [nodes[place - 1], nodes[place]];
  if (low === undefined || high === undefined) throw new Error('no such magnitude');
  const t = (size - low.magnitude) / (high.magnitude - low.magnitude);
  const mix = (a: number, b: number) => a + t * (b - a);
  const [from, to] = [low.shown, high.shown];
  const mixed = (a: number | null, b: number | null) => (a === null || b === null ? null : mix(a, b));
  return {
    flow: mix(from.flow, to.flow),
    head: mix(from.head, to.head),
    power: mix(from.power, to.power),
    suctionPressure: mixed(from.suctionPressure, to.suctionPressure),
    dischargePressure: mixed(from.dischargePressure, to.dischargePressure),
    outletFlows: from.outletFlows.map((flow, i) => mix(flow, to.outletFlows[i] ?? 0)),
    shutoffHead: mix(from.shutoffHead, to.shutoffHead),
  };
}

/** Events by the day of the record. */
export type Events = readonly BaselineEvent[];

/** What is answered on a day of the record, of what was read until then. */
export function answerOn(
  { site }: Case,
  readings: readonly Reading[],
  { day, events = [] }: { readonly day: number; readonly events?: Events },
): Condition {
  const now = START + day * MS_PER_DAY;
  return judgeCondition({
    loop: metered(site),
    readings: readings.filter(({ time }) => time <= now),
    meters: [],
    events: events.map((event) => ({ ...event, time: START / MS_PER_DAY + event.time })),
    now: now / MS_PER_DAY,
    dayOf: (time) => Math.floor(time / MS_PER_DAY),
    ...{ price: 0.21, costs: { cleaning: 20, service: 20 } },
  });
}

/** Instants of answers as days of the record. */
export const dayOfRecord = (instant: number): number => instant - START / MS_PER_DAY;

const QUIET: readonly string[] = ['baseline-forming', 'as-expected', 'not-enough-readings'];

export const isReport = ({ verdict }: Condition): boolean => !QUIET.includes(verdict);

/** The first week in which something is reported; null: none in the record. */
export function firstReport(
  one: Case,
  seed: number,
): { readonly day: number; readonly answer: Condition } | null {
  const readings = readingsOf(one, seed);
  for (let day = 28; day <= (one.days ?? YEAR_DAYS); day += 7) {
    const answer = answerOn(one, readings, { day });
    if (isReport(answer)) return { day, answer };
  }
  return null;
}
