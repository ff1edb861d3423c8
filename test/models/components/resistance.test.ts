/** Losses by a coefficient: their laws and a worked example. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kLoss, quadraticLoss, scaled } from '../../../models/components/resistance.ts';
import { GRAVITY } from '../../../models/physics/gravity.ts';
import { expectClose } from '../../expect-close.ts';

const coefficients = fc.double({ min: 1e-3, max: 1e7, noNaN: true });
const flows = fc.integer({ min: -1e6, max: 1e6 }).map((flow) => flow * 1e-7);

describe('quadratic loss', () => {
  it('is c Q|Q| with slope 2 c |Q|, odd in flow', () => {
    fc.assert(
      fc.property(coefficients, flows, (coefficient, flow) => {
        const { head, slope } = quadraticLoss(coefficient).lossAt(flow);
        expectClose(head, coefficient * flow * Math.abs(flow), { relative: 1e-14 });
        expectClose(slope, 2 * coefficient * Math.abs(flow), { relative: 1e-14 });
        expectClose(quadraticLoss(coefficient).lossAt(-flow).head, -head, { absolute: 0 });
      }),
      { seed: 1 },
    );
  });

  it('vanishes at rest', () => {
    expect(quadraticLoss(1e6).lossAt(0)).toEqual({ head: 0, slope: 0 });
  });
});

describe('loss of a coefficient K', () => {
  it('is K velocity heads', () => {
    const flow = (Math.PI / 4) * 0.05 ** 2 * 2;
    expectClose(kLoss({ lossCoefficient: 3, diameter: 0.05 }).lossAt(flow).head, (3 * 4) / (2 * GRAVITY), {
      relative: 1e-14,
    });
  });

  it('meets a worked expansion: 7.2 m3/h from 40 to 50 mm loses 16.7 mm (Coulson and Richardson 1, example 3.6)', () => {
    const lossCoefficient = (1 - (40 / 50) ** 2) ** 2;
    const { head } = kLoss({ lossCoefficient, diameter: 0.04 }).lossAt(7.2 / 3600);
    expectClose(head, 0.0167, { relative: 0.005 });
  });

  it('is the same loss in another bore once K is scaled by the fourth power of the bores', () => {
    const wide = kLoss({ lossCoefficient: 2 * (0.06 / 0.04) ** 4, diameter: 0.06 });
    const narrow = kLoss({ lossCoefficient: 2, diameter: 0.04 });
    expectClose(wide.lossAt(1e-3).head, narrow.lossAt(1e-3).head, { relative: 1e-13 });
  });
});

describe('scaled resistance', () => {
  it('multiplies loss and slope alike', () => {
    const one = kLoss({ lossCoefficient: 0.6, diameter: 0.04 });
    const three = scaled(one, 3);
    expectClose(three.lossAt(-2e-3).head, 3 * one.lossAt(-2e-3).head, { relative: 1e-15 });
    expectClose(three.lossAt(-2e-3).slope, 3 * one.lossAt(-2e-3).slope, { relative: 1e-15 });
  });
});
