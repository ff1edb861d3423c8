/** Reads a number of an array that is known to be there. */

/**
 * The element at an index of an array.
 *
 * @param array numbers in any unit.
 * @param index [-] from 0, below the length of the array.
 * Errors: throws where there is no such element, which is a bug of the caller.
 */
export function at(array: ArrayLike<number>, index: number): number {
  return array[index] ?? notThere(index);
}

/** Apart, so that `at` is small enough to be compiled into the loops that it is read in. */
function notThere(index: number): never {
  throw new Error(`the array has no number at ${index}`);
}
