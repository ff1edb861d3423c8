/** Open fraction of regular screens against plane geometry and published perforations. */
import { describe, it } from 'vitest';
import { openFraction } from '../../../models/loop/open-fraction.ts';
import { expectClose } from '../../expect-close.ts';

describe('open fraction', () => {
  it('of slots is width over pitch: 1 mm slots between 2 mm wires are a third', () => {
    expectClose(openFraction({ slot: 0.001, pitch: 0.003 }), 1 / 3, { relative: 1e-12 });
  });

  it('of holes in squares that touch is pi/4, staggered pi/sqrt 12, the densest packing of circles', () => {
    expectClose(openFraction({ hole: 1, pitch: 1, pattern: 'square' }), 0.785398, { relative: 1e-6 });
    expectClose(openFraction({ hole: 1, pitch: 1, pattern: 'staggered' }), 0.9069, { relative: 1e-5 });
  });

  // Perforators print 90.69 D^2/C^2 % for 60 degree staggered and 78.54 D^2/C^2 % for straight rows (from memory).
  it.each([
    ['staggered', 3 / 16, 1 / 4, 0.51],
    ['staggered', 1 / 8, 3 / 16, 0.403],
    ['square', 1 / 4, 3 / 8, 0.349],
  ] as const)('of %s holes of %d in at %d in is %d', (pattern, hole, pitch, expected) => {
    expectClose(openFraction({ hole, pitch, pattern }), expected, { relative: 2e-3 });
  });
});
