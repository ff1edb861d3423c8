import { describe, expect, it } from 'vitest';
import { waterProperties } from '../../../models/physics/water.ts';
import { bestEfficiencyPoint } from '../../../models/pump/best-efficiency.ts';
import { fitPump } from '../../../models/pump/pump-model.ts';
import { expectClose } from '../../expect-close.ts';

const { density } = waterProperties({ temperature: 25, salinity: 35 });

const pump = {
  name: 'invented',
  headPoints: [0, 1, 2, 3, 4].map((thousandth) => ({
    flow: thousandth / 1000,
    head: 5 - 0.2 * thousandth ** 2,
    setting: 100,
  })),
  settings: { min: 30, max: 100, step: 1 },
  standbyPower: 0,
};

describe('the best-efficiency point', () => {
  it('stands where Q H is greatest when power hardly depends on flow: Q = sqrt(5/(3 x 0.2)) by calculus', () => {
    const powerPoints = [1, 2, 3].map((thousandth) => ({
      setting: 100,
      power: 150 * (1 + 1e-9 * thousandth),
      flow: thousandth / 1000,
    }));
    const fit = fitPump({ ...pump, powerPoints });
    if (!fit.ok) throw new Error(fit.failure.code);
    const best = bestEfficiencyPoint(fit.value, { density });
    expectClose(best?.flow ?? 0, Math.sqrt(5 / 0.6) / 1000, { relative: 1e-6 });
    expectClose(best?.head ?? 0, 5 - 5 / 3, { relative: 1e-6 });
    expectClose(best?.efficiency ?? 0, (density * 9.80665 * Math.sqrt(5 / 0.6) * (10 / 3)) / 1000 / 150, {
      relative: 1e-6,
    });
  });

  it('is not known where power was noted without flow', () => {
    const fit = fitPump({ ...pump, powerPoints: [{ setting: 100, power: 150 }] });
    if (!fit.ok) throw new Error(fit.failure.code);
    expect(bestEfficiencyPoint(fit.value, { density })).toBeNull();
  });
});
