import { describe, expect, it } from 'vitest';
import { chooseCandidate } from '../../curves/choose-candidate.ts';

const chosen = (candidates: readonly [readonly number[], number][], floor = 0) =>
  chooseCandidate(
    candidates.map(([powers, meanSquare]) => ({ powers, meanSquare })),
    floor,
  )?.powers;

describe('the choice among candidates', () => {
  it('takes the fewest powers within 1.05 of the least error', () => {
    expect(
      chosen([
        [[1, 2, 3], 1],
        [[1, 2], 1.02],
        [[2], 1.049],
      ]),
    ).toEqual([2]);
  });

  it('measures the 1.05 on the mean square, from the least error of all', () => {
    expect(
      chosen([
        [[1, 2], 1],
        [[2], 1.051],
      ]),
    ).toEqual([1, 2]);
    expect(
      chosen([
        [[1, 2], 1],
        [[2], 1.05],
      ]),
    ).toEqual([2]);
  });

  it('takes the least error among as few powers', () => {
    expect(
      chosen([
        [[1, 2], 1.02],
        [[3, 4], 1.01],
        [[1, 2, 3], 1],
      ]),
    ).toEqual([3, 4]);
  });

  it('takes the lowest powers at equal error, the first power deciding first', () => {
    expect(
      chosen([
        [[2, 3], 1],
        [[1, 6], 1],
        [[1, 5], 1],
      ]),
    ).toEqual([1, 5]);
    expect(
      chosen([
        [[6], 1],
        [[5], 1],
      ]),
    ).toEqual([5]);
  });

  it('counts errors under the floor as the floor, so that rounding decides nothing', () => {
    expect(
      chosen(
        [
          [[1, 2], 1e-40],
          [[3, 4], 1e-44],
          [[2], 1e-3],
        ],
        1e-18,
      ),
    ).toEqual([1, 2]);
    expect(
      chosen(
        [
          [[2], 1e-18],
          [[1, 2], 0],
        ],
        1e-18,
      ),
    ).toEqual([2]);
  });

  it('is nothing among nothing', () => {
    expect(chosen([])).toBeUndefined();
  });
});
