/** Newton's friction factor against the equation, and against bisection. */
import { describe, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import { colebrook } from '../independent/friction.ts';
import { colebrookByNewton } from './colebrook.ts';

const CONDITIONS = [2000, 4e3, 3e4, 1e6, 1e8].flatMap((reynolds) =>
  [0, 1e-6, 1e-4, 0.03].map((relativeRoughness) => ({ reynolds, relativeRoughness })),
);

describe.each(CONDITIONS)('at Re $reynolds and e/D $relativeRoughness', (conditions) => {
  it('the equation of Colebrook and White is met', () => {
    const x = 1 / Math.sqrt(colebrookByNewton(conditions));
    const right = -2 * Math.log10(conditions.relativeRoughness / 3.7 + (2.51 * x) / conditions.reynolds);
    expectClose(x, right, { relative: 1e-14 });
  });

  it('bisection says the same', () => {
    expectClose(colebrookByNewton(conditions), colebrook(conditions), { relative: 1e-13 });
  });
});
