/** Which branches run, and which way, decided at states made by hand. */
import { describe, expect, it } from 'vitest';
import { broughtToRest, closedAgainst, nextPassages, type Passage } from '../../../models/network/passage.ts';
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

function next(passage: Passage, { flow, driving = 0, combined = 2e-3 }: At, rules = RULES) {
  const state = {
    flow: Float64Array.of(combined, combined - flow, flow, 0),
    head: Float64Array.of(1, 0, 1 - driving, 0),
  };
  // The second side branch has what it asks for: it runs outward with no flow.
  const passages: readonly Passage[] = ['outward', 'outward', passage, 'outward'];
  return nextPassages(TREE, passages, { ...rules, state })?.[2] ?? passage;
}

describe('a side branch', () => {
  it.each<[Passage, string, At, Passage]>([
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
  ])('that runs %s, %s, is then %4$s', (passage, _, at, expected) => {
    expect(next(passage, at)).toBe(expected);
  });

  it('asks for nothing where all agree', () => {
    const state = { flow: Float64Array.of(2e-3, 1e-3, 5e-4, 5e-4), head: new Float64Array(4) };
    expect(
      nextPassages(
        TREE,
        NETWORK.branches.map(() => 'outward'),
        { ...RULES, state },
      ),
    ).toBeNull();
  });

  it('changes with others, or alone where one changes at a time', () => {
    const state = { flow: Float64Array.of(2e-3, 2.2e-3, -1e-4, -1e-4), head: new Float64Array(4) };
    const all = NETWORK.branches.map((): Passage => 'outward');
    expect(nextPassages(TREE, all, { ...RULES, state })).toEqual([
      'outward',
      'outward',
      'resting',
      'resting',
    ]);
    expect(nextPassages(TREE, all, { ...RULES, state, oneAtATime: true })).toEqual([
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
    const passages: readonly Passage[] = ['outward', 'outward', 'outward'];
    expect(nextPassages(treeOf(closed), passages, { ...RULES, state })).toBeNull();
  });
});

describe('a branch that water passes one way only', () => {
  const tree = treeOf(
    networkOf(
      loopOf({
        run: [pipe(0.03, 1)],
        branches: [
          outlet('open'),
          outlet('valve', {}, [{ valve: 'check-swing' }]),
          outlet('air', { exit: 'free' }),
        ],
      }),
    ),
  );
  const ask = (passage: Passage, { flow, driving = 0 }: At): Passage => {
    const state = {
      flow: Float64Array.of(2e-3, 2e-3 - flow, flow, 0),
      head: Float64Array.of(1, 0, 1 - driving, 0),
    };
    const passages: readonly Passage[] = ['outward', 'outward', passage, 'outward'];
    return nextPassages(tree, passages, { ...RULES, state })?.[2] ?? passage;
  };

  it.each<[Passage, string, At, Passage]>([
    ['outward', 'with a flow outward', { flow: 1e-4 }, 'outward'],
    ['outward', 'with no flow', { flow: 0 }, 'outward'],
    ['outward', 'with the least flow inward', { flow: -1e-18 }, 'resting'],
    ['resting', 'driven by more than rounding', { flow: 0, driving: 1e-8 }, 'outward'],
    ['resting', 'driven by rounding', { flow: 0, driving: 1e-10 }, 'resting'],
    ['resting', 'driven backwards', { flow: 0, driving: -1 }, 'resting'],
  ])('that runs %s, %s, is then %4$s', (passage, _, at, expected) => {
    expect(ask(passage, at)).toBe(expected);
  });

  it('rests where a state that does not settle has it run backwards, but never as the last way', () => {
    const all: readonly Passage[] = ['outward', 'outward', 'outward', 'outward'];
    const state = { flow: Float64Array.of(1, 3, -1, -1), head: new Float64Array(4) };
    expect(closedAgainst(tree, all, state)).toEqual(['outward', 'outward', 'resting', 'resting']);
    const still = { ...state, flow: Float64Array.of(1, 0, 0.5, 0.5) };
    expect(closedAgainst(tree, all, still)).toBeNull();
    const last = treeOf(
      networkOf(
        loopOf({
          run: [pipe(0.03, 1)],
          branches: [
            outlet('closed', {}, [{ valve: { kv: 1 }, opening: 0 }]),
            outlet('valve', {}, [{ valve: 'check-swing' }]),
          ],
        }),
      ),
    );
    const backwards = { flow: Float64Array.of(-1, 0, -1), head: new Float64Array(3) };
    expect(closedAgainst(last, all, backwards)).toBeNull();
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
    const passages: readonly Passage[] = [
      'outward',
      'outward',
      'outward',
      'outward',
      'resting',
      'outward',
      'outward',
    ];
    const { flow } = broughtToRest(treeOf(network), passages, state);
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
    const passages: readonly Passage[] = ['outward', 'resting', 'resting', 'resting'];
    expect(() => broughtToRest(TREE, passages, state)).toThrow('no free branch');
  });
});
