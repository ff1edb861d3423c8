/** Powers that no pump draws. */
import { describe, expect, it } from 'vitest';
import { fitPump } from '../../../models/pump/pump-model.ts';
import { canister, LITRE_PER_HOUR } from '../example-loops.ts';

const at = (setting: number, power: number, flow: number) => ({
  setting,
  power,
  flow: flow * LITRE_PER_HOUR,
});

const settings = { min: 35, max: 100, step: 1 };

describe('power points', () => {
  it('of which one lies far off the others make no pump', () => {
    // The last one's flow is a hundred times what was meant.
    const powerPoints = [at(100, 455, 4000), at(100, 535, 11_000), at(100, 590, 18_000), at(50, 82, 900_000)];
    const fit = fitPump({ ...canister, settings, powerPoints });
    expect(fit.ok ? null : fit.failure).toMatchObject({
      code: 'power-beyond-range',
      path: ['powerPoints'],
    });
  });

  it('that fall to nothing at low speed make none either', () => {
    const powerPoints = [
      { setting: 100, power: 200 },
      { setting: 99, power: 1e-6 },
    ];
    const fit = fitPump({ ...canister, settings, standbyPower: 0, powerPoints });
    expect(fit.ok ? null : fit.failure.code).toBe('power-beyond-range');
  });

  it('that agree make one', () => {
    const powerPoints = [at(100, 455, 4000), at(100, 535, 11_000), at(100, 590, 18_000), at(50, 82, 9000)];
    expect(fitPump({ ...canister, settings, powerPoints }).ok).toBe(true);
  });
});
