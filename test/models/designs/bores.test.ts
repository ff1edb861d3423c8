/** Elements whose loss depends on bores before and behind them, against the solved network of every combination of sizes. */
import { describe, expect, it } from 'vitest';
import { type DesignLoop, listsOf } from '../../../models/designs/design-loop.ts';
import { priceOfPipe } from '../../../models/designs/pipe-price.ts';
import { sizedLoop } from '../../../models/designs/sized-loop.ts';
import type { Branch } from '../../../models/loop/loop.ts';
import { compileLoop } from '../../../models/network/compiled-loop.ts';
import { pipeworkSystem } from '../../../models/network/pipework-system.ts';
import { trimNetwork } from '../../../models/network/trim.ts';
import { expectClose } from '../../expect-close.ts';
import { fitted } from './question.ts';
import { designsOf, list, loopOf, outlet, pipe, prices, pumpOf } from './small-designs.ts';

const elbow = { fitting: 'elbow-90' };
const sizes = [25, 32, 40, 50];

const end = (litresPerHour: number, facts: Partial<NonNullable<Branch['outlet']>> = {}) =>
  outlet(`outlet of ${litresPerHour}`, litresPerHour, facts);

const cases: readonly (readonly [string, DesignLoop])[] = [
  [
    'a reducer between two lists',
    loopOf({ run: [list(sizes, 2), { fitting: 'reducer' }, list(sizes, 3), elbow], outlet: end(3000) }),
  ],
  [
    'an enlargement, a reducer and three lists',
    loopOf({
      run: [
        list(sizes, 2),
        { fitting: 'enlargement' },
        list(sizes, 1),
        { fitting: 'reducer-taper-30' },
        list(sizes, 3),
      ],
      outlet: end(3000, { nozzleDiameter: 0.02 }),
    }),
  ],
  [
    'a reducer at the end of a run, towards the first branch',
    loopOf({
      run: [list(sizes, 2), { fitting: 'reducer' }],
      branches: [
        { run: [list(sizes, 3)], outlet: end(1500) },
        { run: [elbow, list(sizes, 1)], outlet: end(1000) },
      ],
    }),
  ],
  [
    'a suction without a pipe',
    loopOf({ run: [elbow, list(sizes, 3), list([32, 50], 2)], outlet: end(2500) }, { suction: [elbow] }),
  ],
  [
    'a suction with elements before its first pipe, and a pump between two lists',
    loopOf(
      { run: [elbow, list(sizes, 3)], outlet: end(2500) },
      { suction: [elbow, list(sizes, 1), { valve: 'ball' }] },
    ),
  ],
  [
    'nothing but fittings before the first split',
    loopOf(
      {
        run: [elbow],
        branches: [
          { run: [elbow, list(sizes, 3)], outlet: end(1500) },
          { run: [list([32, 50], 2)], outlet: end(900) },
        ],
      },
      { suction: [] },
    ),
  ],
  [
    'a tee with two sides, one without a pipe',
    loopOf({
      ...{ run: [list([40, 50, 63], 2)], split: 'tee-90' },
      branches: [
        { run: [list(sizes, 3)], outlet: end(1500) },
        { run: [list([25, 40], 1)], outlet: end(900) },
        { run: [elbow], outlet: end(700, { nozzleDiameter: 0.018 }) },
      ],
    }),
  ],
  [
    'open ends and splits without pipes of their own',
    loopOf({
      run: [list(sizes, 2)],
      branches: [
        {
          ...{ run: [], split: 'tee-90' },
          branches: [
            { run: [], outlet: end(800) },
            { run: [list([25, 32], 1)], outlet: end(900) },
          ],
        },
        { run: [pipe(32, 2)], outlet: end(1100) },
      ],
    }),
  ],
];

const requiredOf = ({ outlet: one, branches = [] }: Branch): number =>
  (one?.requiredFlow ?? 0) + branches.reduce((sum, child) => sum + requiredOf(child), 0);

interface Point {
  readonly head: number;
  readonly cost: number;
}

/** Every combination that can be built; the head is that of the solved network, throttled to the required flows. */
function pipeworkOf(loop: DesignLoop): readonly Point[] {
  const lists = listsOf(loop);
  const combinations = lists.reduce<readonly (readonly number[])[]>(
    (before, { pipes }) => before.flatMap((one) => pipes.map((_, place) => [...one, place])),
    [[]],
  );
  return combinations.flatMap((chosen) => {
    const sized = sizedLoop(loop, chosen);
    const model = compileLoop(sized);
    if (!model.ok || model.value.network === null) return [];
    const { network } = trimNetwork(model.value.network);
    const { head } = pipeworkSystem(network).stateAt(requiredOf(sized.discharge));
    const cost = lists.reduce(
      (sum, { pipes, length }, place) =>
        sum + length * (priceOfPipe(prices, pipes[chosen[place] ?? -1] ?? '') ?? Number.NaN),
      0,
    );
    return [{ head, cost }];
  });
}

/** Heads this near are one. */
const ROUNDING = 1e-9;

const cheapestOf = (points: readonly Point[], head: number): number =>
  Math.min(...points.filter((point) => point.head <= head * (1 + ROUNDING)).map(({ cost }) => cost));

describe('bores on either side of', () => {
  it.each(cases)('%s', (_, loop) => {
    const expected = pipeworkOf(loop);
    const strong = pumpOf({
      shutoff: 400,
      head: 300,
      power: 40_000,
      settings: { min: 100, max: 100, step: 1 },
    });
    const { frontier } = designsOf(loop, { candidates: [{ pump: fitted(strong), count: 1 }] });
    expect(frontier.length).toBeGreaterThan(2);
    for (const { head } of [...frontier, ...expected]) {
      expectClose(cheapestOf(frontier, head), cheapestOf(expected, head), { relative: ROUNDING });
    }
  });
});
