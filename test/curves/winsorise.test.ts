/** Values drawn in, by hand. */
import { describe, expect, it } from 'vitest';
import { interpolate } from '../../curves/interpolate.ts';
import { winsorisedMean, winsorisedSeries } from '../../curves/winsorise.ts';
import { expectClose } from '../expect-close.ts';

describe('a winsorised mean', () => {
  it('takes a far value as 2.5 deviations from the median', () => {
    expectClose(winsorisedMean([1, 2, 3, 4, 100], 1), (1 + 2 + 3 + 4 + 5.5) / 5, { relative: 1e-12 });
  });

  it('is the mean where none is far', () => {
    expectClose(winsorisedMean([1, 2, 6], 2), 3, { relative: 1e-12 });
  });
});

describe('a winsorised series', () => {
  it('draws an outlier in and leaves a lasting step', () => {
    const values = [0, 9, 0, 0, 0, 0, 0, 0, 0, 5, 5, 5, 5, 5, 5];
    expect(winsorisedSeries(values, 0.1)).toEqual(values.with(1, 0.25));
  });
});

describe('points joined by straight lines', () => {
  const [xs, ys] = [
    [1, 2, 4],
    [10, 20, 0],
  ];

  it.each([
    [1.5, 15],
    [3, 10],
    [2, 20],
    [0, 10],
    [9, 0],
  ])('are at %d at %d', (x, y) => {
    expectClose(interpolate(xs, ys, x), y, { absolute: 1e-12 });
  });
});
