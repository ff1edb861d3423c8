/** The loss of a table row at a bore. */
import { describe, expect, it } from 'vitest';
import { FITTINGS, findFitting } from '../../../models/components/fittings.ts';
import {
  fittingResistance,
  type NamedLoss,
  turbulentLossCoefficient,
} from '../../../models/components/named-loss.ts';
import { VALVES } from '../../../models/components/valves.ts';
import { GRAVITY } from '../../../models/physics/gravity.ts';
import { reynoldsNumber } from '../../../models/physics/reynolds-number.ts';
import { expectClose } from '../../expect-close.ts';
import { REYNOLDS_ROWS, THREE_K, TWO_K } from '../../reference/fittings.ts';

const NU = 9.37e-7;

function row(name: string): NamedLoss {
  const found = findFitting(name);
  if (found === undefined) throw new Error(`no fitting ${name}`);
  return found;
}

/** K [-] from the head that a row loses at a flow. */
function lossCoefficientAt(loss: NamedLoss, { diameter, flow }: { diameter: number; flow: number }): number {
  const velocity = (4 * flow) / (Math.PI * diameter ** 2);
  const { head } = fittingResistance(loss, { diameter, kinematicViscosity: NU }).lossAt(flow);
  return (2 * GRAVITY * head) / velocity ** 2;
}

describe('loss of a named fitting', () => {
  it('of a 2 in standard elbow is K 0.57 (Crane Technical Paper 410: 30 x 0.019)', () => {
    expectClose(lossCoefficientAt(row('elbow-90'), { diameter: 0.0525, flow: 2e-3 }), 0.57, {
      relative: 0.02,
    });
  });

  it('by equivalent diameters does not depend on flow', () => {
    const slow = lossCoefficientAt(row('tee-branch'), { diameter: 0.04, flow: 1e-5 });
    expectClose(lossCoefficientAt(row('tee-branch'), { diameter: 0.04, flow: 1e-2 }), slow, {
      relative: 1e-12,
    });
  });

  it('by a fixed K is the same in every bore', () => {
    expectClose(lossCoefficientAt(row('exit'), { diameter: 0.02, flow: 1e-3 }), 1, { relative: 1e-12 });
    expectClose(lossCoefficientAt(row('exit'), { diameter: 0.1, flow: 1e-3 }), 1, { relative: 1e-12 });
  });

  it.each(TWO_K)('by two K is $expected ($source)', (published) => {
    const { value, laminarValue, diameter, reynolds } = published;
    const loss = { ...row('elbow-90'), method: 'two-k', value, laminarValue } satisfies NamedLoss;
    const flow = (reynolds * Math.PI * diameter * NU) / 4;
    expectClose(reynoldsNumber({ flow, diameter, kinematicViscosity: NU }), reynolds, { relative: 1e-12 });
    expectClose(lossCoefficientAt(loss, { diameter, flow }), published.expected, {
      relative: published.tolerance,
    });
  });

  it.each(THREE_K)('$name by three K is $expected at Re $reynolds ($source)', (published) => {
    const { name, reynolds, size } = published;
    const loss = [...FITTINGS, ...VALVES].find((one) => one.name === name);
    if (loss === undefined) throw new Error(`no row ${name}`);
    const diameter = 0.0254 * size;
    const flow = (reynolds * Math.PI * diameter * NU) / 4;
    expectClose(lossCoefficientAt(loss, { diameter, flow }), published.expected, {
      relative: published.tolerance,
    });
  });

  it.each(REYNOLDS_ROWS)('$name has the coefficients $coefficients ($source)', ({ name, coefficients }) => {
    const loss = [...FITTINGS, ...VALVES].find((one) => one.name === name);
    const [laminarValue, value, sizeValue] = coefficients;
    const further = sizeValue === undefined ? { method: 'two-k' } : { method: 'three-k', sizeValue };
    expect(loss).toMatchObject({ laminarValue, value, ...further });
  });

  it('by two K grows relative to the velocity head as flow dies, and tends to its turbulent value', () => {
    const bend = row('elbow-90-long-radius');
    const at = (flow: number) => lossCoefficientAt(bend, { diameter: 0.04, flow });
    expect(at(1e-6)).toBeGreaterThan(at(1e-4));
    expectClose(at(10), turbulentLossCoefficient(bend, 0.04), { relative: 1e-3 });
  });

  it('is odd and rising, with the slope that a finite difference finds, for every row', () => {
    for (const loss of FITTINGS) {
      const resistance = fittingResistance(loss, { diameter: 0.04, kinematicViscosity: NU });
      const { head, slope } = resistance.lossAt(2e-3);
      expect(resistance.lossAt(-2e-3)).toEqual({ head: -head, slope });
      const step = 1e-8;
      const difference =
        (resistance.lossAt(2e-3 + step).head - resistance.lossAt(2e-3 - step).head) / (2 * step);
      expectClose(slope, difference, { relative: 1e-7 });
      expect(slope).toBeGreaterThan(0);
      expectClose(resistance.lossAt(0).head, 0, { absolute: 0 });
    }
  });
});
