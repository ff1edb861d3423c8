/** A throttle that brings a pump back to its greatest flow, and loops that run by gravity. */
import { describe, expect, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import type { ExtendedLoop } from '../../random/extended-loop.ts';
import { LH, loopOf, pipe, pumpE, pumpW, SEA, STATED } from './cases.ts';
import { systemOfLoop } from './duties.ts';
import { gravityFlow } from './gravity.ts';
import { prepare, select } from './selection.ts';
import { throttleFor } from './throttle.ts';

const line = (suction: number, root: readonly [number, number], requiredFlow: number): ExtendedLoop =>
  loopOf({
    suction: [pipe(suction, 1)],
    discharge: { run: [pipe(...root)], outlet: { name: 'end', requiredFlow: requiredFlow * LH } },
  });

const cubic = [
  { setting: 100, power: 300 },
  { setting: 50, power: 37.5 },
];

describe('a pump beyond its greatest flow', () => {
  // Figures of a separate calculation, fresh water of 20 degC.
  it('is throttled at 50 %', () => {
    const pump = { ...pumpE, powerPoints: cubic, flowLimits: { max: 6000 * LH } };
    const prepared = prepare({ loop: line(40, [32, 2], 3000), pump, count: 1, balancing: 'as-built' });
    expect(select(prepared)).toEqual({ feasible: false, reasons: ['pump-above-maximum'] });
    const throttle = throttleFor(prepared);
    expect(throttle?.duty.setting).toBe(50);
    expectClose(throttle?.head ?? Number.NaN, 0.801424, STATED);
    expectClose(throttle?.kv ?? Number.NaN, 10.7011, STATED);
    expectClose(throttle?.duty.power ?? Number.NaN, 37.5, STATED);
  });

  // Figures of a separate calculation, seawater of 25 degC.
  it('is throttled at 56 %', () => {
    const pump = { ...pumpW, flowLimits: { max: 9000 * LH } };
    const loop = { ...line(45, [38, 3], 5000), water: SEA };
    const prepared = prepare({ loop, pump, count: 1, balancing: 'as-built' });
    const throttle = throttleFor(prepared);
    expect(select(prepared)).toMatchObject({ reasons: ['pump-above-maximum'] });
    expect(throttle?.duty.setting).toBe(56);
    const { head, kv, cv, duty } = throttle ?? { head: 0, kv: 0, cv: 0, duty: { flow: 0, head: 0 } };
    for (const [actual, expected] of [
      [duty.flow / LH, 5040],
      [duty.head, 1.288],
      [duty.head - head, 0.24557],
      [head, 1.04243],
      [kv, 15.7633],
      [cv, 18.2239],
    ] as const)
      expectClose(actual, expected, STATED);
  });
});

describe('a loop that falls', () => {
  // Figures of a separate calculation, fresh water of 20 degC.
  it.each([
    [-1, 10_249.4],
    [-0.5, 7077.83],
  ])('by %d m runs at %d L/h without a pump', (staticHead, expected) => {
    const loop = { ...line(40, [40, 4], 3000), staticHead };
    expectClose((gravityFlow(systemOfLoop(loop)) ?? Number.NaN) / LH, expected, STATED);
  });

  it('is served without a pump only where that is refused', () => {
    const loop = { ...line(40, [40, 4], 3000), staticHead: -0.2 };
    const ask = (gravity: 'report' | 'reject') =>
      select(prepare({ loop, pump: pumpE, count: 1, balancing: 'as-built', limits: { gravity } }));
    expect(ask('report').feasible).toBe(true);
    expect(ask('reject')).toMatchObject({ feasible: false, reasons: ['gravity-suffices'] });
  });

  it('needs a pump for more', () => {
    const loop = { ...line(40, [40, 4], 11_000), staticHead: -1 };
    const limits = { gravity: 'reject' } as const;
    const answer = select(prepare({ loop, pump: pumpE, count: 1, balancing: 'as-built', limits }));
    expect(answer.feasible ? [] : answer.reasons).not.toContain('gravity-suffices');
  });

  it('has no such flow without a fall', () => {
    expect(gravityFlow(systemOfLoop(line(40, [40, 4], 3000)))).toBeUndefined();
  });
});
