/** Numbers between 0 and 1 that a seed foretells. */

/** Source: xorshift32, G. Marsaglia (2003), Xorshift RNGs, triple 13, 17, 5. */
export function drawing(seed: number): () => number {
  let state = (seed * 2_654_435_761) >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 2 ** 32;
  };
}
