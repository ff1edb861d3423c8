/** The step of a tree against the same equations written out and solved by plain elimination. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LinearTree, stepBuffers, treeStep } from '../../../models/network/linear-tree.ts';
import { expectClose } from '../../expect-close.ts';
import { denseSolve } from './dense-solve.ts';

const num = (array: ArrayLike<number>, index: number): number => array[index] ?? Number.NaN;

interface Written {
  readonly parent: number;
  readonly residual: number;
  readonly lossSlope: number;
  readonly combinedSlope: number;
  readonly sidesSlope: number;
  readonly isHeld: boolean;
}

/** Branch 0 is the root; every other leaves one before it. A branch that feeds none is an outlet. */
function treeFrom(written: readonly Written[]): LinearTree {
  const parent = written.map((one, b) => (b === 0 ? -1 : one.parent % b));
  const hasChild = (b: number) => parent.includes(b);
  const isFirst = (b: number) => parent.indexOf(num(parent, b)) === b;
  // Only outlets that leave others of their node open may be held.
  const held = Uint8Array.from(parent, (_, b) =>
    b > 0 && !hasChild(b) && !isFirst(b) && written[b]?.isHeld === true ? 1 : 0,
  );
  return {
    parent: Int32Array.from(parent),
    isOutlet: Uint8Array.from(parent, (_, b) => (hasChild(b) ? 0 : 1)),
    held,
    sidesSlope: Float64Array.from(written, ({ sidesSlope }, b) => (b > 0 && isFirst(b) ? sidesSlope : 0)),
    isSide: Uint8Array.from(held, (one, b) => (b > 0 && !isFirst(b) && one === 0 ? 1 : 0)),
    sidesBeyond: parent.map((_, b) => [...parent.keys()].filter((c) => parent[c] === b).slice(1)),
    residual: Float64Array.from(written, ({ residual }) => residual),
    lossSlope: Float64Array.from(written, ({ lossSlope }) => lossSlope),
    combinedSlope: Float64Array.from(written, ({ combinedSlope }) => combinedSlope),
  };
}

/** The sides by whose flows a branch loses. */
const sidesOf = ({ parent, sidesSlope, sidesBeyond }: LinearTree, b: number): readonly number[] =>
  num(sidesSlope, b) === 0 ? [] : (sidesBeyond[num(parent, b)] ?? []);

/** Unknowns: the flow of each branch, then the head at each far end. */
function writtenOut(tree: LinearTree, rootStep: number): readonly number[] {
  const size = tree.parent.length;
  const rows: number[][] = [];
  const right: number[] = [];
  const equation = (terms: readonly (readonly [number, number])[], value: number) => {
    const row = new Array<number>(2 * size).fill(0);
    for (const [place, coefficient] of terms) row[place] = (row[place] ?? 0) + coefficient;
    rows.push(row);
    right.push(value);
  };
  for (let b = 0; b < size; b += 1) {
    const children = [...tree.parent.keys()].filter((c) => tree.parent[c] === b);
    if (tree.isOutlet[b] === 1) equation([[size + b, 1]], 0);
    else equation([[b, 1], ...children.map((c) => [c, -1] as const)], 0);
    if (b === 0) equation([[0, 1]], rootStep);
    else if (tree.held[b] === 1) equation([[b, 1]], 0);
    else {
      const p = num(tree.parent, b);
      equation(
        [
          [b, num(tree.lossSlope, b)],
          [p, num(tree.combinedSlope, b)],
          ...sidesOf(tree, b).map((side) => [side, num(tree.sidesSlope, b)] as const),
          [size + b, 1],
          [size + p, -1],
        ],
        num(tree.residual, b),
      );
    }
  }
  return denseSolve(rows, right);
}

const branch = fc.record({
  parent: fc.nat(50),
  residual: fc.double({ min: -2, max: 2, noNaN: true }),
  lossSlope: fc.double({ min: 10, max: 1e4, noNaN: true }),
  combinedSlope: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 100, noNaN: true })),
  sidesSlope: fc.oneof(fc.constant(0), fc.double({ min: -5, max: 0.5, noNaN: true })),
  isHeld: fc.boolean(),
});

/** No branch loses by the flow of others of its node. */
const withoutSides = (size: number) => ({
  sidesSlope: new Float64Array(size),
  isSide: new Uint8Array(size),
  sidesBeyond: [],
});

describe('the step of a tree', () => {
  it('is that of the same equations solved at once', () => {
    fc.assert(
      fc.property(
        fc.array(branch, { minLength: 1, maxLength: 14 }),
        fc.constantFrom(0, 1, -0.3),
        (written, rootStep) => {
          const tree = treeFrom(written);
          const size = tree.parent.length;
          const expected = writtenOut(tree, rootStep);
          const { flow, head } = treeStep(tree, rootStep, stepBuffers(size));
          for (let b = 0; b < size; b += 1) {
            expectClose(num(flow, b), num(expected, b), { relative: 1e-8, absolute: 1e-10 });
            expectClose(num(head, b), num(expected, size + b), { relative: 1e-8, absolute: 1e-8 });
          }
        },
      ),
      { seed: 1, numRuns: 200 },
    );
  });

  it('splits a step of the root by the slopes of two outlets', () => {
    const tree = {
      parent: Int32Array.of(-1, 0, 0),
      isOutlet: Uint8Array.of(0, 1, 1),
      held: Uint8Array.of(0, 0, 0),
      residual: new Float64Array(3),
      lossSlope: Float64Array.of(0, 100, 300),
      combinedSlope: new Float64Array(3),
      ...withoutSides(3),
    };
    const { flow, head } = treeStep(tree, 1, stepBuffers(3));
    expect([...flow].map((one) => one.toFixed(12))).toEqual(
      ['1', '0.75', '0.25'].map((one) => Number(one).toFixed(12)),
    );
    // 0.75 x 100 = 0.25 x 300.
    expectClose(num(head, 0), 75, { relative: 1e-12 });
  });

  it('keeps the head of a node whose ways on are all held, and every held flow', () => {
    const tree = {
      parent: Int32Array.of(-1, 0, 0, 1),
      isOutlet: Uint8Array.of(0, 0, 1, 1),
      held: Uint8Array.of(0, 1, 0, 1),
      residual: Float64Array.of(0, 5, 1, 5),
      lossSlope: Float64Array.of(0, 0, 200, 0),
      combinedSlope: new Float64Array(4),
      ...withoutSides(4),
    };
    const { flow, head } = treeStep(tree, 1, stepBuffers(4));
    expect([...flow]).toEqual([1, 0, 1, 0]);
    expect([num(head, 1), num(head, 3)]).toEqual([0, 0]);
    expectClose(num(head, 0), 200 - 1, { relative: 1e-12 });
  });

  it('keeps continuity to the last digit where slopes differ by nine orders', () => {
    const tree = {
      parent: Int32Array.of(-1, 0, 0, 0),
      isOutlet: Uint8Array.of(0, 1, 1, 1),
      held: new Uint8Array(4),
      residual: Float64Array.of(0, 0.3, -0.7, 0.1),
      lossSlope: Float64Array.of(0, 1e-6, 1e3, 7),
      combinedSlope: new Float64Array(4),
      ...withoutSides(4),
    };
    const { flow } = treeStep(tree, 1 / 3, stepBuffers(4));
    expect(num(flow, 1) + num(flow, 2) + num(flow, 3)).toBe(1 / 3);
  });
});
