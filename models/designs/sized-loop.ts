/** Puts one size in the place of each list of a loop, and further elements at the ends of its runs. */
import { at } from '../../curves/at.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import type { Branch, PipeworkLoop, RunElement } from '../loop/loop.ts';
import type { DesignBranch, DesignElement, DesignLoop } from './design-loop.ts';

/** For each list, in the order of `listsOf`, the place of the chosen size in it. */
export type Sizes = readonly number[];

/** An element to be put at the end of a branch's run. */
export interface Appended {
  readonly branch: DocumentPath;
  readonly element: RunElement;
}

/**
 * The loop with a pipe in place of each list. Elements are appended, so that every place of the loop as entered stays the
 * place of the same element.
 */
export function sizedLoop(loop: DesignLoop, sizes: Sizes, appended: readonly Appended[] = []): PipeworkLoop {
  let list = 0;
  const sized = (element: DesignElement): RunElement => {
    if (!('pipes' in element)) return element;
    const { pipes, length } = element;
    const pipe = pipes[at(sizes, list)];
    if (pipe === undefined) throw new Error(`invariant: list ${list} has no such size`);
    list += 1;
    return { pipe, length };
  };
  const added = new Map(appended.map(({ branch, element }) => [branch.join('/'), element]));
  const branchOf = (branch: DesignBranch, path: DocumentPath): Branch => {
    const { run, branches, ...rest } = branch;
    const end = added.get(path.join('/'));
    const sizedRun = run.map(sized);
    return {
      ...rest,
      run: end === undefined ? sizedRun : [...sizedRun, end],
      ...(branches && {
        branches: branches.map((child, place) => branchOf(child, [...path, 'branches', place])),
      }),
    };
  };
  // The suction's lists come first.
  const suction = loop.suction.map(sized);
  return { ...loop, suction, discharge: branchOf(loop.discharge, ['discharge']) };
}
