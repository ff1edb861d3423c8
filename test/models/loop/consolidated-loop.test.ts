/** Loops joined on one pump, against each alone. */
import { describe, expect, it } from 'vitest';
import { consolidatedLoop } from '../../../models/loop/consolidated-loop.ts';
import type { Loop, PipeworkLoop } from '../../../models/loop/loop.ts';
import { expectClose } from '../../expect-close.ts';
import { LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe } from '../example-loops.ts';

const bay = (name: string, staticHead = 0): PipeworkLoop => ({
  ...loopOf(outlet('jet', { requiredFlow: 1500 * LITRE_PER_HOUR }, [pipe(0.03, 2)]), { staticHead }),
  name,
});

const joined = (...loops: PipeworkLoop[]) => {
  const made = consolidatedLoop({ loops, suction: [pipe(0.05, 1)], manifold: [] });
  if (!made.ok) throw new Error(made.failure.code);
  return made.value;
};

describe('a consolidation', () => {
  it('has the outlets of all loops, each named after its own', () => {
    const { system } = modelOf(joined(bay('north'), bay('south')));
    expect(system.outlets.map(({ name }) => name)).toEqual(['north: jet', 'south: jet']);
  });

  it('tells loops of one name apart by their places', () => {
    const { system } = modelOf(joined(bay('bay'), bay('bay')));
    expect(system.outlets.map(({ name }) => name)).toEqual(['bay 1: jet', 'bay 2: jet']);
  });

  it('tells outlets apart whatever their loops are called', () => {
    const long = 'n'.repeat(120);
    for (const names of [
      [long, long, long],
      ['bay', 'bay', 'bay 1'],
      [`${long.slice(1)}a`, `${long.slice(1)}b`, `${long.slice(1)}c`],
    ]) {
      const { system } = modelOf(joined(...names.map((name) => bay(name))));
      const found = system.outlets.map(({ name }) => name);
      expect(new Set(found).size).toBe(3);
      for (const name of found) expect(name.length).toBeLessThanOrEqual(120);
    }
  });

  it('of equal loops without a manifold passes n times the flow of one at the same head beyond the suction', () => {
    const wide = (loop: PipeworkLoop): PipeworkLoop => ({ ...loop, suction: [pipe(5, 0.001)] });
    const one = modelOf(wide(bay('a'))).system;
    const three = modelOf(wide(joined(bay('a'), bay('b'), bay('c')))).system;
    const flow = 1500 * LITRE_PER_HOUR;
    expectClose(three.stateAt(3 * flow).head, one.stateAt(flow).head, { relative: 1e-9 });
  });

  it('keeps the lift of each loop', () => {
    const { system } = modelOf(joined(bay('low', 0.5), bay('high', 1.5)));
    const { head, outletFlows } = system.stateAt(3000 * LITRE_PER_HOUR);
    expect(outletFlows[0]).toBeGreaterThan(outletFlows[1] ?? 0);
    expect(head).toBeGreaterThan(0.5);
  });

  it('keeps the exits that outlets had before the lift of their loop became theirs', () => {
    const exitsOf = ({ discharge }: PipeworkLoop) => discharge.branches?.map(({ outlet: end }) => end?.exit);
    const under = { ...bay('a', 0.5), discharge: outlet('jet', {}, [pipe(0.03, 2)]) };
    const above = { ...bay('b', -0.5), discharge: outlet('jet', { staticHead: 0.2 }, [pipe(0.03, 2)]) };
    expect(exitsOf(joined(under, above))).toEqual(['submerged', 'free']);
  });

  it('charges steps of bore as its loops do', () => {
    const ignoring = (name: string): PipeworkLoop => ({ ...bay(name), boreChanges: 'ignored' });
    expect(joined(ignoring('a'), ignoring('b')).boreChanges).toBe('ignored');
    const stated: PipeworkLoop = { ...bay('b'), boreChanges: 'abrupt' };
    expect(joined(bay('a'), stated).boreChanges).toBeUndefined();
  });

  const { discharge: _, ...common } = bay('b');
  const unknown: Loop = { ...common, systemCurve: { points: [{ flow: 1e-3, head: 1 }] }, outlets: [] };

  it.each([
    { why: 'no pipework', code: 'no-pipework', second: unknown },
    {
      why: 'other water',
      code: 'other-water',
      second: { ...bay('b'), water: { temperature: 20, salinity: 35 } },
    },
    {
      why: 'another friction multiplier',
      code: 'other-friction',
      second: { ...bay('b'), frictionMultiplier: 1.2 },
    },
    {
      why: 'another charge of steps of bore',
      code: 'other-bore-changes',
      second: { ...bay('b'), boreChanges: 'ignored' as const },
    },
  ])('refuses a loop of $why, by its place', ({ code, second }) => {
    const made = consolidatedLoop({ loops: [bay('a'), second], suction: [], manifold: [] });
    expect(made).toMatchObject({ ok: false, failure: { code, place: 1 } });
  });
});
