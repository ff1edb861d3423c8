/** Which way a side branch of a tee runs, decided at states made by hand. */
import { describe, expect, it } from 'vitest';
import {
  broughtToRest,
  nextDirections,
  type SideDirection,
} from '../../../models/network/side-directions.ts';
import { treeOf } from '../../../models/network/tree.ts';
import { loopOf, networkOf, outlet, pipe } from '../example-loops.ts';

const NETWORK = networkOf(
  loopOf({
    run: [pipe(0.03, 1)],
    split: 'tee-90',
    branches: [outlet('straight'), outlet('side'), outlet('other side')],
  }),
);
const TREE = treeOf(NETWORK);
const RULES = { oneAtATime: false, noHead: 1e-9 };
/** Of 2e-3 m3/s in the leg of 30 mm. */
const VELOCITY_HEAD = (2e-3 / ((Math.PI / 4) * 0.03 ** 2)) ** 2 / (2 * 9.80665);

interface At {
  /** Flow of the first side branch [m3/s], and the head that drives it [m]. */
  readonly flow: number;
  readonly driving?: number;
  readonly combined?: number;
}

function next(direction: SideDirection, { flow, driving = 0, combined = 2e-3 }: At, rules = RULES) {
  const state = {
    flow: Float64Array.of(combined, combined - flow, flow, 0),
    head: Float64Array.of(1, 0, 1 - driving, 0),
  };
  // The second side branch has what it asks for: it runs outward with no flow.
  return nextDirections(TREE, ['outward', 'outward', direction, 'outward'], state, rules)?.[2] ?? direction;
}

describe('a side branch', () => {
  it.each<[SideDirection, string, At, SideDirection]>([
    ['outward', 'with a flow outward', { flow: 1e-4 }, 'outward'],
    ['outward', 'with a flow inward', { flow: -1e-4 }, 'resting'],
    ['outward', 'with a flow that is rounding', { flow: -1e-14 }, 'outward'],
    ['outward', 'with no velocity head to hold it', { flow: -1e-4, combined: 0 }, 'outward'],
    ['inward', 'with a flow inward', { flow: -1e-4 }, 'inward'],
    ['inward', 'with a flow outward', { flow: 1e-4 }, 'resting'],
    ['inward', 'with a flow that is rounding', { flow: 1e-14 }, 'inward'],
    [
      'resting',
      'driven by more than the velocity head',
      { flow: 0, driving: 1.01 * VELOCITY_HEAD },
      'outward',
    ],
    ['resting', 'driven by less', { flow: 0, driving: 0.99 * VELOCITY_HEAD }, 'resting'],
    ['resting', 'driven by nothing', { flow: 0, driving: 0 }, 'resting'],
    ['resting', 'driven backwards', { flow: 0, driving: -0.01 }, 'inward'],
    ['resting', 'driven backwards by rounding', { flow: 0, driving: -1e-10 }, 'resting'],
  ])('that runs %s, %s, is then %4$s', (direction, _, at, expected) => {
    expect(next(direction, at)).toBe(expected);
  });

  it('asks for nothing where all agree', () => {
    const state = { flow: Float64Array.of(2e-3, 1e-3, 5e-4, 5e-4), head: new Float64Array(4) };
    expect(
      nextDirections(
        TREE,
        NETWORK.branches.map(() => 'outward'),
        state,
        RULES,
      ),
    ).toBeNull();
  });

  it('changes with others, or alone where one changes at a time', () => {
    const state = { flow: Float64Array.of(2e-3, 2.2e-3, -1e-4, -1e-4), head: new Float64Array(4) };
    const all = NETWORK.branches.map((): SideDirection => 'outward');
    expect(nextDirections(TREE, all, state, RULES)).toEqual(['outward', 'outward', 'resting', 'resting']);
    expect(nextDirections(TREE, all, state, { ...RULES, oneAtATime: true })).toEqual([
      ...['outward', 'outward', 'resting', 'outward'],
    ]);
  });

  it('never rests where it is the last way that is open', () => {
    const closed = networkOf(
      loopOf({
        run: [pipe(0.03, 1)],
        split: 'tee-90',
        branches: [outlet('straight', {}, [{ valve: { kv: 1 }, opening: 0 }]), outlet('side')],
      }),
    );
    const state = { flow: Float64Array.of(2e-3, 0, -2e-3), head: new Float64Array(3) };
    expect(nextDirections(treeOf(closed), ['outward', 'outward', 'outward'], state, RULES)).toBeNull();
  });
});

describe('a state brought to rest', () => {
  it('hands the flow of a branch to a neighbour, down to its outlet', () => {
    const network = networkOf(
      loopOf({
        run: [],
        split: 'tee-90',
        branches: [
          { run: [pipe(0.03, 1)], branches: [outlet('a'), outlet('b')] },
          { run: [pipe(0.03, 1)], branches: [outlet('c'), outlet('d')] },
        ],
      }),
    );
    const state = { flow: Float64Array.of(3, 2, 1.5, 0.5, 1, 0.75, 0.25), head: new Float64Array(7) };
    const directions: readonly SideDirection[] = [
      'outward',
      'outward',
      'outward',
      'outward',
      'resting',
      'outward',
      'outward',
    ];
    const { flow } = broughtToRest(treeOf(network), directions, state);
    expect([...flow]).toEqual([3, 3, 2.5, 0.5, 0, -0.25, 0.25]);
    expect([...state.flow]).toEqual([3, 2, 1.5, 0.5, 1, 0.75, 0.25]);
  });

  it('leaves a state alone in which nothing has to rest', () => {
    const state = { flow: Float64Array.of(2e-3, 1e-3, 5e-4, 5e-4), head: Float64Array.of(1, 0, 0, 0) };
    expect(
      broughtToRest(
        TREE,
        NETWORK.branches.map(() => 'outward'),
        state,
      ),
    ).toEqual(state);
  });

  it('throws where no neighbour is open, which the rules never ask for', () => {
    const state = { flow: Float64Array.of(2e-3, 0, 2e-3, 0), head: new Float64Array(4) };
    const directions: readonly SideDirection[] = ['outward', 'resting', 'resting', 'resting'];
    expect(() => broughtToRest(TREE, directions, state)).toThrow('no free branch');
  });
});
