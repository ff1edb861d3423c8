/** Reads a number of an array that is known to be there. */

/** The element at an index; throws where there is none, which is a bug. */
export function at(array: ArrayLike<number>, index: number): number {
  return array[index] ?? notThere(index);
}

/** Apart, so that `at` is small enough to be compiled into the loops that it is read in. */
function notThere(index: number): never {
  throw new Error(`the array has no number at ${index}`);
}
