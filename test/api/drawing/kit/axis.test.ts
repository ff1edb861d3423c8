/** Axes of charts. */
import { describe, expect, it } from 'vitest';
import { linearAxis } from '../../../../api/drawing/kit/axis.ts';

const axis = (...values: number[]) => linearAxis({ name: 'head', unit: 'm', values });
const labels = (...values: number[]) => axis(...values).ticks.map(({ label }) => label);

describe('an axis', () => {
  it('goes from 0 to a round number above the largest', () => {
    expect(axis(4.7)).toMatchObject({ name: 'head [m]', from: 0, until: 5 });
    expect(labels(4.7)).toEqual(['0', '1', '2', '3', '4', '5']);
  });

  it('goes below 0 where there are values below', () => {
    expect(labels(-0.3, 1)).toEqual(['−0.4', '−0.2', '0', '0.2', '0.4', '0.6', '0.8', '1']);
  });

  it.each([[[]], [[0]], [[0, 0]]])('has a length without any values but 0: %j', (values) => {
    expect(axis(...values)).toMatchObject({ from: 0, until: 1 });
  });

  it('writes what is very small or large by powers of ten', () => {
    expect(labels(2e9).at(-1)).toBe('2e+9');
    expect(labels(3e-7)[1]).toBe('5e−8');
    expect(labels(0.3)).toEqual(['0', '0.05', '0.1', '0.15', '0.2', '0.25', '0.3']);
  });
});
