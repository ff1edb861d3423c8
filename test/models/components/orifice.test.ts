/** Outflow and drain times against published examples and a stepwise fall. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drainTime, orificeFlow } from '../../../models/components/orifice.ts';
import { expectClose } from '../../expect-close.ts';
import { DRAIN_TIMES } from '../../reference/drains.ts';

const HOLE = { dischargeCoefficient: 0.61, area: 5e-4 };

/** Steps of equal volume, each left at the outflow of its middle. */
function timeBySteps(surface: number, from: number, to: number): number {
  const steps = 20_000;
  const fall = (from - to) / steps;
  let time = 0;
  for (let step = 0; step < steps; step += 1) {
    time += (surface * fall) / orificeFlow(HOLE, from - (step + 0.5) * fall);
  }
  return time;
}

describe('drain time', () => {
  it.each(DRAIN_TIMES)('is $expected s: $source', (row) => {
    const { surface, openingDiameter, from, to, dischargeCoefficient, expected, tolerance } = row;
    const area = (Math.PI / 4) * openingDiameter ** 2;
    const time = drainTime({ dischargeCoefficient, area }, { surface, from, to });
    expectClose(time, expected, { relative: tolerance });
  });

  it.each([
    [0.4, 0.1],
    [1.2, 0.8],
    [30, 29.6],
  ])('from %d to %d m agrees with a fall in small steps', (from, to) => {
    expectClose(drainTime(HOLE, { surface: 4, from, to }), timeBySteps(4, from, to), { relative: 1e-6 });
  });

  it('adds up over the levels on the way', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), (level) => {
        const whole = drainTime(HOLE, { surface: 4, from: 1, to: 0 });
        const above = drainTime(HOLE, { surface: 4, from: 1, to: level });
        const below = drainTime(HOLE, { surface: 4, from: level, to: 0 });
        expectClose(above + below, whole, { relative: 1e-12 });
        expect(above).toBeGreaterThan(0);
      }),
      { seed: 1 },
    );
  });

  it('to empty is twice what the first outflow would take', () => {
    const first = orificeFlow(HOLE, 0.5);
    expectClose(drainTime(HOLE, { surface: 4, from: 0.5, to: 0 }), (2 * 4 * 0.5) / first, {
      relative: 1e-12,
    });
  });
});
