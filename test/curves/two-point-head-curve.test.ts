/** Head curves assumed from the shutoff head and one other point. */
import { describe, expect, it } from 'vitest';
import { otherShapes } from '../../curves/fit-assumed-head.ts';
import { fitHeadCurve } from '../../curves/fit-head-curve.ts';
import { headAt } from '../../curves/head-curve.ts';
import { expectClose } from '../expect-close.ts';
import { expectValue } from './expect-value.ts';

const at = (flow: number, head: number, speedRatio = 1) => ({ flow, head, speedRatio });

describe('a head curve from two flows', () => {
  it('is a parabola through both, with its tangent beyond: H = H0 - (H0 - H1)(Q/Q1)^2', () => {
    const curve = expectValue(fitHeadCurve([at(0, 6), at(7, 2.4)]));
    expect(curve).toMatchObject({ shape: 'assumed', r2: null, standardError: null, degreesOfFreedom: 0 });
    expectClose(headAt(curve, 3.5), 6 - 3.6 / 4, { relative: 1e-12 });
    expectClose(headAt(curve, 8), 2.4 - (2 * 3.6) / 7, { relative: 1e-12 });
  });

  it('goes through the means of repeated points, taken at any speed', () => {
    const curve = expectValue(fitHeadCurve([at(0, 6.2), at(0, 5.8), at(3.5, 0.65, 0.5), at(7, 2.2)]));
    expectClose(headAt(curve, 0), 6, { relative: 1e-12 });
    expectClose(headAt(curve, 7), 2.4, { relative: 1e-12 });
    expectClose(curve.residuals[2] ?? 0, 0.2, { relative: 1e-12 });
  });

  it('may as well fall evenly, or later than a parabola', () => {
    const curve = expectValue(fitHeadCurve([at(0, 6), at(7, 2.4)]));
    if (curve.shape !== 'assumed') throw new Error('two flows assume a shape');
    const [even, late] = otherShapes(curve);
    if (even === undefined || late === undefined) throw new Error('there are two other shapes');
    expectClose(headAt(even, 3.5), 6 - 3.6 / 2, { relative: 1e-12 });
    expectClose(headAt(late, 3.5), 6 - 3.6 / 8, { relative: 1e-12 });
    expectClose(headAt(late, 8), 2.4 - (3 * 3.6) / 7, { relative: 1e-12 });
  });

  it('is none where the head does not fall, or the lower flow is not 0', () => {
    expect(fitHeadCurve([at(0, 6), at(7, 6)])).toEqual({ ok: false, failure: { code: 'no-falling-curve' } });
    expect(fitHeadCurve([at(1, 6), at(7, 2)])).toEqual({
      ok: false,
      failure: { code: 'too-few-distinct-flows', distinct: 2, needed: 3 },
    });
  });
});
