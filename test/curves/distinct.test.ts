import { describe, expect, it } from 'vitest';
import { areDistinct, countDistinct } from '../../curves/distinct.ts';

describe('distinct values', () => {
  it('are over 1e-9 apart, relative to the larger', () => {
    expect(areDistinct(1, 1 + 2e-9)).toBe(true);
    expect(areDistinct(1, 1 + 0.5e-9)).toBe(false);
    expect(areDistinct(1e-6, 1e-6 * (1 + 2e-9))).toBe(true);
    expect(areDistinct(0, 0)).toBe(false);
    expect(areDistinct(0, 1e-12)).toBe(true);
  });

  it('are counted in any order', () => {
    expect(countDistinct([])).toBe(0);
    expect(countDistinct([3, 1, 2, 1, 3 + 1e-12])).toBe(3);
  });

  it('are not told apart by the rounding of a speed reduction', () => {
    expect(countDistinct([0.7 / 0.7, 0.6 / 0.6, 0.3 / 0.1 / 3])).toBe(1);
  });
});
