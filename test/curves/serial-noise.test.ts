/** Noise whose truth is known, and formulas by hand. */
import { describe, expect, it } from 'vitest';
import { serialNoise, stepOf, varianceOfMean } from '../../curves/serial-noise.ts';
import { expectClose } from '../expect-close.ts';
import { lasting, normals } from '../rates/random.ts';

const ASSUMED = { deviation: 0.02, values: 4 } as const;
const times = (count: number) => Array.from({ length: count }, (_, i) => i);

const noiseOf = (values: readonly number[]) =>
  serialNoise({ times: times(values.length), columns: [values.map(() => 1)], values }, ASSUMED);

function simulated(phi: number, seed: number, count = 500) {
  const error = lasting(normals(seed), phi);
  return noiseOf(times(count).map(() => 0.03 * error()));
}

describe('the noise of a series', () => {
  it.each([0, 0.5, 0.8])('has the correlation %d and the deviation that it was made with', (phi) => {
    const found = [1, 2, 3, 4].map((seed) => simulated(phi, seed));
    const mean = (pick: (one: (typeof found)[number]) => number) =>
      found.reduce((sum, one) => sum + pick(one), 0) / 4;
    // Four series of 500: the correlation has an error of sqrt((1 - phi^2)/2000), the deviation of some percent.
    expectClose(
      mean(({ correlation }) => correlation),
      phi,
      { absolute: 0.06 },
    );
    expectClose(
      mean(({ deviation }) => deviation),
      0.03,
      { relative: 0.1 },
    );
  });

  it('is near what is assumed where little was read: s2 = (4 s0^2 + Q)/(4 + n - 1)', () => {
    const { likeliest } = noiseOf([0.01, -0.01]);
    const { fit, variance } = likeliest;
    expectClose(variance, (4 * 0.02 ** 2 + fit.squares) / 5, { relative: 1e-12 });
  });

  it('leaves as many degrees as values that do not go with each other', () => {
    const white = simulated(0, 1);
    expectClose(white.degrees, 4 + (499 * (1 - white.correlation)) / (1 + white.correlation), {
      relative: 1e-12,
    });
    expect(simulated(0.8, 1).degrees).toBeLessThan(120);
  });
});

describe('the variance of a mean', () => {
  it('falls as 1/n of independent errors, and far less of lasting ones', () => {
    const ratio = (phi: number) => {
      const noise = simulated(phi, 2);
      return (100 * varianceOfMean(noise, times(100))) / varianceOfMean(noise, times(1));
    };
    expectClose(ratio(0), 1, { relative: 0.2 });
    // (1 + 0.8)/(1 - 0.8) of a long series.
    expectClose(ratio(0.8), 9, { relative: 0.3 });
  });
});

describe('a step about a line', () => {
  const line = times(40).map((time) => 0.001 * time);
  const ramp = times(40);

  it('is found where it is', () => {
    const values = line.map((value, time) => value + (time >= 27 ? -0.2 : 0) + 0.01 * Math.sin(9 * time));
    expect(stepOf({ times: times(40), values, ramp }, times(40))).toBe(27);
  });

  it('is none where it takes less than half of the squares', () => {
    const normal = normals(4);
    const values = line.map((value) => value + 0.01 * normal());
    expect(stepOf({ times: times(40), values, ramp }, times(40))).toBeNull();
  });

  it('is none of two values alone', () => {
    const values = line.map((value, time) => value + (time >= 38 ? -0.2 : 0));
    expect(stepOf({ times: times(40), values, ramp }, [38, 39])).toBeNull();
  });
});
