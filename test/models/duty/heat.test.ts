/** Heat of a pump against a published example and energy balances. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dailyRise, heatUse, meanHeat, pumpHeat } from '../../../models/duty/heat.ts';
import { specificHeat } from '../../../models/physics/specific-heat.ts';
import { waterProperties } from '../../../models/physics/water.ts';
import { expectClose } from '../../expect-close.ts';
import { PUMP_HEATING } from '../../reference/heat.ts';

const DRY = { power: 103, standbyPower: 3, mounting: 'dry', motorEfficiency: 0.75 } as const;
const SUBMERGED = { ...DRY, mounting: 'submerged' } as const;

describe('heat into the water', () => {
  it('of a dry pump, less what leaves as pressure, warms each pass as in the published example', () => {
    const { power, motorEfficiency, flow, pressureRise, density, specificHeat: c } = PUMP_HEATING;
    const heat = pumpHeat({ power, standbyPower: 0, mounting: 'dry', motorEfficiency });
    const inThePump = heat - flow * pressureRise;
    const { expected, tolerance } = PUMP_HEATING;
    expectClose(inThePump / (flow * density * c), expected, { relative: tolerance });
  });

  it('is all of the power of a submerged pump, and the shaft power of a dry one', () => {
    expect(pumpHeat(SUBMERGED)).toBe(103);
    expect(pumpHeat(DRY)).toBe(75);
  });

  it('takes a pump of unknown mounting for a dry one, its motor for one of 0.8', () => {
    expect(pumpHeat({ ...DRY, mounting: undefined, motorEfficiency: undefined })).toBe(80);
  });

  it('is averaged over a day of less than 24 hours; resting, only a submerged pump warms', () => {
    expectClose(meanHeat(DRY, 12), 37.5, { relative: 1e-12 });
    expectClose(meanHeat(SUBMERGED, 12), (103 + 3) / 2, { relative: 1e-12 });
    expectClose(meanHeat(SUBMERGED, 24), 103, { relative: 1e-12 });
  });
});

describe('warming', () => {
  it('by 1 kW of what passes in a day at 10 m3/h is that of a pass, 0.0880 K (energy balance)', () => {
    const water = { temperature: 25, salinity: 35 };
    const { density } = waterProperties(water);
    const rise = dailyRise({ heat: 1000, density, specificHeat: specificHeat(water), volume: 240 });
    expectClose(rise, 0.088, { relative: 2e-3 });
  });

  it('goes with the heat and against the volume', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e4, noNaN: true }), (heat) => {
        const into = { heat, density: 1020, specificHeat: 4000, volume: 2 };
        const rise = dailyRise(into);
        expectClose(dailyRise({ ...into, heat: 3 * heat }), 3 * rise, { relative: 1e-12 });
        expectClose(dailyRise({ ...into, volume: 4 }), rise / 2, { relative: 1e-12 });
      }),
      { seed: 1 },
    );
  });
});

describe('electricity for heat', () => {
  it('is heat over COP for 8760 hours: 100 W at COP 3 take 292 kWh', () => {
    const use = heatUse(100, { cop: 3, mode: 'cooling', price: 0.25 });
    expectClose(use.annualEnergy, 292, { relative: 1e-12 });
    expectClose(use.annualCost ?? 0, 73, { relative: 1e-12 });
  });

  it('is spared where the water is heated anyway', () => {
    const use = heatUse(100, { cop: 3, mode: 'heating', price: 0.25 });
    expectClose(use.annualCost ?? 0, -73, { relative: 1e-12 });
  });

  it('has no cost without a price', () => {
    expect(heatUse(100, { cop: 3, mode: 'cooling', price: null }).annualCost).toBeNull();
  });
});
