import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitSystemCurve, systemHeadAt } from '../../curves/system-curve.ts';
import { expectClose } from '../expect-close.ts';
import { expectValue } from './expect-value.ts';

describe('a system curve from points', () => {
  it('goes through one point from no static head', () => {
    const curve = expectValue(fitSystemCurve([{ flow: 0.002, head: 2.1 }]));
    expect(curve.staticHead).toBe(0);
    expectClose(curve.coefficient, 2.1 / 0.002 ** 2, { relative: 1e-14 });
  });

  it('goes through one point from a given static head', () => {
    const curve = expectValue(fitSystemCurve([{ flow: 0.002, head: 2.1 }], 1.8));
    expect(curve.staticHead).toBe(1.8);
    expectClose(curve.coefficient, 0.3 / 0.002 ** 2, { relative: 1e-12 });
  });

  it('weighs points by the fourth power of flow at a given static head, by hand', () => {
    // Q 1, 2 and H 1, 5 from 0: k = (1 x 1 + 5 x 4)/(1 + 16).
    const curve = expectValue(
      fitSystemCurve(
        [
          { flow: 1, head: 1 },
          { flow: 2, head: 5 },
        ],
        0,
      ),
    );
    expectClose(curve.coefficient, 21 / 17, { relative: 1e-14 });
  });

  it('recovers static head and k where static head is not given, in any unit of flow', () => {
    const term = fc.double({ min: 0.1, max: 10, noNaN: true });
    fc.assert(
      fc.property(term, term, fc.constantFrom(1, 1e-4, 3600), (staticHead, k, unit) => {
        const points = [0.4, 0.7, 1, 1.3].map((flow) => ({
          flow: flow * unit,
          head: staticHead + k * flow ** 2,
        }));
        const curve = expectValue(fitSystemCurve(points));
        expectClose(curve.staticHead, staticHead, { relative: 1e-9 });
        expectClose(curve.coefficient * unit ** 2, k, { relative: 1e-9 });
      }),
      { seed: 1 },
    );
  });

  it('is the straight-line fit in Q^2 for scattered points, by the textbook formula', () => {
    const points = [
      { flow: 1, head: 3.1 },
      { flow: 2, head: 5.8 },
      { flow: 3, head: 11.2 },
    ];
    const squares = points.map((point) => point.flow ** 2);
    const meanSquare = (1 + 4 + 9) / 3;
    const meanHead = (3.1 + 5.8 + 11.2) / 3;
    const sxy = points.reduce(
      (total, { head }, i) => total + ((squares[i] ?? 0) - meanSquare) * (head - meanHead),
      0,
    );
    const sxx = squares.reduce((total, square) => total + (square - meanSquare) ** 2, 0);
    const curve = expectValue(fitSystemCurve(points));
    expectClose(curve.coefficient, sxy / sxx, { relative: 1e-12 });
    expectClose(curve.staticHead, meanHead - (sxy / sxx) * meanSquare, { relative: 1e-12 });
  });

  it('holds static head at 0 where the fit would put it below, and fits k anew', () => {
    const points = [
      { flow: 1, head: 0.5 },
      { flow: 2, head: 5 },
    ];
    const curve = expectValue(fitSystemCurve(points));
    expect(curve.staticHead).toBe(0);
    expectClose(curve.coefficient, (0.5 + 20) / 17, { relative: 1e-12 });
  });

  it('takes two readings at one flow as one flow', () => {
    const curve = expectValue(
      fitSystemCurve([
        { flow: 1, head: 2 },
        { flow: 1, head: 4 },
      ]),
    );
    expect(curve.staticHead).toBe(0);
    expectClose(curve.coefficient, 3, { relative: 1e-12 });
  });
});

describe('a system curve is refused', () => {
  it.each([
    ['no points', []],
    ['flows of 0', [{ flow: 0, head: 1 }]],
  ])('for %s', (_, points) => {
    expect(fitSystemCurve(points)).toEqual({ ok: false, failure: { code: 'no-positive-flow' } });
  });

  it.each([
    [
      'falls',
      [
        { flow: 1, head: 3 },
        { flow: 2, head: 2 },
      ],
      undefined,
    ],
    [
      'is flat',
      [
        { flow: 1, head: 3 },
        { flow: 2, head: 3 },
      ],
      undefined,
    ],
    ['lies below its static head', [{ flow: 1, head: 3 }], 4],
    ['needs no head', [{ flow: 1, head: 0 }], undefined],
  ])('when it %s', (_, points, staticHead) => {
    const outcome = fitSystemCurve(points, staticHead);
    expect(!outcome.ok && outcome.failure.code).toBe('system-curve-not-rising');
  });
});

describe('the head a system needs', () => {
  const curve = { staticHead: 2, coefficient: 3 };

  it('is static head and friction, with its slope', () => {
    expect(systemHeadAt(curve, 2)).toEqual({ head: 14, slope: 12 });
    expect(systemHeadAt(curve, 0)).toEqual({ head: 2, slope: 0 });
  });

  it('turns its friction with the flow', () => {
    expect(systemHeadAt(curve, -2)).toEqual({ head: -10, slope: 12 });
  });
});
