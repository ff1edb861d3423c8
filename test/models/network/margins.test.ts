/** How far outlets are above what they need. */
import { describe, expect, it } from 'vitest';
import { hasRequirement, limitingOutlet, outletFigures } from '../../../models/network/margins.ts';
import { expectClose } from '../../expect-close.ts';

const outlet = (name: string, requiredFlow: number | null, area: number | null = null) => ({
  name,
  requiredFlow,
  maximumFlow: null,
  area,
});

describe('margins', () => {
  const outlets = [outlet('a', 2e-4, 1e-4), outlet('b', 0), outlet('c', null), outlet('d', 1e-4)];
  const figures = outletFigures(outlets, Array.of(3e-4, 1e-5, 1e-5, 0.9e-4));

  it('are flow/required - 1 where more than 0 is required', () => {
    expectClose(figures[0]?.margin ?? Number.NaN, 0.5, { relative: 1e-12 });
    expect(figures.slice(1, 3).map(({ margin }) => margin)).toEqual([null, null]);
    expectClose(figures[3]?.margin ?? Number.NaN, -0.1, { relative: 1e-12 });
  });

  it('limit the loop where they are least', () => {
    expect(limitingOutlet(figures)).toBe('d');
    expect(limitingOutlet(figures.slice(1, 3))).toBeNull();
  });

  it('name the first of outlets that are alike, whatever their last digits', () => {
    const two = [outlet('left', 1e-4), outlet('right', 1e-4)];
    for (const off of [-1e-15, 0, 1e-15]) {
      expect(limitingOutlet(outletFigures(two, [1e-4 * (1 + off), 1e-4]))).toBe('left');
    }
  });

  it('come with the velocity of the stream where its area is known', () => {
    expectClose(figures[0]?.velocity ?? Number.NaN, 3, { relative: 1e-12 });
    expect(figures[1]?.velocity).toBeNull();
  });

  it('need a requirement above 0', () => {
    expect(hasRequirement(outlets)).toBe(true);
    expect(hasRequirement(outlets.slice(1, 3))).toBe(false);
  });
});
