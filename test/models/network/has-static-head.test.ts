/** Whether a loop lifts water, by levels of the whole loop and of its outlets. */
import { describe, expect, it } from 'vitest';
import type { SystemCurveLoop } from '../../../models/loop/loop.ts';
import { hasStaticHead } from '../../../models/network/has-static-head.ts';
import { loopOf, modelOf, outlet } from '../example-loops.ts';

const lifting = (staticHead: number, ofOutlet: number) =>
  hasStaticHead(modelOf(loopOf(outlet('jet', { staticHead: ofOutlet }), { staticHead })));

const byCurve = (staticHead: number | undefined): boolean => {
  const { suction, discharge, staticHead: _, ...common } = loopOf(outlet('jet'));
  const loop: SystemCurveLoop = {
    ...common,
    systemCurve: { staticHead, points: [{ flow: 1e-3, head: 3 }] },
    outlets: [{ name: 'jet', share: 1 }],
  };
  return hasStaticHead(modelOf(loop));
};

describe('a loop', () => {
  it('lifts water up or down to any of its outlets', () => {
    expect(lifting(1, 0)).toBe(true);
    expect(lifting(-1, 0)).toBe(true);
    expect(lifting(0, 0.2)).toBe(true);
  });

  it('lifts none where its outlet is at the surface drawn from', () => {
    expect(lifting(0, 0)).toBe(false);
    expect(lifting(1, -1)).toBe(false);
  });

  it('lifts water where its curve does not begin at no head', () => {
    expect(byCurve(1.5)).toBe(true);
    expect(byCurve(0)).toBe(false);
    expect(byCurve(undefined)).toBe(false);
  });
});
