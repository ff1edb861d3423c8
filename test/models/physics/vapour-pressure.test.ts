/** Vapour pressure against published values. */
import { describe, expect, it } from 'vitest';
import { vapourPressure } from '../../../models/physics/vapour-pressure.ts';
import { expectClose } from '../../expect-close.ts';
import { VAPOUR_PRESSURES } from '../../reference/suction.ts';

describe('vapour pressure of fresh water', () => {
  it.each(VAPOUR_PRESSURES)('is $expected Pa at $temperature degC ($source)', (row) => {
    expectClose(vapourPressure(row.temperature), row.expected, { relative: row.tolerance });
  });

  it('rises by Clausius and Clapeyron: latent heat 2.44 MJ/kg at 25 degC over an ideal vapour', () => {
    const slope = (vapourPressure(25.01) - vapourPressure(24.99)) / 0.02;
    const latentHeat = (slope * 461.5 * 298.15 ** 2) / vapourPressure(25);
    expectClose(latentHeat, 2.44e6, { relative: 0.005 });
  });

  it('rises with temperature', () => {
    for (let t = 0.5; t < 45; t += 0.5) expect(vapourPressure(t + 0.5)).toBeGreaterThan(vapourPressure(t));
  });
});
