/** The law of a diverging tee against published figures, and where it changes. */
import { describe, expect, it } from 'vitest';
import {
  type TeeRunLaw,
  teeRunCoefficient,
  teeRunLaw,
  teeSideLaw,
} from '../../../models/components/diverging-tee.ts';
import { expectClose } from '../../expect-close.ts';
import { REDUCING_TEES } from '../../reference/reducing-tees.ts';

/** K of a side on the velocity in the leg. */
function sideCoefficient(boreRatio: number, share: number): number {
  const { growth, own } = teeSideLaw(boreRatio);
  return (1 + growth * share ** 2) * (1 + own * (share / boreRatio ** 2) ** 2);
}

function runCoefficient(boreRatio: number, share: number): number {
  const law = teeRunLaw(boreRatio);
  return law === null ? 0 : teeRunCoefficient(law, share).value;
}

describe.each(REDUCING_TEES)('a side of $boreRatio that takes $share ($source)', (row) => {
  it('has the published loss coefficient', () => {
    expectClose(sideCoefficient(row.boreRatio, row.share), row.side, { absolute: row.tolerance });
  });

  it('gives the straight run the published one', () => {
    expectClose(runCoefficient(row.boreRatio, row.share), row.run, { absolute: row.tolerance });
  });
});

describe('an equal tee', () => {
  // 1 + 0.6 q^2, fitted to the published tee (test/reference/tee.ts).
  it.each([
    [0.3, 1.054],
    [0.6, 1.216],
  ])('loses at its side as fitted where that takes %d', (share, expected) => {
    for (const boreRatio of [1 - 1e-10, 1, 1.4]) {
      const own = 0.6 * (share / boreRatio ** 2) ** 2;
      expectClose(sideCoefficient(boreRatio, share), 1 + own, { relative: 1e-12 });
    }
    expectClose(sideCoefficient(1, share), expected, { relative: 1e-12 });
  });

  it('costs the straight run nothing', () => {
    expect([1 - 1e-10, 1, 1.4].map((ratio) => runCoefficient(ratio, 0.6))).toEqual([0, 0, 0]);
  });
});

describe('the straight run', () => {
  it.each<TeeRunLaw>(['narrow', 'wide'])('passes from share to share without a jump (%s)', (law) => {
    for (let share = 0; share < 1; share += 1 / 64) {
      const [before, after] = [share, share + 1e-9].map((one) => teeRunCoefficient(law, one).value);
      expectClose(after ?? Number.NaN, before ?? Number.NaN, { absolute: 1e-8 });
    }
  });

  it.each<TeeRunLaw>(['narrow', 'wide'])('has the slope of its finite differences (%s)', (law) => {
    const step = 1e-6;
    for (const share of [0.1, 0.3, 0.49, 0.51, 0.9]) {
      const [low, high] = [share - step, share + step].map((one) => teeRunCoefficient(law, one).value);
      const difference = ((high ?? Number.NaN) - (low ?? Number.NaN)) / (2 * step);
      expectClose(teeRunCoefficient(law, share).slope, difference, { absolute: 1e-9 });
    }
  });

  it('gains head beside a wide side that takes less than half, and nothing at a half', () => {
    expect(teeRunCoefficient('wide', 0.3).value).toBeLessThan(0);
    expect(teeRunCoefficient('wide', 0.5).value).toBe(0);
  });
});
