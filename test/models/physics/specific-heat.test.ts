/** Specific heat of seawater against published values. */
import { describe, expect, it } from 'vitest';
import { specificHeat } from '../../../models/physics/specific-heat.ts';
import { expectClose } from '../../expect-close.ts';
import { SPECIFIC_HEATS } from '../../reference/heat.ts';

describe('specific heat', () => {
  it.each(SPECIFIC_HEATS)('at $temperature degC, $salinity g/kg is $expected ($source)', (row) => {
    expectClose(specificHeat(row), row.expected, { absolute: row.tolerance });
  });

  it('of fresh water at 15 degC is the calorie of old: 4185.8 J (15 degC calorie, from memory)', () => {
    expectClose(specificHeat({ temperature: 15, salinity: 0 }), 4185.8, { relative: 2e-4 });
  });

  it('falls with salinity all over its range', () => {
    for (let temperature = 0; temperature <= 45; temperature += 5) {
      for (let salinity = 0; salinity < 60; salinity += 5) {
        const saltier = specificHeat({ temperature, salinity: salinity + 5 });
        expect(saltier).toBeLessThan(specificHeat({ temperature, salinity }));
      }
    }
  });
});
