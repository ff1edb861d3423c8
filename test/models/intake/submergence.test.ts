/** Minimum submergence against the other published form of the same rule. */
import { describe, expect, it } from 'vitest';
import { minimumSubmergence } from '../../../models/intake/submergence.ts';
import { expectClose } from '../../expect-close.ts';

const INCH = 0.0254;
const GALLON_PER_MINUTE = (231 * INCH ** 3) / 60;

describe('minimum submergence', () => {
  it.each([
    [20, 1.5],
    [100, 3],
    [1000, 10],
  ])(
    'for %d gal/min through %d in is D + 0.574 Q/D^1.5 in (ANSI/HI 9.8 in US units, from memory)',
    (gallons, inches) => {
      const inUs = inches + (0.574 * gallons) / inches ** 1.5;
      const metres = minimumSubmergence({ flow: gallons * GALLON_PER_MINUTE, diameter: inches * INCH });
      expectClose(metres, inUs * INCH, { relative: 2e-3 });
    },
  );

  it('is one bore at rest and grows with flow', () => {
    expect(minimumSubmergence({ flow: 0, diameter: 0.05 })).toBe(0.05);
    expect(minimumSubmergence({ flow: 2e-3, diameter: 0.05 })).toBeGreaterThan(
      minimumSubmergence({ flow: 1e-3, diameter: 0.05 }),
    );
  });

  it('is smaller for a wider intake at the same flow, where velocity counts', () => {
    expect(minimumSubmergence({ flow: 3e-3, diameter: 0.06 })).toBeLessThan(
      minimumSubmergence({ flow: 3e-3, diameter: 0.04 }),
    );
  });
});
