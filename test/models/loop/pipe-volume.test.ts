/** The water in the pipes of a branch against volumes worked by hand. */
import { describe, expect, it } from 'vitest';
import { pipeVolume } from '../../../models/loop/pipe-volume.ts';
import { expectClose } from '../../expect-close.ts';
import { nested, outlet, pipe } from '../example-loops.ts';

const cylinder = (bore: number, length: number): number => (Math.PI / 4) * bore ** 2 * length;

describe('pipe volume', () => {
  it('is that of every pipe of the tree, fittings and valves left out', () => {
    const branch = {
      run: [pipe(0.05, 2), { fitting: 'elbow-90' }, { lossCoefficient: 3 }],
      branches: [outlet('a', {}, [pipe(0.04, 1)]), outlet('b', {}, [{ valve: 'ball' }, pipe(0.03, 4)])],
    };
    const byHand = cylinder(0.05, 2) + cylinder(0.04, 1) + cylinder(0.03, 4);
    expectClose(pipeVolume(branch), byHand, { relative: 1e-12 });
  });

  it('takes the mean bore of a standard pipe: 10 m of 2 in schedule 40, 51.99 mm (ASTM D1785 tolerances)', () => {
    const branch = outlet('a', {}, [{ pipe: 'sch40 2', length: 10 }]);
    expectClose(pipeVolume(branch), cylinder(0.05199, 10), { relative: 1e-3 });
  });

  it('reaches the deepest of 32 branches, one aside at each but the last', () => {
    const byHand = 32 * cylinder(0.03, 1) + 31 * cylinder(0.025, 0.5);
    expectClose(pipeVolume(nested(32)), byHand, { relative: 1e-12 });
  });

  it('is nothing where no pipe is entered', () => {
    expect(pipeVolume(outlet('a'))).toBe(0);
  });
});
