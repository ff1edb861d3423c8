/** The total flow at which the first outlet falls below its required flow, against shares that are known. */
import { describe, expect, it } from 'vitest';
import type { SystemCurveLoop } from '../../../models/loop/loop.ts';
import { limitingTotal } from '../../../models/network/limiting-total.ts';
import { expectClose } from '../../expect-close.ts';
import { loopOf, modelOf, outlet } from '../example-loops.ts';

const { suction, discharge, staticHead, ...common } = loopOf(outlet('jet'));

/** Outlets that take 60, 30 and 10 % of any total. */
function systemOf(requiredFlows: readonly (number | undefined)[]) {
  const loop: SystemCurveLoop = {
    ...common,
    systemCurve: { points: [{ flow: 1e-3, head: 3 }] },
    outlets: ['a', 'b', 'c'].map((name, i) => ({
      name,
      share: [0.6, 0.3, 0.1][i] ?? 0,
      requiredFlow: requiredFlows[i],
    })),
  };
  return modelOf(loop).system;
}

const ALL = () => true;

describe('the limiting total', () => {
  it.each([4e-3, 1.5e-3])('is that of the outlet with the smallest margin, from %f m3/s', (flow) => {
    // a would do with 1e-3, b with 2e-3, c with 1.5e-3.
    const found = limitingTotal(systemOf([0.6e-3, 0.6e-3, 0.15e-3]), flow, ALL);
    expect(found?.outlet).toBe('b');
    expectClose(found?.flow ?? Number.NaN, 2e-3, { relative: 1e-9 });
  });

  it('leaves out outlets that are not asked about', () => {
    const found = limitingTotal(systemOf([0.6e-3, 0.6e-3, 0.15e-3]), 4e-3, (place) => place !== 1);
    expect(found?.outlet).toBe('c');
    expectClose(found?.flow ?? Number.NaN, 1.5e-3, { relative: 1e-9 });
  });

  it('is the flow itself where the outlet has just what it requires', () => {
    const found = limitingTotal(systemOf([undefined, 0.6e-3, undefined]), 2e-3, ALL);
    expectClose(found?.flow ?? Number.NaN, 2e-3, { relative: 1e-9 });
  });

  it('is the end of the search where more than twice the flow would be needed', () => {
    expect(limitingTotal(systemOf([undefined, 0.6e-3, undefined]), 0.9e-3, ALL)).toEqual({
      outlet: 'b',
      flow: 1.8e-3,
    });
  });

  it('is none where no outlet that is asked about requires a flow', () => {
    expect(limitingTotal(systemOf([undefined, 0, undefined]), 1e-3, ALL)).toBeNull();
    expect(limitingTotal(systemOf([1e-3, 1e-3, 1e-3]), 1e-3, () => false)).toBeNull();
  });
});
