/** Compares two JSON values, numbers to what writing and reading them in units may change. */

/** Relative: what was entered is read back within this. */
const SAME = 1e-9;

/** Alike in everything, in whatever order members stand. */
export function isAlike(one: unknown, other: unknown): boolean {
  if (typeof one === 'number' && typeof other === 'number')
    return Math.abs(one - other) <= SAME * Math.max(Math.abs(one), Math.abs(other));
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null)
    return one === other;
  const members = Object.entries(one);
  const others = new Map(Object.entries(other));
  return members.length === others.size && members.every(([name, value]) => isAlike(value, others.get(name)));
}
