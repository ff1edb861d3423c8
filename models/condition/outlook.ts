/** Says how a reported change has grown, and what follows if it goes on. */
import { interpolate } from '../../curves/interpolate.ts';
import type { RankedCause } from './causes.ts';
import { type Course, courseOf, grownBy } from './course.ts';
import type { Compared, Term } from './evidence.ts';
import { CLOGS, type MeteredLoop, type Shown } from './metered-loop.ts';
import { type Forecast, forecastOf } from './shortfall-forecast.ts';
import { shownOn } from './signatures.ts';
import { type Remedy, type Waiting, waitingCost } from './waiting-cost.ts';

export interface Outlook {
  /** Null where nothing is reported. */
  readonly course: Course | null;
  /** Of the outlet that is foretold to fall first. */
  readonly shortfall: (Forecast & { readonly outlet: string }) | null;
  readonly waiting: Waiting | null;
}

export interface OutlookQuestion {
  readonly loop: MeteredLoop;
  readonly series: readonly Compared[];
  /** Those of the change that is reported, and what they were ranked by; whether one explains it. */
  readonly causes: readonly RankedCause[];
  readonly terms: readonly Term[];
  readonly isExplained: boolean;
  /** Where the baseline begins [days]. */
  readonly from: number;
  readonly price: number | null;
  readonly costs: Readonly<Record<Remedy, number | null>>;
}

export const NO_OUTLOOK: Outlook = { course: null, shortfall: null, waiting: null };

/** Outlets whose own flows are followed: each is fitted apart. */
const OUTLETS_MOST = 10;
/** What grows until somebody ends it, at a price. */
const SERVICED: readonly string[] = ['worn-pump', 'draws-more'];
const WAITED_FOR: readonly string[] = [...CLOGS, ...SERVICED];

export function outlookOf(question: OutlookQuestion): Outlook {
  const { loop, series, causes, terms, from } = question;
  const [first] = causes;
  const entered = loop.shownAt(loop.setting);
  if (first === undefined || entered === null) return NO_OUTLOOK;
  // The gauge that shows the cause most clearly shows its course.
  const clearness = ({ place, variance }: Term) =>
    Math.abs(first.point.shifts[place] ?? 0) / Math.sqrt(variance);
  const place = terms.toSorted((a, b) => clearness(b) - clearness(a))[0]?.place ?? 0;
  const one = series[place];
  const course = one === undefined ? null : courseOf(one, from);
  if (course === null) return NO_OUTLOOK;
  const shortfall = first.signature.fault === undefined ? null : firstShortfall(question, entered);
  return { course, shortfall, waiting: waitingOf(question, { entered, first, place, course, shortfall }) };
}

function firstShortfall({ loop, series, from }: OutlookQuestion, entered: Shown): Outlook['shortfall'] {
  const forecast = (one: Compared | undefined, outlet: string, required: number) => {
    const flow = one === undefined ? null : shownOn(loop, one.gauge, entered);
    const course = one === undefined || flow === null || required <= 0 ? null : courseOf(one, from);
    const found =
      course === null ? null : forecastOf(course, Math.log(required / (flow ?? 0)), course.now - from);
    return found === null ? [] : [{ outlet, ...found }];
  };
  const own = series.filter(({ gauge }) => gauge.outlet !== null).slice(0, OUTLETS_MOST);
  const limit = loop.limitingTotal((outlet) => own.every(({ gauge }) => gauge.outlet !== outlet));
  const total = series.find(({ gauge }) => gauge.measure === 'flow');
  const found = [
    ...own.flatMap((one) => {
      const outlet = loop.outlets.find(({ name }) => name === one.gauge.outlet);
      return outlet === undefined ? [] : forecast(one, outlet.name, outlet.requiredFlow ?? 0);
    }),
    ...(limit === null ? [] : forecast(total, limit.outlet, limit.flow)),
  ];
  return found.toSorted((a, b) => (a.at ?? a.earliest) - (b.at ?? b.earliest))[0] ?? null;
}

interface Reported extends Pick<Outlook, 'shortfall'> {
  readonly entered: Shown;
  readonly first: RankedCause;
  /** Of the gauge that shows it. */
  readonly place: number;
  readonly course: Course;
}

function waitingOf(
  { loop, series, causes, isExplained, price, costs }: OutlookQuestion,
  { entered, first, place, course, shortfall }: Reported,
): Waiting | null {
  const { fault, points } = first.signature;
  const areWaitedFor = causes.every(({ signature }) => WAITED_FOR.includes(signature.cause));
  if (fault === undefined || price === null || !areWaitedFor || !isExplained) return null;
  const remedy = SERVICED.includes(first.signature.cause) ? 'service' : 'cleaning';
  const drawn = Math.exp(series.find(({ gauge }) => gauge.measure === 'power')?.baseline?.mean ?? 0);
  const { likeliest, now, kind } = course;
  const [, growth = 0] = likeliest.fit.coefficients;
  const side = Math.sign(first.point.shifts[place] ?? 0);
  const shifts = [0, ...points.map((point) => side * (point.shifts[place] ?? 0))];
  const magnitudes = [0, ...points.map(({ magnitude }) => magnitude)];
  return waitingCost({
    magnitudeAt: (day) =>
      interpolate(shifts, magnitudes, -side * growth * grownBy(likeliest, { time: now + day, now })),
    grown: now - likeliest.onset,
    grows: kind !== 'sudden',
    held: loop.heldWith(fault).map((one) => ({ ...one, power: drawn * one.power })),
    power: drawn * entered.power,
    ...{ price, remedy, cost: costs[remedy] },
    shortfallAfter: shortfall?.at == null ? null : Math.max(0, shortfall.at - likeliest.onset),
  });
}
