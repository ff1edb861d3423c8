/** Outlets closed in a compiled loop, against the loop entered with valves closed. */
import { describe, expect, it } from 'vitest';
import type { Branch, SystemCurveLoop } from '../../../models/loop/loop.ts';
import { shutOff, withShut } from '../../../models/network/shut-off.ts';
import { expectClose } from '../../expect-close.ts';
import { loopOf, modelOf, networkOf, outlet, pipe } from '../example-loops.ts';

const CLOSED = { valve: 'ball', opening: 0 } as const;
const tree = (a: Branch, b: Branch, c: Branch): Branch => ({
  run: [pipe(0.04, 1)],
  branches: [a, { run: [pipe(0.03, 1)], branches: [b, c] }],
});
const leaf = (name: string): Branch => outlet(name, {}, [pipe(0.02, 1)]);
const [a, b, c] = [leaf('a'), leaf('b'), leaf('c')] as const;
const WHOLE = modelOf(loopOf(tree(a, b, c)));

describe('a loop with outlets closed', () => {
  it('is itself where none is named', () => {
    expect(shutOff(WHOLE, [])).toBe(WHOLE);
  });

  it('gives what the loop with a closed valve gives', () => {
    const entered = modelOf(loopOf(tree(a, { ...b, run: [...b.run, CLOSED] }, c)));
    const [one, other] = [shutOff(WHOLE, ['b']), entered].map((model) => model?.system.stateAt(2e-3));
    expectClose(one?.head ?? Number.NaN, other?.head ?? 0, { relative: 1e-9 });
    expect(one?.outletFlows[1]).toBe(0);
    expectClose(one?.outletFlows[0] ?? Number.NaN, other?.outletFlows[0] ?? 0, { relative: 1e-9 });
  });

  it('closes the branch beyond which all is closed', () => {
    const closed = shutOff(WHOLE, ['b', 'c']);
    expect(closed?.network?.branches.map(({ shut }) => shut)).toEqual([false, false, true, true, true]);
    expect(closed?.system.passesWater).toBe(true);
  });

  it('passes no water with all of them closed', () => {
    expect(shutOff(WHOLE, ['a', 'b', 'c'])?.system.passesWater).toBe(false);
  });

  it('is none for a name that the loop has not, alone or among others', () => {
    expect(shutOff(WHOLE, ['d'])).toBeNull();
    expect(shutOff(WHOLE, ['a', 'd'])).toBeNull();
  });

  it('is none where the pipework is not known', () => {
    const { suction, discharge, staticHead, ...common } = loopOf(a);
    const curve: SystemCurveLoop = {
      ...common,
      systemCurve: { points: [{ flow: 1e-3, head: 1 }] },
      outlets: [{ name: 'a', share: 1 }],
    };
    expect(shutOff(modelOf(curve), ['a'])).toBeNull();
    expect(shutOff(modelOf(curve), [])).not.toBeNull();
  });

  it('leaves the loop that it was made of as it was', () => {
    shutOff(WHOLE, ['a']);
    expect(WHOLE.network?.branches.some(({ shut }) => shut)).toBe(false);
  });
});

describe('a network with outlets closed', () => {
  it('keeps what was closed before', () => {
    const network = networkOf(loopOf(tree(a, { ...b, run: [CLOSED] }, c)));
    expect(withShut(network, new Set(['a'])).branches.map(({ shut }) => shut)).toEqual([
      ...[false, true, false, true, false],
    ]);
  });
});
