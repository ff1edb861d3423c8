/** When a change began and how it goes on. */
import { describe, expect, it } from 'vitest';
import { serialNoise } from '../../../curves/serial-noise.ts';
import { courseOf } from '../../../models/condition/course.ts';
import type { Compared } from '../../../models/condition/evidence.ts';
import { forecastOf } from '../../../models/condition/shortfall-forecast.ts';
import { gaugeOf } from '../../../models/readings/measure.ts';
import { expectClose } from '../../expect-close.ts';
import { lasting, normals } from '../../rates/random.ts';

const FROM = 1000;

/** Residuals day by day from a day on, with a scatter. */
function seriesOf(
  residual: (day: number) => number,
  { days = 150, scatter = 0.02, phi = 0, seed = 1 } = {},
): Compared {
  const error = lasting(normals(seed), phi);
  const values = Array.from({ length: days }, (_, day) => ({
    ...{ day: FROM + day, time: FROM + day + 0.4, residual: residual(day) + scatter * error() },
    ...{ predicted: 1, headPressure: 1, readingCount: 1 },
  }));
  const data = { times: values.map(({ time }) => time), values: values.map((one) => one.residual) };
  const ramp = values.map((_, day) => Math.max(0, day - 28));
  const columns = [values.map(() => 1), ...(days > 28 ? [ramp] : [])];
  const noise = serialNoise({ ...data, columns }, { deviation: 0.02, values: 4 });
  return { gauge: gaugeOf('flow'), values, accuracy: 0.02, noise, baseline: { mean: 0, variance: 1e-5 } };
}

const ramp = (from: number, perDay: number) => (day: number) => -perDay * Math.max(0, day - from);
const step = (from: number, size: number) => (day: number) => (day < from ? 0 : -size);

describe('a course', () => {
  it.each([1, 2, 3, 4, 5])('is gradual where it is a ramp, its onset in the interval: seed %d', (seed) => {
    const found = courseOf(seriesOf(ramp(60, 0.002), { seed }), FROM);
    expect(found?.kind).toBe('gradual');
    expect(found?.onset.earliest).toBeLessThanOrEqual(FROM + 60);
    expect(found?.onset.latest).toBeGreaterThanOrEqual(FROM + 53);
  });

  it.each([1, 2, 3, 4, 5])('is sudden where it is a step, to its week: seed %d', (seed) => {
    const found = courseOf(seriesOf(step(77, 0.1), { seed }), FROM);
    expect(found?.kind).toBe('sudden');
    expectClose(found?.onset.earliest ?? Number.NaN, FROM + 77, { absolute: 7 });
    expectClose(found?.onset.latest ?? Number.NaN, FROM + 77, { absolute: 7 });
  });

  it('is not named where errors last', () => {
    const found = courseOf(seriesOf(step(77, 0.1), { phi: 0.9, scatter: 0.03 }), FROM);
    expect(found?.kind).toBeNull();
  });

  it('is none of a few values', () => {
    expect(
      courseOf(
        seriesOf(() => 0, { days: 4 }),
        FROM,
      ),
    ).toBeNull();
  });
});

describe('a shortfall that is foretold', () => {
  const found = (residual: (day: number) => number, level: number, facts = {}) => {
    const course = courseOf(seriesOf(residual, facts), FROM);
    return course === null ? null : forecastOf(course, level, course.now - FROM);
  };

  it.each([1, 2, 3, 4, 5, 6])('holds the day on which a ramp meets the level: seed %d', (seed) => {
    // -0.002 a day from day 60 on meets -0.24 on day 180.
    const forecast = found(ramp(60, 0.002), -0.24, { seed });
    expect(forecast?.earliest).toBeLessThan(FROM + 180);
    if (forecast?.latest != null) expect(forecast.latest).toBeGreaterThan(FROM + 180);
  });

  it('is dated where the interval is narrow against what is left', () => {
    const forecast = found(ramp(40, 0.002), -0.26, { scatter: 0.002 });
    expect(forecast?.reason).toBeNull();
    expectClose((forecast?.at ?? Number.NaN) - FROM, 170.4, { absolute: 5 });
  });

  it('has no latest day, and no date, where it may level off', () => {
    const levelling = (day: number) => -0.1 * (1 - Math.exp(-Math.max(0, day - 40) / 40));
    const forecast = found(levelling, -0.1, { days: 90 });
    expect(forecast).toMatchObject({ latest: null, at: null, reason: 'growth-not-determined' });
  });

  it('is too far where it comes after more than twice the record', () => {
    const forecast = found(ramp(28, 0.0006), -0.29, { scatter: 0.0005, days: 120 });
    expect(forecast?.reason === 'too-far' || forecast?.latest === null).toBe(true);
    expect(forecast?.at).toBeNull();
  });

  it('is none where the flow does not surely fall', () => {
    expect(found(() => 0, -0.05)).toBeNull();
    expect(found((day) => 0.001 * day, -0.05)).toBeNull();
  });

  it('is of the past where the level is passed', () => {
    const forecast = found(ramp(40, 0.002), -0.1, { scatter: 0.005 });
    expect(forecast?.latest).toBeLessThan(FROM + 150);
    expectClose((forecast?.at ?? Number.NaN) - FROM, 90, { absolute: 8 });
  });
});
