/** Frontiers united, added and thinned, against every combination of their points. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cheapestWithin, type Frontier, singlePoint } from '../../../models/designs/frontier.ts';
import { emptied, type PointColumns, pointColumns } from '../../../models/designs/point-columns.ts';
import { sumFrontiers } from '../../../models/designs/sum-frontiers.ts';
import { POINT_LIMITS, pointBudget } from '../../../models/designs/thin.ts';
import { readSizes } from '../../../models/designs/trace.ts';
import { keepingFor, unite } from '../../../models/designs/unite.ts';
import { drawsFrom, mulberry32 } from '../../random/draw.ts';

const keeping = (headLimit = Number.POSITIVE_INFINITY) => keepingFor({ headLimit, budget: pointBudget(10) });

interface Point {
  readonly head: number;
  readonly cost: number;
}

/** A frontier of any points: each is a size of a list. */
const frontierOf = (points: readonly Point[], list: number, headLimit?: number): Frontier =>
  unite(
    points.map(({ head, cost }, place) => ({ frontier: singlePoint(0), head, cost, size: { list, place } })),
    keeping(headLimit),
  );

const cheapestOf = (points: readonly Point[], head: number): number =>
  Math.min(Number.POSITIVE_INFINITY, ...points.filter((point) => point.head <= head).map(({ cost }) => cost));

const valueAt = (frontier: Frontier, head: number): number =>
  frontier.costs[cheapestWithin(frontier, head)] ?? Number.POSITIVE_INFINITY;

const points = fc.array(
  fc.record({ head: fc.integer({ min: 0, max: 40 }), cost: fc.integer({ min: 1, max: 40 }) }),
  {
    ...{ minLength: 1, maxLength: 12 },
  },
);

describe('a frontier', () => {
  it('has the cheapest of its points at each head, heads rising and costs falling', () => {
    fc.assert(
      fc.property(points, (all) => {
        const frontier = frontierOf(all, 0);
        for (let head = -1; head <= 41; head += 1)
          expect(valueAt(frontier, head)).toBe(cheapestOf(all, head));
        for (let index = 1; index < frontier.heads.length; index += 1) {
          expect(frontier.heads[index]).toBeGreaterThan(frontier.heads[index - 1] ?? Number.NaN);
          expect(frontier.costs[index]).toBeLessThan(frontier.costs[index - 1] ?? Number.NaN);
        }
      }),
    );
  });

  it('keeps its point of least head, and else none above the limit', () => {
    const all = [
      { head: 3, cost: 9 },
      { head: 5, cost: 7 },
      { head: 8, cost: 2 },
    ];
    expect([...frontierOf(all, 0, 5).heads]).toEqual([3, 5]);
    expect([...frontierOf(all, 0, 1).heads]).toEqual([3]);
  });

  it('adds up at each head, and knows its sizes', () => {
    fc.assert(
      fc.property(points, points, points, (one, other, third) => {
        const all = [one, other, third];
        const sum = sumFrontiers(
          all.map((part, list) => frontierOf(part, list)),
          keeping(),
        );
        for (let head = -1; head <= 41; head += 1) {
          const expected = all.reduce((total, part) => total + cheapestOf(part, head), 0);
          expect(valueAt(sum, head)).toBe(expected);
        }
        for (const [index, cost] of sum.costs.entries()) {
          const sizes: number[] = [];
          readSizes(sum.trace, index, sizes);
          const chosen = all.map((part, list) => part[sizes[list] ?? -1]);
          expect(chosen.reduce((total, point) => total + (point?.cost ?? Number.NaN), 0)).toBe(cost);
          expect(Math.max(...chosen.map((point) => point?.head ?? Number.NaN))).toBeLessThanOrEqual(
            sum.heads[index] ?? 0,
          );
        }
      }),
    );
  });
});

describe('a frontier of too many points', () => {
  const count = 450_000;
  const filled = (): PointColumns => {
    const draw = drawsFrom(mulberry32(5));
    const columns = pointColumns();
    emptied(columns, count);
    let cost = 1e6;
    for (let index = 0; index < count; index += 1) {
      cost -= draw.between(0.01, 1) ** 4;
      columns.heads[index] = index;
      columns.costs[index] = cost;
    }
    columns.size = count;
    return columns;
  };
  const thinned = filled();
  const missed = pointBudget(1).thin(thinned);
  const all = filled();

  it('keeps one a bucket of cost, and states what that may miss', () => {
    expect(thinned.size).toBeLessThanOrEqual(POINT_LIMITS.frontier + 1);
    const width = ((all.costs[0] ?? 0) - (all.costs[count - 1] ?? 0)) / POINT_LIMITS.frontier;
    expect(missed).toBeGreaterThan(0);
    expect(missed).toBeLessThanOrEqual(width);
  });

  it('has for each point left out one of no more head that costs no more than it by the miss', () => {
    let kept = 0;
    let worst = 0;
    for (let index = 0; index < count; index += 1) {
      while (kept + 1 < thinned.size && (thinned.heads[kept + 1] ?? 0) <= index) kept += 1;
      worst = Math.max(worst, (thinned.costs[kept] ?? 0) - (all.costs[index] ?? 0));
    }
    expect(worst).toBe(missed);
    expect(thinned.costs[thinned.size - 1]).toBe(all.costs[count - 1]);
  });
});
