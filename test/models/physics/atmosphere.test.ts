/** The standard atmosphere against its published table. */
import { describe, expect, it } from 'vitest';
import {
  atmosphericPressure,
  HIGHEST_ELEVATION,
  LOWEST_ELEVATION,
} from '../../../models/physics/atmosphere.ts';
import { expectClose } from '../../expect-close.ts';
import { ATMOSPHERES } from '../../reference/suction.ts';

describe('standard atmosphere', () => {
  it.each(ATMOSPHERES)('is $expected Pa at $elevation m ($source)', (row) => {
    expectClose(atmosphericPressure(row.elevation), row.expected, { relative: row.tolerance });
  });

  it('is 101325 Pa at sea level by definition', () => {
    expect(atmosphericPressure(0)).toBe(101_325);
  });

  it('holds the air up: dp/dz = -rho g with rho = 1.225 kg/m3 at sea level', () => {
    const slope = (atmosphericPressure(0.5) - atmosphericPressure(-0.5)) / 1;
    expectClose(slope, -1.225 * 9.80665, { relative: 1e-4 });
  });

  it('falls with elevation to the ends of its range', () => {
    for (let z = LOWEST_ELEVATION; z < HIGHEST_ELEVATION; z += 500) {
      expect(atmosphericPressure(z + 500)).toBeLessThan(atmosphericPressure(z));
    }
  });

  it.each([-501, 11_001, Number.NaN])('is not defined at %d m', (elevation) => {
    expect(() => atmosphericPressure(elevation)).toThrow(RangeError);
  });
});
