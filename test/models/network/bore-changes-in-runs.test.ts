/** Which bores a reducer or enlargement of a run joins. */
import { describe, expect, it } from 'vitest';
import type { PipeworkLoop, RunElement } from '../../../models/loop/loop.ts';
import { compileLoop } from '../../../models/network/compiled-loop.ts';
import { GRAVITY } from '../../../models/physics/gravity.ts';
import { expectClose } from '../../expect-close.ts';
import { loopOf, modelOf, outlet, pipe } from '../example-loops.ts';

const REDUCER: RunElement = { fitting: 'reducer' };
const ENLARGEMENT: RunElement = { fitting: 'enlargement' };
const FLOW = 1e-3;

/** K 0.5 (1 - b^2) on the smaller bore, as head at FLOW. */
const contraction = (larger: number, smaller: number): number => {
  const velocity = FLOW / ((Math.PI / 4) * smaller ** 2);
  return (0.5 * (1 - (smaller / larger) ** 2) * velocity ** 2) / (2 * GRAVITY);
};

/** What the one reducer of a loop adds to the head needed. */
function added(loop: (element: readonly RunElement[]) => PipeworkLoop): number {
  const headOf = (one: PipeworkLoop) => modelOf({ ...one, boreChanges: 'ignored' }).system.stateAt(FLOW).head;
  return headOf(loop([REDUCER])) - headOf(loop([]));
}

const jet = (run: readonly RunElement[] = []) => outlet('jet', {}, run);

describe('a reducer joins', () => {
  it('the pipes before and after it in its run', () => {
    const head = added((one) => loopOf(jet([pipe(0.05, 1), ...one, pipe(0.03, 1)])));
    expectClose(head, contraction(0.05, 0.03), { relative: 1e-9 });
  });

  it('the nearest of them, whatever lies between', () => {
    const head = added((one) =>
      loopOf(
        jet([pipe(0.08, 0), pipe(0.05, 1), { fitting: 'elbow-90' }, ...one, pipe(0.03, 1), pipe(0.02, 0)]),
      ),
    );
    expectClose(head, contraction(0.05, 0.03), { relative: 1e-9 });
  });

  it('the nearest pipe upstream to that after it', () => {
    const branch = (one: readonly RunElement[]) => ({
      run: [pipe(0.05, 1)],
      branches: [jet([...one, pipe(0.03, 1)])],
    });
    expectClose(
      added((one) => loopOf(branch(one))),
      contraction(0.05, 0.03),
      { relative: 1e-9 },
    );
  });

  it('the last suction pipe to the first of the discharge', () => {
    const head = added((one) => loopOf(jet([...one, pipe(0.03, 1)]), { suction: [pipe(0.06, 1)] }));
    expectClose(head, contraction(0.06, 0.03), { relative: 1e-9 });
  });

  it('the pipe before it to the first pipe of the branches beyond', () => {
    const head = added((one) => loopOf({ run: [pipe(0.05, 1), ...one], branches: [jet([pipe(0.03, 1)])] }));
    expectClose(head, contraction(0.05, 0.03), { relative: 1e-9 });
  });

  it('with the friction multiplier upon it', () => {
    const head = added((one) =>
      loopOf(jet([pipe(0.05, 1), ...one, pipe(0.03, 1)]), { frictionMultiplier: 2 }),
    );
    expectClose(head, 2 * contraction(0.05, 0.03), { relative: 1e-9 });
  });
});

const REDUCER_AT = ['discharge', 'run', 1];

describe('a change of bore is refused', () => {
  it.each<[string, PipeworkLoop, object]>([
    [
      'without a pipe before it',
      loopOf(jet([REDUCER, pipe(0.03, 1)]), { suction: [] }),
      { code: 'bores-not-known', missing: 'before', path: ['discharge', 'run', 0] },
    ],
    [
      'without a pipe after it',
      loopOf(jet([pipe(0.05, 1), REDUCER])),
      { code: 'bores-not-known', missing: 'after', path: REDUCER_AT },
    ],
    [
      'between equal bores',
      loopOf(jet([pipe(0.05, 1), REDUCER, pipe(0.05, 1)])),
      { code: 'bores-do-not-fit', towards: 'narrower', before: 0.05, after: 0.05, path: REDUCER_AT },
    ],
    [
      'where a reducer would widen',
      loopOf(jet([pipe(0.03, 1), REDUCER, pipe(0.05, 1)])),
      { code: 'bores-do-not-fit', towards: 'narrower', before: 0.03, after: 0.05, path: REDUCER_AT },
    ],
    [
      'where an enlargement would narrow',
      loopOf(jet([pipe(0.05, 1), ENLARGEMENT, pipe(0.03, 1)])),
      { code: 'bores-do-not-fit', towards: 'wider', before: 0.05, after: 0.03, path: REDUCER_AT },
    ],
    [
      'with a diameter of its own',
      loopOf(jet([pipe(0.05, 1), { fitting: 'reducer', diameter: 0.03 }, pipe(0.03, 1)])),
      { code: 'bore-change-overstated', path: [...REDUCER_AT, 'diameter'] },
    ],
    [
      'more than once in a place',
      loopOf(jet([pipe(0.05, 1), { fitting: 'reducer', count: 2 }, pipe(0.03, 1)])),
      { code: 'bore-change-overstated', path: [...REDUCER_AT, 'count'] },
    ],
  ])('%s', (_, loop, failure) => {
    expect(compileLoop(loop)).toEqual({ ok: false, failure });
  });
});
