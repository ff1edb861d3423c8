/** The equations of a tree at a state, against the losses of its elements and differences of them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Branch } from '../../../models/loop/loop.ts';
import { lossOver, type Network } from '../../../models/network/network.ts';
import type { Passage } from '../../../models/network/passage.ts';
import { treeOf } from '../../../models/network/tree.ts';
import { equationBuffers, equationsAt } from '../../../models/network/tree-equations.ts';
import { expectClose } from '../../expect-close.ts';
import { loopOf, networkOf, outlet, pipe, solved } from '../example-loops.ts';

const num = (array: ArrayLike<number>, index: number): number => array[index] ?? Number.NaN;

/** Bores at the tee [m]: the area ratio of the side is 0.39. */
const LEG = 0.04;
const SIDE = 0.025;

/** A trunk, a straight run, and a side of a stated tee that splits again. */
const TEE: Branch = {
  run: [pipe(LEG, 1)],
  split: 'tee-90',
  branches: [
    outlet('straight', {}, [pipe(0.03, 2)]),
    { run: [pipe(SIDE, 1)], branches: [outlet('a', {}, [pipe(0.02, 1)]), outlet('b', {}, [pipe(0.02, 3)])] },
  ],
};
const NETWORK = networkOf(loopOf(TEE));

function equationsOf(
  network: Network,
  flow: readonly number[],
  head: readonly number[],
  passages: readonly Passage[] = network.branches.map(() => 'outward'),
) {
  const state = { flow: Float64Array.from(flow), head: Float64Array.from(head) };
  const buffers = equationBuffers(flow.length);
  return equationsAt(treeOf(network), passages, { ...state, buffers });
}

const FLOWS = [3e-3, 2e-3, 1e-3, 4e-4, 6e-4];
const HEADS = [1.1, 0, 0.7, 0, 0];

const velocityHead = (flow: number, bore: number): number =>
  (flow / ((Math.PI / 4) * bore ** 2)) ** 2 / (2 * 9.80665);

/** What the straight run and the side lose at the tee by the published law for so narrow a side. */
function atTee(b: number, flow: readonly number[], passage: Passage): number {
  const side = num(flow, 2);
  if (b === 1) return side > 0 ? 0.4 * velocityHead(side, LEG) : 0;
  if (b !== 2) return 0;
  return passage === 'outward'
    ? velocityHead(Math.max(0, num(flow, 0)), LEG) + velocityHead(side, SIDE)
    : -0.6 * velocityHead(side, SIDE);
}

/** Head where each branch begins less its losses less head at its far end, by hand. */
function residualOf(b: number, flow: readonly number[], passage: Passage): number {
  const branch = NETWORK.branches[b];
  if (branch === undefined) return Number.NaN;
  const { elements, parent } = branch;
  return num(HEADS, parent) - lossOver(elements, num(flow, b)).head - atTee(b, flow, passage) - num(HEADS, b);
}

