/** Net positive suction head against worked examples and its own rules. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { npshAvailable, npshEndPassed, npshFromPressures, npshRequired } from '../../../models/duty/npsh.ts';
import { expectClose } from '../../expect-close.ts';
import { NPSH_EXAMPLES } from '../../reference/suction.ts';

const POINTS = [
  { flow: 3e-3, head: 2.5 },
  { flow: 1e-3, head: 1 },
  { flow: 2e-3, head: 1.5 },
];
const required = (flow: number, speedRatio = 1) =>
  npshRequired({ points: POINTS, flow, speedRatio }) ?? Number.NaN;

describe('NPSH available', () => {
  it.each(NPSH_EXAMPLES)('is $expected m ($source)', (row) => {
    expectClose(npshFromPressures(row), row.expected, { relative: row.tolerance });
  });

  it('at sea level over water of 20 degC is ten metres less what the suction takes', () => {
    const side = { elevation: 0, temperature: 20, density: 998.2, pumpElevation: 2, suctionLoss: 1 };
    const byHandbook = (101_325 - 2339) / (998.2 * 9.80665) - 3;
    expectClose(npshAvailable(side), byHandbook, { relative: 1e-4 });
  });

  it('falls a metre for each metre of lift or loss, falls with warmth and with height of the site', () => {
    const side = { elevation: 0, temperature: 25, density: 1023.3, pumpElevation: -0.6, suctionLoss: 0.5 };
    const here = npshAvailable(side);
    expectClose(npshAvailable({ ...side, pumpElevation: 0.4 }), here - 1, { relative: 1e-12 });
    expectClose(npshAvailable({ ...side, suctionLoss: 1.5 }), here - 1, { relative: 1e-12 });
    expect(npshAvailable({ ...side, temperature: 30 })).toBeLessThan(here);
    expect(npshAvailable({ ...side, elevation: 1000 })).toBeLessThan(here);
  });
});

describe('NPSH required', () => {
  it('is that of the points at full speed, joined by lines, in any order', () => {
    expectClose(required(1e-3), 1, { relative: 1e-12 });
    expectClose(required(1.5e-3), 1.25, { relative: 1e-12 });
    expectClose(required(2.25e-3), 1.75, { relative: 1e-12 });
    expectClose(required(3e-3), 2.5, { relative: 1e-12 });
  });

  it('is held below the least flow, and rises with the square of flow beyond the greatest', () => {
    expect(required(0)).toBe(1);
    expectClose(required(9e-3), 2.5 * 9, { relative: 1e-12 });
    expectClose(required(6e-3 * 0.5, 0.5), 0.64 * 2.5 * 4, { relative: 1e-12 });
  });

  it('says where it goes beyond its points', () => {
    expect(npshEndPassed(POINTS, 3e-3)).toBeNull();
    expect(npshEndPassed(POINTS, 3.01e-3)).toBe(3e-3);
    expect(npshEndPassed([], 3.01e-3)).toBeNull();
  });

  it('falls with the square of speed at the similar flow, down to 80 % speed', () => {
    expectClose(required(0.9 * 1.5e-3, 0.9), 0.81 * 1.25, { relative: 1e-12 });
    expectClose(required(0.8 * 1.5e-3, 0.8), 0.64 * 1.25, { relative: 1e-12 });
    expectClose(required(0.5 * 1.5e-3, 0.5), 0.64 * 1.25, { relative: 1e-12 });
  });

  it('of one point is that head up to its flow; of none it is not known', () => {
    const points = [{ flow: 1e-3, head: 1.2 }];
    expect(npshRequired({ points, flow: 0.5e-3, speedRatio: 1 })).toBe(1.2);
    expectClose(npshRequired({ points, flow: 5e-3, speedRatio: 1 }) ?? 0, 30, { relative: 1e-12 });
    expect(npshRequired({ points: [{ flow: 0, head: 1.2 }], flow: 5e-3, speedRatio: 1 })).toBe(1.2);
    expect(npshRequired({ points: [], flow: 1e-3, speedRatio: 1 })).toBeNull();
  });

  it('takes two heads at one flow without dividing by nothing', () => {
    const points = [POINTS[1], { flow: 1e-3, head: 3 }, { flow: 2e-3, head: 4 }].filter(
      (point) => point !== undefined,
    );
    expect(Number.isFinite(npshRequired({ points, flow: 1e-3, speedRatio: 1 }))).toBe(true);
  });

  it('stays between the least and the greatest point between their flows', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 3e-3, noNaN: true }), (flow) => {
        expect(required(flow)).toBeGreaterThanOrEqual(1);
        expect(required(flow)).toBeLessThanOrEqual(2.5);
      }),
      { seed: 1 },
    );
  });
});
