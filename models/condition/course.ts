/** Finds when a change began and how it grows: every onset and shape that the days read allow. */
import { type SerialFit, serialFit } from '../../curves/serial-fit.ts';
import { serialNoise } from '../../curves/serial-noise.ts';
import { winsorisedSeries } from '../../curves/winsorise.ts';
import { SCATTER_ASSUMED, scatterAssumed } from '../readings/measure.ts';
import { residualsOf, timesOf } from './day-values.ts';
import type { Compared } from './evidence.ts';

/** g(u), rising from 0 at the onset, u = 0, to about 1 now, u = 1. */
type Shape = (u: number) => number;

const SHAPES: readonly Shape[] = [
  ...[0.5, 0.75, 1, 1.5, 2].map((power) => (u: number) => u ** power),
  // Those that level off, and those that gather speed.
  ...[0.7, 1.5, 3, 6].map((k) => (u: number) => 1 - Math.exp(-k * u)),
  ...[0.7, 1.5, 3].map((k) => (u: number) => Math.expm1(k * u)),
];
const STEP: Shape = () => 1;

/** 90 % of a chi-squared of two degrees: onset and shape within it are left possible. */
const POSSIBLE = 4.61;
/** By how much one kind of course must fit better than the other to be named. */
const NAMED = 6;
/** With errors that last longer, a step and a slope look alike. */
const CORRELATION_MOST = 0.5;
/** Onsets tried: weekly, or of long records so many. */
const ONSETS = { everyDays: 7, most: 100 } as const;
/** Values that a course must begin before. */
const AFTER_LEAST = 2;

/** y = a - b g((t - onset)/(now - onset)) from the onset on, a before. */
export interface Growth {
  /** [days] */
  readonly onset: number;
  readonly shape: Shape;
  readonly fit: SerialFit;
}

export interface Course {
  /** Null where the days read do not say. */
  readonly kind: 'sudden' | 'gradual' | null;
  /** [days] */
  readonly onset: { readonly earliest: number; readonly latest: number };
  /** The likeliest of all, and the gradual ones that are possible, the likeliest first. */
  readonly likeliest: Growth;
  readonly gradual: readonly Growth[];
  /** Of one value, and its degrees of freedom. */
  readonly variance: number;
  readonly degrees: number;
  /** The last day read [days]. */
  readonly now: number;
}

/**
 * Profile likelihood over onsets and shapes, the errors being those about the likeliest of all. Null where too little was read.
 *
 * @param from where onsets begin [days].
 * Source: Venzon and Moolgavkar (1988), Applied Statistics 37, 87.
 */
export function courseOf(series: Compared, from: number): Course | null {
  const values = series.values.filter(({ time }) => time >= from);
  const times = timesOf(values);
  const now = times.at(-1);
  if (now === undefined || values.length <= 2 * AFTER_LEAST) return null;
  const data = { times, values: winsorisedSeries(residualsOf(values), series.noise.deviation) };
  const columnsOf = (growth: Omit<Growth, 'fit'>) => [
    times.map(() => 1),
    times.map((time) => -grownBy(growth, { time, now })),
  ];
  const fitted = (shape: Shape, correlation: number): readonly Growth[] =>
    onsetsOf(times, from).flatMap((onset) => {
      const fit = serialFit({ ...data, columns: columnsOf({ onset, shape }) }, correlation);
      return fit === null ? [] : [{ onset, shape, fit }];
    });
  const [first] = [STEP, ...SHAPES]
    .flatMap((shape) => fitted(shape, series.noise.correlation))
    .toSorted(byFit);
  if (first === undefined) return null;
  const noise = serialNoise(
    { ...data, columns: columnsOf(first) },
    { deviation: scatterAssumed(series.gauge.measure), values: SCATTER_ASSUMED.readings },
  );
  const { correlation, degrees } = noise;
  const steps = fitted(STEP, correlation).toSorted(byFit);
  const slopes = SHAPES.flatMap((shape) => fitted(shape, correlation)).toSorted(byFit);
  return ofPossible({ steps, slopes }, { variance: noise.deviation ** 2, correlation, degrees, now });
}

const byFit = (a: Growth, b: Growth): number => a.fit.squares - b.fit.squares;

/** @param errors of the fits, whose lists have the likeliest first. */
function ofPossible(
  { steps, slopes }: { readonly steps: readonly Growth[]; readonly slopes: readonly Growth[] },
  errors: Pick<Course, 'variance' | 'now' | 'degrees'> & { readonly correlation: number },
): Course | null {
  const { correlation, ...rest } = errors;
  const [step, slope] = [steps[0], slopes[0]];
  if (step === undefined || slope === undefined) return null;
  const ahead = (slope.fit.squares - step.fit.squares) / rest.variance;
  const isNamed = correlation <= CORRELATION_MOST && Math.abs(ahead) >= NAMED;
  const likeliest = ahead > 0 ? step : slope;
  const possible = (all: readonly Growth[], best: Growth) =>
    all.filter(({ fit }) => fit.squares - best.fit.squares <= POSSIBLE * rest.variance);
  const own = isNamed ? (ahead > 0 ? steps : slopes) : [...steps, ...slopes];
  const onsets = possible(own, likeliest).map(({ onset }) => onset);
  return {
    kind: !isNamed ? null : ahead > 0 ? 'sudden' : 'gradual',
    onset: { earliest: Math.min(...onsets), latest: Math.max(...onsets) },
    ...{ ...rest, likeliest, gradual: possible(slopes, slope) },
  };
}

/** g at an instant [days]; 0 before the onset. */
export const grownBy = (
  { onset, shape }: Omit<Growth, 'fit'>,
  { time, now }: { readonly time: number; readonly now: number },
): number => (time < onset ? 0 : shape((time - onset) / (now - onset)));

function onsetsOf(times: readonly number[], from: number): readonly number[] {
  const last = times.at(-AFTER_LEAST) ?? from;
  const every = Math.max(ONSETS.everyDays, (last - from) / ONSETS.most);
  const count = Math.max(0, Math.floor((last - from) / every)) + 1;
  return Array.from({ length: count }, (_, i) => from + i * every);
}