describe('the equations of a tree', () => {
  it('have the heads that do not balance as residuals', () => {
    const { linear, worst, sumOfSquares } = equationsOf(NETWORK, FLOWS, HEADS);
    const residuals = [1, 2, 3, 4].map((b) => residualOf(b, FLOWS, 'outward'));
    for (const [i, expected] of residuals.entries()) {
      expectClose(num(linear.residual, i + 1), expected, { relative: 1e-12, absolute: 1e-14 });
    }
    expectClose(worst, Math.max(...residuals.map(Math.abs)), { relative: 1e-12 });
    expectClose(
      sumOfSquares,
      residuals.reduce((sum, r) => sum + r * r, 0),
      { relative: 1e-12 },
    );
  });

  it('have none at a solution', () => {
    const { flows, heads } = solved(NETWORK, 2.5e-3);
    const { worst, allowed } = equationsOf(NETWORK, flows, heads);
    expect(worst).toBeLessThanOrEqual(100 * allowed);
    expect(allowed).toBeLessThan(1e-10);
  });

  it('have slopes that differences of the residuals show', () => {
    const { linear } = equationsOf(NETWORK, FLOWS, HEADS);
    for (const b of [1, 2, 3, 4]) {
      const step = 1e-4 * num(FLOWS, b);
      const at = (change: number) => residualOf(b, FLOWS.with(b, num(FLOWS, b) + change), 'outward');
      expectClose(num(linear.lossSlope, b), (at(-step) - at(step)) / (2 * step), { relative: 1e-5 });
      const parent = NETWORK.branches[b]?.parent ?? Number.NaN;
      const up = 1e-4 * num(FLOWS, parent);
      const above = (change: number) =>
        residualOf(b, FLOWS.with(parent, num(FLOWS, parent) + change), 'outward');
      expectClose(num(linear.combinedSlope, b), (above(-up) - above(up)) / (2 * up), {
        relative: 1e-5,
        absolute: 1e-9,
      });
    }
    // Only the side of the stated tee loses by the flow before it, and the straight run by that of the side.
    expect([...linear.combinedSlope].map((slope) => slope > 1e-9)).toEqual([
      ...[false, false, true, false, false],
    ]);
    const wider = (change: number) => residualOf(1, FLOWS.with(2, num(FLOWS, 2) + change), 'outward');
    expectClose(num(linear.sidesSlope, 1), (wider(-1e-7) - wider(1e-7)) / 2e-7, { relative: 1e-5 });
    expect([...linear.isSide]).toEqual([0, 0, 1, 0, 0]);
  });

  it('leave the combined flow out of a side branch that runs inward', () => {
    const flows = [1e-3, 2e-3, -1e-3, -4e-4, -6e-4];
    const passages: readonly Passage[] = ['outward', 'outward', 'inward', 'outward', 'outward'];
    const { linear } = equationsOf(NETWORK, flows, HEADS, passages);
    expectClose(num(linear.residual, 2), residualOf(2, flows, 'inward'), { relative: 1e-12 });
    expect(num(linear.combinedSlope, 2)).toBe(0);
  });

  it('hold what is closed or rests, and nothing else', () => {
    const closed = networkOf(
      loopOf({ ...TEE, branches: [outlet('straight', {}, [{ valve: 'ball', opening: 0 }]), outlet('side')] }),
    );
    const { linear } = equationsOf(closed, [1e-3, 0, 1e-3], [1, 0, 0]);
    expect([...linear.held]).toEqual([0, 1, 0]);
    expect(num(linear.residual, 1)).toBe(0);
    const resting: readonly Passage[] = ['outward', 'outward', 'resting', 'outward', 'outward'];
    const rest = equationsOf(NETWORK, [2e-3, 2e-3, 0, 0, 0], HEADS, resting);
    expect([...rest.linear.held]).toEqual([0, 0, 1, 0, 0]);
    expect(num(rest.linear.residual, 2)).toBe(0);
    expect(num(rest.linear.combinedSlope, 2)).toBe(0);
  });

  it('give every branch a slope above 0, without losses and at rest too', () => {
    const free = networkOf(
      loopOf({
        run: [],
        branches: [outlet('free', { lossCoefficient: 0 }), outlet('jet', {}, [pipe(0.02, 1)])],
      }),
    );
    for (const flows of [
      [0, 0, 0],
      [1e-3, 0, 1e-3],
      [1e-3, 1e-3, 0],
    ]) {
      const { linear } = equationsOf(free, flows, [0.5, 0, 0]);
      for (const b of [1, 2]) expect(num(linear.lossSlope, b)).toBeGreaterThan(0);
    }
  });

  it('take a step from rest by the flow that its residual would drive', () => {
    const one = networkOf(
      loopOf({ run: [], branches: [outlet('a', {}, [{ lossCoefficient: 5, diameter: 0.02 }]), outlet('b')] }),
    );
    const { linear } = equationsOf(one, [1e-3, 0, 1e-3], [0.8, 0, 0]);
    const elements = one.branches[1]?.elements ?? [];
    const perSquare = lossOver(elements, 1e-3).head / 1e-6;
    // h = c Q^2 has the chord slope h/Q = sqrt(c h) at the flow of h, and twice that as tangent.
    expectClose(num(linear.lossSlope, 1), 2 * Math.sqrt(perSquare * 0.8), { relative: 1e-9 });
  });

  it('write nothing outside of their buffers, whatever was in them', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ noNaN: true }), { minLength: 5, maxLength: 5 }), (junk) => {
        const state = { flow: Float64Array.from(FLOWS), head: Float64Array.from(HEADS) };
        const clean = equationBuffers(5);
        const used = {
          ...equationBuffers(5),
          residual: Float64Array.from(junk),
          lossSlope: Float64Array.from(junk),
        };
        const passages = NETWORK.branches.map((): Passage => 'outward');
        const tree = treeOf(NETWORK);
        const a = equationsAt(tree, passages, { ...state, buffers: clean });
        const b = equationsAt(tree, passages, { ...state, buffers: used });
        expect([...b.linear.residual].slice(1)).toEqual([...a.linear.residual].slice(1));
        expect([...state.flow]).toEqual(FLOWS);
      }),
      { seed: 1, numRuns: 20 },
    );
  });
});
