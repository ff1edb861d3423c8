/** Mix-ups of units by the published conversion factors. */
import { describe, expect, it } from 'vitest';
import { slipOf } from '../../../models/readings/slip.ts';

/** NIST Special Publication 811 (2008), B.8: litres in gallons, kilopascals in psi, feet; hours and watts by definition. */
const KNOWN = [
  { measure: 'flow', factor: 3.785412, slip: 'gallons-and-litres' },
  { measure: 'outletFlow', factor: 4.54609, slip: 'gallons-and-litres' },
  { measure: 'flow', factor: 60, slip: 'hours-and-minutes' },
  { measure: 'flow', factor: 1000 / 60, slip: 'cubic-metres-per-hour-and-litres-per-minute' },
  { measure: 'power', factor: 1000, slip: 'watts-and-kilowatts' },
  { measure: 'head', factor: 1 / 0.3048, slip: 'feet-and-metres' },
  { measure: 'dischargePressure', factor: 6.894757, slip: 'psi-and-kilopascals' },
  { measure: 'head', factor: 9.80665, slip: 'kilopascals-and-metres' },
] as const;

describe('a unit slip', () => {
  it.each(KNOWN)(
    'is $slip where $measure is $factor times what it should be, or one over it',
    ({ measure, factor, slip }) => {
      expect(slipOf(measure, factor)?.slip).toBe(slip);
      expect(slipOf(measure, 1 / factor)?.slip).toBe(slip);
      expect(slipOf(measure, 1.08 * factor)?.slip).toBe(slip);
    },
  );

  it('is none of a ratio that no mix-up makes, or of another measure', () => {
    for (const ratio of [0.3, 0.7, 1, 1.6, 2.5, 30]) expect(slipOf('flow', ratio)).toBeNull();
    expect(slipOf('power', 3.785)).toBeNull();
  });
});
