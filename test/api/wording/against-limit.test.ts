/** Figures beside their limits, by the rules of digits that the sentences follow. */
import { describe, expect, it } from 'vitest';
import { sayAgainst, saySignedPercent } from '../../../api/wording/against-limit.ts';

const litresPerHour = (flow: number): number => flow / 3_600_000;

const flows = (value: number, stated: number, system: 'metric' | 'us' = 'metric') =>
  sayAgainst({ value: litresPerHour(value), stated: litresPerHour(stated) }, 'flow', system);

describe('a figure beside its limit', () => {
  it('has three digits, and as many more as separate the two', () => {
    expect(flows(2811.4, 3000)).toEqual({ value: '2810 L/h', stated: '3000 L/h' });
    expect(flows(2102.3, 2100)).toEqual({ value: '2102 L/h', stated: '2100 L/h' });
    expect(flows(3000.04, 3000)).toEqual({ value: '3000.04 L/h', stated: '3000 L/h' });
  });

  it('has its limit as entered, which units other than those of the entry round', () => {
    expect(flows(2811.4, 2999.5).stated).toBe('2999.5 L/h');
    // 1 US gallon is 3.785411784 L, by definition.
    expect(flows(3028.46, 3000, 'us')).toEqual({ value: '800 gal/h', stated: '793 gal/h' });
  });
});

describe('a share with its sign', () => {
  it('has two digits, and one decimal at most', () => {
    expect([-0.077, 0.1234, 0.0095, 0.05].map(saySignedPercent)).toEqual([
      '-7.7 %',
      '+12 %',
      '+0.9 %',
      '+5 %',
    ]);
  });
});
