/** The next size up of a series. */
import { describe, expect, it } from 'vitest';
import { largerPipe } from '../../../models/components/larger-pipe.ts';
import { PIPE_SIZES } from '../../../models/components/pipe-sizes.ts';

describe('the next larger pipe', () => {
  // ASTM D1785 lists 1-1/2 before 2; EN ISO 1452-2 lists 63 after 50.
  it.each([
    ['sch80 1-1/2', 'sch80 2'],
    ['sch40 1/2', 'sch40 3/4'],
    ['pn10 50', 'pn10 63'],
    ['pn16 20', 'pn16 25'],
  ])('of %s is %s', (name, larger) => {
    expect(largerPipe(name)?.name).toBe(larger);
  });

  it.each(['sch40 4', 'sch80 4', 'pn10 110', 'pn16 110', 'sch99 2', ''])('of "%s" is none', (name) => {
    expect(largerPipe(name)).toBeNull();
  });

  it('is wider, and of the same standard', () => {
    for (const { name, insideDiameter, standard } of PIPE_SIZES) {
      const larger = largerPipe(name);
      if (larger === null) continue;
      expect(larger.insideDiameter).toBeGreaterThan(insideDiameter);
      expect(larger.standard).toBe(standard);
    }
  });
});
