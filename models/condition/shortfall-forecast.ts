/** Foretells when an outlet gets less than it requires, if a change goes on as it has. */
import { studentT95Both } from '../../curves/student-t.ts';
import { type Course, type Growth, grownBy } from './course.ts';

/** A growth smaller than so many of its standard errors foretells nothing. */
const SURE = 3;
/** A date is given where its interval is no wider than so many times what is left, and these days. */
const DETERMINED = { times: 2, days: 30 } as const;
/** No farther ahead than so many times what was read. */
const AHEAD = 2;
/** How far bands are followed, and at what steps [days]. */
const FOLLOWED = { days: 3650, step: 7 } as const;

export interface Forecast {
  /** Instants [days]. */
  readonly earliest: number;
  /** Null: it may level off before. */
  readonly latest: number | null;
  /** Null where it is not foretold, and why. */
  readonly at: number | null;
  readonly reason: 'growth-not-determined' | 'too-far' | null;
}

/**
 * From the first crossing of any lower 95 % band of the possible courses to the last of any upper. Null where the residual does not
 * surely fall, or no band meets the level.
 *
 * @param level residual at which the outlet gets just what it requires.
 * @param record days read.
 */
export function forecastOf(course: Course, level: number, record: number): Forecast | null {
  const [best] = course.gradual;
  if (best === undefined || !isSure(best, course)) return null;
  const deviate = studentT95Both(Math.max(1, Math.floor(course.degrees)));
  const bands = course.gradual.map((growth) => ({
    low: crossing(growth, course, { level, deviate: -deviate }),
    high: crossing(growth, course, { level, deviate }),
  }));
  const lows = bands.flatMap(({ low }) => low ?? []);
  if (lows.length === 0) return null;
  const earliest = Math.min(...lows);
  const highs = bands.map(({ high }) => high);
  const latest = highs.includes(null) ? null : Math.max(...highs.flatMap((high) => high ?? []));
  const expected = crossing(best, course, { level, deviate: 0 });
  const left = Math.max(0, (expected ?? 0) - course.now);
  const isDetermined =
    expected !== null && latest !== null && latest - earliest <= DETERMINED.times * left + DETERMINED.days;
  const reason = !isDetermined ? 'growth-not-determined' : left > AHEAD * record ? 'too-far' : null;
  return { earliest, latest, at: reason === null ? expected : null, reason };
}

const isSure = ({ fit }: Growth, { variance }: Course): boolean =>
  (fit.coefficients[1] ?? 0) > SURE * Math.sqrt(variance * (fit.inverse[1]?.[1] ?? Number.NaN));

/** When a - b g + deviate x its standard error meets the level; null: not within what is followed. */
function crossing(
  { fit, ...growth }: Growth,
  { now, variance }: Course,
  { level, deviate }: { readonly level: number; readonly deviate: number },
): number | null {
  const [a = 0, b = 0] = fit.coefficients;
  const [[aa = 0, ab = 0] = [], [, bb = 0] = []] = fit.inverse;
  const above = (time: number): number => {
    const g = grownBy(growth, { time, now });
    const error = Math.sqrt(Math.max(0, variance * (aa - 2 * ab * g + bb * g ** 2)));
    return a - b * g + deviate * error - level;
  };
  let [time, before] = [growth.onset, above(growth.onset)];
  if (before <= 0) return time;
  for (; time < now + FOLLOWED.days; time += FOLLOWED.step) {
    const next = above(time + FOLLOWED.step);
    if (next <= 0) return time + (FOLLOWED.step * before) / (before - next);
    before = next;
  }
  return null;
}
