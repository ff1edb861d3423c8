/** Reads the typed arrays that hold the numbers of branches, by one function a type, which the engine compiles tightly. */

/** The figure, in its own unit [any], of a branch that is known to exist; throws where it does not, which is a bug. */
export const figureAt = (figures: Float64Array, branch: number): number =>
  figures[branch] ?? notInTree(branch);

/** A branch number, or a mark of 0 or 1 [-], of a branch that is known to exist; throws where it does not. */
export const wholeAt = (wholes: Int32Array | Uint8Array, branch: number): number =>
  wholes[branch] ?? notInTree(branch);

/** Apart, so that the two above are small enough to be compiled into the loops that they are read in. */
function notInTree(branch: number): never {
  throw new Error(`branch ${branch} is not in the tree`);
}
