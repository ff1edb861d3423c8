/** Compares values that were written in other units, and so differ in their last digits. */

/** Share by which numbers that are alike may differ, having been written and read. */
const SAME = 1e-9;

/** Alike in everything, numbers to a few units in their last digits. */
export function isAlike(one: unknown, other: unknown): boolean {
  if (typeof one === 'number' && typeof other === 'number')
    return Math.abs(one - other) <= SAME * Math.max(Math.abs(one), Math.abs(other));
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null)
    return one === other;
  const members = Object.entries(one);
  const others = new Map(Object.entries(other));
  return members.length === others.size && members.every(([name, value]) => isAlike(value, others.get(name)));
}
