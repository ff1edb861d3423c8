/** A limit that is reached in the middle of a search, and what bugs do. */
import { describe, expect, it } from 'vitest';
import { figureAt, wholeAt } from '../../../models/network/branch-arrays.ts';
import { SolveFailure, solving } from '../../../models/network/solve-failure.ts';
import { buffersOf } from '../../../models/network/solver-buffers.ts';
import { loopOf, networkOf, outlet } from '../example-loops.ts';

const FAILURE = { code: 'iterations', limit: 200 } as const;

describe('a computation', () => {
  it('that gives a value gives it', () => {
    expect(solving(() => 7)).toEqual({ ok: true, value: 7 });
  });

  it('that reaches a limit fails by it, however deep', () => {
    const deep = (levels: number): number => {
      if (levels === 0) throw new SolveFailure(FAILURE);
      return deep(levels - 1);
    };
    expect(solving(() => deep(5))).toEqual({ ok: false, failure: FAILURE });
  });

  it('that has a bug throws it', () => {
    const bug = () => {
      throw new RangeError('bug');
    };
    expect(() => solving(bug)).toThrow(RangeError);
    expect(new SolveFailure(FAILURE).message).toBe('iterations');
  });
});

describe('the arrays of branches', () => {
  it('are read where a branch is, and throw where none is', () => {
    expect(figureAt(Float64Array.of(1.5, 2.5), 1)).toBe(2.5);
    expect(wholeAt(Int32Array.of(-1, 7), 1)).toBe(7);
    expect(wholeAt(Uint8Array.of(0, 1), 0)).toBe(0);
    expect(() => figureAt(new Float64Array(2), 2)).toThrow('branch 2');
    expect(() => wholeAt(new Int32Array(2), -1)).toThrow('branch -1');
  });

  it('are made once a network', () => {
    const [one, other] = [networkOf(loopOf(outlet('a'))), networkOf(loopOf(outlet('a')))];
    expect(buffersOf(one)).toBe(buffersOf(one));
    expect(buffersOf(one)).not.toBe(buffersOf(other));
  });
});
