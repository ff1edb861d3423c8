/** What the judge of a network's flows finds wrong. */
import { describe, expect, it } from 'vitest';
import { LH, loopOf, pipe, pumpE } from './cases.ts';
import { circuitOfLoop, landing } from './duties.ts';
import { mismatch } from './verify.ts';

const loop = loopOf({
  staticHead: 2,
  suction: [pipe(40, 1)],
  discharge: {
    run: [pipe(40, 2)],
    branches: [
      { run: [pipe(25, 4)], outlet: { name: 'a', staticHead: -1 } },
      { run: [pipe(20, 3), { fitting: 'check-swing' }], outlet: { name: 'c' } },
    ],
  },
});
const circuit = circuitOfLoop(loop);

/** Contradiction [m] of flows in L/h when the pump adds a head. */
const contradiction = (a: number, c: number, head: number): number =>
  mismatch(
    circuit,
    [
      { name: 'a', flow: a * LH },
      { name: 'c', flow: c * LH },
    ],
    head,
  );

describe('the judge', () => {
  it('finds nothing in a balance, its valve closed or open', () => {
    for (const setting of [55, 100]) {
      const { outlets, head } = landing(loop, pumpE, setting);
      expect(contradiction(outlets[0] ?? 0, outlets[1] ?? 0, head)).toBeLessThan(1e-9);
    }
  });

  it('finds water that runs back through a valve', () => {
    expect(contradiction(2961.62, -1368.87, 1.5)).toBe(Number.POSITIVE_INFINITY);
  });

  it('finds a valve that holds back water which could run', () => {
    const { outlets, head } = landing(loop, pumpE, 100);
    const total = (outlets[0] ?? 0) + (outlets[1] ?? 0);
    expect(contradiction(total, 0, head)).toBeGreaterThan(0.1);
  });

  it('finds a head that does not drive the flows', () => {
    const { outlets, head } = landing(loop, pumpE, 55);
    expect(contradiction(outlets[0] ?? 0, 0, head + 0.01)).toBeGreaterThan(0.001);
  });
});
