import { describe, expect, it } from 'vitest';
import { rampMeans } from '../../../models/schedule/ramp.ts';
import { expectClose } from '../../expect-close.ts';

const meanOf = (pieces: readonly { readonly power: number }[]): number =>
  pieces.reduce((sum, { power }) => sum + power, 0) / pieces.length;

describe('the mean power of a ramp', () => {
  it('of a pump by the cube law is the integral of the cube, above the power at the mean speed', () => {
    const power = (setting: number) => 3 + 242 * (setting / 100) ** 3;
    const mean = meanOf(rampMeans({ from: 40, to: 100 }, (setting) => ({ flow: 0, power: power(setting) })));
    // Integral of s^3 from 0.4 to 1 over 0.6: (1 - 0.4^4)/(4 x 0.6) = 0.406.
    expectClose(mean, 3 + 242 * 0.406, { relative: 1e-12 });
    expect(mean).toBeGreaterThan(power(70) * 1.1);
  });

  it('is the same up and down', () => {
    const at = (setting: number) => ({ flow: setting, power: setting ** 2.7 });
    expectClose(meanOf(rampMeans({ from: 30, to: 80 }, at)), meanOf(rampMeans({ from: 80, to: 30 }, at)), {
      relative: 1e-12,
    });
  });

  it('of any power law is its integral within 1e-6', () => {
    for (const exponent of [2.5, 2.7, 3, 3.3]) {
      const at = (setting: number) => ({ flow: 0, power: (setting / 100) ** exponent });
      const integral = (1 - 0.3 ** (exponent + 1)) / ((exponent + 1) * 0.7);
      expectClose(meanOf(rampMeans({ from: 30, to: 100 }, at)), integral, { relative: 1e-6 });
    }
  });
});
