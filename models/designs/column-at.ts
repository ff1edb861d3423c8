/** Reads the typed arrays of points, one function a type: the engine compiles each tightly. */

/** A figure [as the column] that is known to be there; index [-]. */
export const figureAt = (figures: Float64Array, index: number): number => figures[index] ?? notThere(index);

/** A place [-] in another frontier that is known to be there; index [-]. */
export const placeIn = (places: Int32Array, index: number): number => places[index] ?? notThere(index);

/** Apart, so that the two above are small enough to be compiled into the loops that they are read in. */
function notThere(index: number): never {
  throw new Error(`invariant: there is no point ${index}`);
}
