/** The low and high head curves from their definition, and what holds of every one. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type HeadCurve, headAt } from '../../../curves/head-curve.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { pumpEnds } from '../../../models/pump/pump-at-tolerance.ts';
import { GRADES, type Grade, toleranceOf } from '../../../models/pump/tolerance-grades.ts';
import { uncertainHead } from '../../../models/pump/uncertain-head.ts';
import { expectClose } from '../../expect-close.ts';
import { canister, LITRE_PER_HOUR, pumpModelOf } from '../example-loops.ts';

const L = LITRE_PER_HOUR;
/** Points that no curve meets, so that there is an error of fit. */
const scattered = pumpModelOf({
  ...canister,
  headPoints: [
    [0, 6.03],
    [2500, 5.8],
    [5000, 5.32],
    [7500, 4.38],
    [10_000, 3.19],
    [12_000, 1.9],
  ].map(([flow = 0, head = 0]) => ({ flow: flow * L, head, setting: 100 })),
});
const drooping = pumpModelOf({
  ...canister,
  headPoints: [
    [0, 5],
    [2000, 5.35],
    [4000, 5.4],
    [8000, 4.4],
    [12_000, 2],
  ].map(([flow = 0, head = 0]) => ({ flow: flow * L, head, setting: 100 })),
});
const exact = pumpModelOf(canister);
const grades = fc.constantFrom(...(Object.keys(GRADES) as Grade[]));
const flows = fc.double({ min: 0, max: 15_000 * L, noNaN: true });
const SEEDED = { seed: 1, numRuns: 200 } as const;

/** From NIST/SEMATECH e-Handbook of Statistical Methods, upper critical values of t at 0.05. */
const T_BY_DEGREES = [Number.NaN, 6.314, 2.92, 2.353, 2.132];

describe('the low head curve', () => {
  it('is the lower of (1 - tH) H(Q) and H(Q/(1 - tQ)) for points that the fit meets', () => {
    // The canister is 6 - 4 (Q/12000)^2 by its making: at 9000 L/h, grade 2B, 0.95 x 3.75 against 6 - 4 (0.75/0.92)^2.
    const low = uncertainHead(exact.fit.headCurve, GRADES['2B'], 'low');
    expectClose(low.headAt(9000 * L).head, 6 - 4 * (0.75 / 0.92) ** 2, { relative: 1e-8 });
    // Near shutoff the head decides: 0.95 x 6.
    expectClose(low.headAt(0).head, 5.7, { relative: 1e-8 });
  });

  it('is lower by t times the standard error where the points scatter', () => {
    const { headCurve } = scattered.fit;
    const t = T_BY_DEGREES[headCurve.degreesOfFreedom] ?? Number.NaN;
    const low = uncertainHead(headCurve, toleranceOf(null), 'low');
    for (const flow of [0, 4000 * L, 11_000 * L]) {
      const expected = headAt(headCurve, flow) - t * (headCurve.standardError ?? Number.NaN);
      expectClose(low.headAt(flow).head, expected, { absolute: 1e-4 });
    }
  });

  it('takes nothing for a fit without an error', () => {
    const headCurve: HeadCurve = { ...exact.fit.headCurve, standardError: null };
    expect(uncertainHead(headCurve, toleranceOf(null), 'low').headAt(3000 * L).head).toBe(
      headAt(headCurve, 3000 * L),
    );
  });

  it('lies at or under the fitted curve, and the high one at or above it', () => {
    fc.assert(
      fc.property(grades, flows, fc.constantFrom(exact, scattered, drooping), (grade, flow, { fit }) => {
        const [low, high] = (['low', 'high'] as const).map(
          (end) => uncertainHead(fit.headCurve, GRADES[grade], end).headAt(flow).head,
        );
        const fitted = headAt(fit.headCurve, flow);
        // Where the fitted head is negative, a share of it is too.
        if (fitted < 0) return;
        expect(low).toBeLessThanOrEqual(fitted + 1e-12);
        expect(high).toBeGreaterThanOrEqual(fitted - 1e-12);
      }),
      SEEDED,
    );
  });

  it('has the slope of its own differences', () => {
    fc.assert(
      fc.property(grades, flows, fc.constantFrom('low', 'high'), (grade, flow, end) => {
        const curve = uncertainHead(scattered.fit.headCurve, GRADES[grade], end);
        const step = 1e-9;
        const [before, after] = [curve.headAt(flow).head, curve.headAt(flow + step).head];
        const { slope } = curve.headAt(flow + step / 2);
        expectClose((after - before) / step, slope, { relative: 1e-3, absolute: 1 });
      }),
      SEEDED,
    );
  });
});

describe('the turning flows', () => {
  it('are none where the fitted curve falls', () => {
    for (const end of ['low', 'high'] as const) {
      expect(uncertainHead(exact.fit.headCurve, GRADES['3B'], end).turningFlows).toEqual([]);
    }
  });

  it.each(['low', 'high'] as const)('leave the %s end of a drooping curve one way between them', (end) => {
    for (const grade of ['1B', '1U', '2B', '3B'] as const) {
      const { headAt: at, turningFlows } = uncertainHead(drooping.fit.headCurve, GRADES[grade], end);
      const nodes = [0, ...turningFlows, 13_000 * L];
      expect(turningFlows.length).toBeGreaterThan(0);
      for (const [place, high] of nodes.entries()) {
        const low = nodes[place - 1];
        if (low === undefined) continue;
        const heads = Array.from({ length: 60 }, (_, i) => at(low + ((high - low) * i) / 59).head);
        const [rising, falling] = [heads.toSorted((a, b) => a - b), heads.toSorted((a, b) => b - a)];
        const isOneWay = [rising, falling].some((way) =>
          way.every((h, i) => Math.abs(h - (heads[i] ?? 0)) < 1e-9),
        );
        expect(isOneWay, `${end} ${grade} between ${low} and ${high}`).toBe(true);
      }
    }
  });
});

describe('a pump at an end', () => {
  const place = { setting: 70, count: 2 };

  it('follows the affinity laws: r^2 H(Q/(n r))', () => {
    const flow = 6000 * L;
    const { headAt: low } = uncertainHead(scattered.fit.headCurve, GRADES['2B'], 'low');
    const { head } = pumpEnds(GRADES['2B']).low(scattered, place).headAt(flow);
    expectClose(head, 0.7 ** 2 * low(flow / (2 * 0.7)).head, { relative: 1e-12 });
  });

  it('draws (1 + tP) times the power when it is low, and no more when it is high', () => {
    const flow = 6000 * L;
    const entered = pumpAtSetting(scattered, place).powerAt(flow);
    expectClose(pumpEnds(GRADES['2B']).low(scattered, place).powerAt(flow), 1.08 * entered, {
      relative: 1e-12,
    });
    expect(pumpEnds(GRADES['2B']).high(scattered, place).powerAt(flow)).toBe(entered);
  });

  it('is the pump itself without grade and scatter', () => {
    const { low } = pumpEnds(toleranceOf(null));
    const plain = {
      ...exact,
      fit: { ...exact.fit, headCurve: { ...exact.fit.headCurve, standardError: null } },
    };
    for (const flow of [0, 3000 * L, 20_000 * L]) {
      expectClose(low(plain, place).headAt(flow).head, pumpAtSetting(plain, place).headAt(flow).head, {
        relative: 1e-12,
      });
    }
  });
});
