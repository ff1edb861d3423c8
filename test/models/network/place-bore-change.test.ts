/** Reducers and enlargements between the pipes of a run. */
import { describe, expect, it } from 'vitest';
import { findBoreChange } from '../../../models/components/bore-change.ts';
import type { RunElement } from '../../../models/loop/loop.ts';
import { neighbours, placeBoreChange } from '../../../models/network/place-bore-change.ts';
import { expectClose } from '../../expect-close.ts';
import { pipe } from '../example-loops.ts';

const ELBOW: RunElement = { fitting: 'elbow-90' };
const PATH = ['discharge', 'run', 2];

function placed(
  name: string,
  around: { readonly before: number | null; readonly after: number | null },
  facts: { readonly count?: number; readonly diameter?: number } = {},
) {
  const change = findBoreChange(name);
  if (change === undefined) throw new Error(`there is no ${name}`);
  return placeBoreChange(change, { fitting: name, ...facts }, { path: PATH, around });
}

const failureOf = (...asked: Parameters<typeof placed>) => {
  const result = placed(...asked);
  return result.ok ? null : result.failure;
};

describe('the bores around an element', () => {
  const run = [pipe(0.05, 1), ELBOW, pipe(0.04, 1), ELBOW, pipe(0.03, 1), pipe(0.02, 1)];
  const ends = { upstream: 0.06, downstream: 0.01 };

  it('are of the nearest pipes before and after it in its run', () => {
    expect(neighbours(run, 3, ends)).toEqual({ before: 0.04, after: 0.03 });
  });

  it('do not count a pipe as its own neighbour', () => {
    expect(neighbours(run, 2, ends)).toEqual({ before: 0.05, after: 0.03 });
  });

  it('are else of the pipes beyond the run', () => {
    expect(neighbours(run, 0, ends)).toEqual({ before: 0.06, after: 0.04 });
    expect(neighbours(run, 5, ends)).toEqual({ before: 0.03, after: 0.01 });
    expect(neighbours([ELBOW], 0, { upstream: null, downstream: null })).toEqual({
      before: null,
      after: null,
    });
  });
});

describe('a reducer or enlargement', () => {
  it.each([
    ['reducer', { before: 0.05, after: 0.03 }],
    ['enlargement', { before: 0.03, after: 0.05 }],
  ])('%s acts on the smaller bore', (name, around) => {
    const result = placed(name, around);
    if (!result.ok) throw new Error(result.failure.code);
    expect(result.value).toMatchObject({ kind: 'fitting', role: 'bore-change', name, bore: 0.03 });
    // Borda and Carnot, (1 - b^2)^2; a sharp contraction, half of 1 - b^2 (Crane TP-410), both on the smaller bore.
    const areas = 1 - (0.03 / 0.05) ** 2;
    const loss = name === 'enlargement' ? areas ** 2 : 0.5 * areas;
    const velocity = 1e-3 / ((Math.PI / 4) * 0.03 ** 2);
    expectClose(result.value.resistance.lossAt(1e-3).head, (loss * velocity ** 2) / (2 * 9.80665), {
      relative: 1e-12,
    });
  });

  it('needs a known bore on either side', () => {
    expect(failureOf('reducer', { before: null, after: 0.03 })).toEqual({
      ...{ code: 'bores-not-known', path: PATH, missing: 'before' },
    });
    expect(failureOf('reducer', { before: 0.05, after: null })).toEqual({
      ...{ code: 'bores-not-known', path: PATH, missing: 'after' },
    });
  });

  it.each([
    ['reducer', 0.03, 0.05],
    ['enlargement', 0.05, 0.03],
    ['reducer', 0.04, 0.04],
    ['enlargement', 0.04, 0.04],
  ])('%s does not fit between bores of %f and %f m', (name, before, after) => {
    const towards = name === 'reducer' ? 'narrower' : 'wider';
    expect(failureOf(name, { before, after })).toEqual({
      ...{ code: 'bores-do-not-fit', path: PATH, towards, before, after },
    });
  });

  it('states neither a diameter nor a count of several', () => {
    const around = { before: 0.05, after: 0.03 };
    expect(failureOf('reducer', around, { diameter: 0.03 })).toEqual({
      ...{ code: 'bore-change-overstated', path: [...PATH, 'diameter'] },
    });
    expect(failureOf('reducer', around, { count: 2 })).toEqual({
      ...{ code: 'bore-change-overstated', path: [...PATH, 'count'] },
    });
    expect(failureOf('reducer', around, { count: 1 })).toBeNull();
  });
});
