/** The same loop with the mean bore of every standard pipe stated, so that two solutions compute with the same ones. */
import type { ExtendedBranch, ExtendedElement, ExtendedLoop } from '../../random/extended-loop.ts';
import { standardBore } from './bore.ts';

const stated = (element: ExtendedElement): ExtendedElement =>
  'pipe' in element && typeof element.pipe === 'string'
    ? { pipe: { insideDiameter: standardBore(element.pipe) }, length: element.length }
    : element;

const statedBranch = (branch: ExtendedBranch): ExtendedBranch => ({
  ...branch,
  run: branch.run.map(stated),
  ...(branch.branches && { branches: branch.branches.map(statedBranch) }),
});

export const withStatedBores = (loop: ExtendedLoop): ExtendedLoop => ({
  ...loop,
  suction: loop.suction.map(stated),
  discharge: statedBranch(loop.discharge),
});
