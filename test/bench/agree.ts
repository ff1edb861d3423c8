/** That two ways to one figure give the same. */

/** Throws where they differ by more than a share of the second. */
export function agree(one: number | undefined, other: number, share: number): void {
  if (one !== undefined && Math.abs(one - other) <= share * Math.abs(other)) return;
  throw new Error(`${one} and ${other} differ by more than ${share} of the latter`);
}
