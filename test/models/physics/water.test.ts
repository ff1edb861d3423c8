/** Water properties against published check values. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waterProperties } from '../../../models/physics/water.ts';
import { expectClose } from '../../expect-close.ts';
import { DENSITIES, KINEMATIC_VISCOSITIES, VISCOSITIES } from '../../reference/water.ts';

describe('water', () => {
  it.each(DENSITIES)('weighs $expected kg/m3 at $temperature degC, $salinity g/kg ($source)', (row) => {
    expectClose(waterProperties(row).density, row.expected, { absolute: row.tolerance });
  });

  it.each(VISCOSITIES)(
    'has viscosity $expected Pa s at $temperature degC, $salinity g/kg ($source)',
    (row) => {
      expectClose(waterProperties(row).viscosity, row.expected, { relative: row.tolerance });
    },
  );

  it.each(KINEMATIC_VISCOSITIES)(
    'has kinematic viscosity $expected m2/s at $temperature degC ($source)',
    (row) => {
      expectClose(waterProperties(row).kinematicViscosity, row.expected, { relative: row.tolerance });
    },
  );

  it('is heaviest near 4 degC when fresh', () => {
    const at = (temperature: number) => waterProperties({ temperature, salinity: 0 }).density;
    expect(at(3.98)).toBeGreaterThan(at(3));
    expect(at(3.98)).toBeGreaterThan(at(5));
  });

  it('grows heavier and thicker with salt, thinner with warmth', () => {
    const state = {
      temperature: fc.double({ min: 0, max: 44, noNaN: true }),
      salinity: fc.double({ min: 0, max: 59, noNaN: true }),
    };
    fc.assert(
      fc.property(fc.record(state), ({ temperature, salinity }) => {
        const here = waterProperties({ temperature, salinity });
        const saltier = waterProperties({ temperature, salinity: salinity + 1 });
        const warmer = waterProperties({ temperature: temperature + 1, salinity });
        expect(saltier.density).toBeGreaterThan(here.density);
        expect(saltier.viscosity).toBeGreaterThan(here.viscosity);
        expect(warmer.viscosity).toBeLessThan(here.viscosity);
        expectClose(here.kinematicViscosity, here.viscosity / here.density, { relative: 1e-15 });
      }),
      { seed: 1 },
    );
  });
});
