/** The part that an element of a run plays, whatever way it is entered. */
import { describe, expect, it } from 'vitest';
import type { RunElement } from '../../../models/loop/loop.ts';
import { countOf, roleOf } from '../../../models/loop/role-of-element.ts';

describe('the role of an element', () => {
  it.each<[string, RunElement, string | null]>([
    ['a pipe of a standard size', { pipe: 'pn10 63', length: 1 }, 'pipe'],
    ['a pipe of its own bore', { pipe: { insideDiameter: 0.05 }, length: 1 }, 'pipe'],
    ['a fitting of the table', { fitting: 'tee-branch-flanged-two-k' }, 'tee'],
    ['a reducer', { fitting: 'reducer-taper-30' }, 'bore-change'],
    ['a valve of the table', { valve: 'ball' }, 'valve'],
    ['a foot valve', { valve: 'foot-hinged' }, 'check-valve'],
    ['a check valve entered as a fitting', { fitting: 'check-swing' }, 'check-valve'],
    ['a valve of known Kv', { valve: { kv: 12 } }, 'valve'],
    ['a valve of known Cv', { valve: { cv: 12 } }, 'valve'],
    ['a loss coefficient', { lossCoefficient: 1 }, null],
    ['an equivalent length', { equivalentLength: 1 }, null],
    ['a head at a flow', { loss: { head: 1, flow: 1e-3 } }, null],
    ['a fitting that no table has', { fitting: 'ball' }, null],
    ['a valve that no table has', { valve: 'tee-run' }, null],
  ])('of %s', (_, element, role) => {
    expect(roleOf(element)).toBe(role);
  });
});

describe('the pieces of a role in a run', () => {
  const run: readonly RunElement[] = [
    { fitting: 'union', count: 3 },
    { valve: 'ball' },
    { fitting: 'union' },
    { fitting: 'elbow-90', count: 2 },
    { fitting: 'elbow-45-mitre-two-k' },
  ];

  it('are counted piece by piece, over all rows of the role', () => {
    expect(countOf(run, 'union')).toBe(4);
    expect(countOf(run, 'bend')).toBe(3);
    expect(countOf(run, 'valve')).toBe(1);
    expect(countOf(run, 'tee')).toBe(0);
  });

  it('are none where the count entered is 0', () => {
    expect(countOf([{ fitting: 'union', count: 0 }], 'union')).toBe(0);
  });
});
