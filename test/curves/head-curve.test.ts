import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitHeadCurve } from '../../curves/fit-head-curve.ts';
import { headAt, headAtSpeed, headSlopeAt, risingFlows } from '../../curves/head-curve.ts';
import { expectClose } from '../expect-close.ts';
import { SCHASCHKE_PUMP } from '../reference/pump-curves.ts';
import { expectValue } from './expect-value.ts';

const [a = 0, b = 0, c = 0] = SCHASCHKE_PUMP.coefficients;
const schaschke = (flow: number): number => a + b * flow + c * flow ** 2;
const curve = expectValue(
  fitHeadCurve([0, 0.01, 0.02, 0.03, 0.04].map((flow) => ({ flow, head: schaschke(flow), speedRatio: 1 }))),
);

describe('a head curve', () => {
  it(`gives the head of ${SCHASCHKE_PUMP.source}`, () => {
    const { expected, tolerance } = SCHASCHKE_PUMP;
    expectClose(headAt(curve, expected.flow), expected.head, { relative: tolerance });
  });

  it('has the slope of its formula', () => {
    expectClose(headSlopeAt(curve, 0.025), b + 2 * c * 0.025, { relative: 1e-9 });
  });

  it('goes on beyond its data along the tangent, without a step or a kink', () => {
    const slope = b + 2 * c * 0.04;
    expectClose(headAt(curve, 0.06), schaschke(0.04) + slope * 0.02, { relative: 1e-9 });
    expectClose(headSlopeAt(curve, 0.06), slope, { relative: 1e-9 });
    expectClose(headAt(curve, 0.04 * (1 + 1e-12)), headAt(curve, 0.04), { relative: 1e-9 });
  });

  it('obeys the affinity laws at any speed, beyond its data too', () => {
    const flows = fc.double({ min: 0, max: 0.08, noNaN: true });
    const speeds = fc.double({ min: 0.05, max: 1.2, noNaN: true });
    fc.assert(
      fc.property(flows, speeds, (flow, speedRatio) => {
        const { head } = headAtSpeed(curve, { flow: flow * speedRatio, speedRatio });
        expectClose(head, speedRatio ** 2 * headAt(curve, flow), { relative: 1e-10, absolute: 1e-10 });
      }),
      { seed: 1 },
    );
  });

  it('has a slope at speed that agrees with differences of its head', () => {
    const at = (flow: number): number => headAtSpeed(curve, { flow, speedRatio: 0.6 }).head;
    const { slope } = headAtSpeed(curve, { flow: 0.012, speedRatio: 0.6 });
    expectClose(slope, (at(0.012 + 1e-6) - at(0.012 - 1e-6)) / 2e-6, { relative: 1e-6 });
  });

  it('gives nothing at standstill', () => {
    expect(headAtSpeed(curve, { flow: 0.01, speedRatio: 0 })).toEqual({ head: 0, slope: 0 });
  });

  it('survives storage as JSON bit for bit', () => {
    expect(JSON.parse(JSON.stringify(curve))).toEqual(curve);
  });
});

describe('the flows at which a head curve turns', () => {
  it('are none for a falling curve', () => {
    expect(risingFlows(curve)).toEqual([]);
  });

  it('are the peak -b/(2c) of a drooping parabola', () => {
    // H = 5 + 100 Q - 5000 Q^2 peaks at Q = 0.01.
    const droop = expectValue(
      fitHeadCurve(
        [0, 0.005, 0.01, 0.02, 0.03].map((flow) => ({
          flow,
          head: 5 + 100 * flow - 5000 * flow ** 2,
          speedRatio: 1,
        })),
      ),
    );
    const [peak = 0, ...others] = risingFlows(droop);
    expect(others).toEqual([]);
    expectClose(peak, 0.01, { relative: 1e-9 });
  });
});
