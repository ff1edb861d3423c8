/** A comparison of numbers by a stated relative or absolute tolerance. */
import { expect } from 'vitest';

interface Tolerance {
  readonly relative?: number;
  readonly absolute?: number;
}

/** Passes when |actual - expected| is within relative x |expected| plus absolute; says all three numbers when it is not. */
export function expectClose(
  actual: number,
  expected: number,
  { relative = 0, absolute = 0 }: Tolerance,
): void {
  const allowed = relative * Math.abs(expected) + absolute;
  const difference = Math.abs(actual - expected);
  expect(
    difference <= allowed,
    `${actual} differs from ${expected} by ${difference}, more than ${allowed}`,
  ).toBe(true);
}
