/** Which bore an element takes, read off runs by hand. */
import { describe, expect, it } from 'vitest';
import { findPipe } from '../../../models/components/pipe-sizes.ts';
import type { RunElement } from '../../../models/loop/loop.ts';
import {
  firstBore,
  firstBoreOfBranch,
  inheritedBores,
  lastBore,
  pipeBore,
} from '../../../models/network/bores.ts';
import { outlet, pipe } from '../example-loops.ts';

const ELBOW: RunElement = { fitting: 'elbow-90' };
const NONE = { upstream: null, downstream: null };

describe('the bore of a pipe', () => {
  it('is that of its standard size, with the wall of smooth plastic', () => {
    expect(pipeBore('pn10 63')).toEqual({ bore: findPipe('pn10 63')?.insideDiameter, roughness: 1.5e-6 });
  });

  it('is as entered, with the roughness that is stated', () => {
    expect(pipeBore({ insideDiameter: 0.04 })).toEqual({ bore: 0.04, roughness: 1.5e-6 });
    expect(pipeBore({ insideDiameter: 0.04, roughness: 1e-4 })).toEqual({ bore: 0.04, roughness: 1e-4 });
  });

  it('is not known of a size that no standard has', () => {
    expect(pipeBore('pn10 64')).toBeNull();
  });
});

describe('the ends of a run', () => {
  const run = [ELBOW, pipe(0.03, 1), ELBOW, pipe(0.02, 1), ELBOW];

  it('have the bores of its first and last pipe', () => {
    expect(firstBore(run)).toBe(0.03);
    expect(lastBore(run)).toBe(0.02);
  });

  it('have none without a pipe whose size is known', () => {
    expect(firstBore([ELBOW, { pipe: 'hose', length: 1 }])).toBeNull();
    expect(lastBore([])).toBeNull();
  });
});

describe('the first bore of a branch', () => {
  it('is that of its own run before those beyond', () => {
    const branches = [outlet('a', {}, [pipe(0.01, 1)])];
    expect(firstBoreOfBranch({ run: [ELBOW, pipe(0.03, 1)], branches })).toBe(0.03);
  });

  it('is else that of the first branch that has one, deep before wide', () => {
    const deep = { run: [], branches: [outlet('a'), outlet('b', {}, [pipe(0.015, 1)])] };
    expect(firstBoreOfBranch({ run: [ELBOW], branches: [deep, outlet('c', {}, [pipe(0.02, 1)])] })).toBe(
      0.015,
    );
  });

  it('is none where no pipe is known', () => {
    expect(firstBoreOfBranch({ run: [ELBOW], branches: [outlet('a'), outlet('b')] })).toBeNull();
  });
});

describe('the bore that an element takes', () => {
  const run = [ELBOW, pipe(0.03, 1), ELBOW, pipe(0.02, 1), ELBOW];

  it('is that of the pipe before it, which a pipe takes itself', () => {
    expect(inheritedBores(run, { upstream: 0.05, downstream: 0.01 })).toEqual([0.05, 0.03, 0.03, 0.02, 0.02]);
  });

  it('is, with no pipe before it, that of the first pipe after it', () => {
    expect(inheritedBores(run, { upstream: null, downstream: 0.01 })).toEqual([0.03, 0.03, 0.03, 0.02, 0.02]);
  });

  it('is that beyond the run where the run has no pipe', () => {
    expect(inheritedBores([ELBOW, ELBOW], { upstream: null, downstream: 0.01 })).toEqual([0.01, 0.01]);
    expect(inheritedBores([ELBOW], { upstream: 0.05, downstream: 0.01 })).toEqual([0.05]);
    expect(inheritedBores([ELBOW], NONE)).toEqual([null]);
    expect(inheritedBores([], NONE)).toEqual([]);
  });
});
