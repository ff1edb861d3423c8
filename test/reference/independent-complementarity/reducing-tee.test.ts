/** The laws of a 90 degree tee against the published coefficients, and a network with one. */
import { describe, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import { LH, loopOf, pipe, SEA, STATED } from './cases.ts';
import { systemOfLoop } from './duties.ts';
import { runDrop, type Side, sideDrop } from './tee.ts';

/** Velocity heads count as 1 at the whole flow, so that losses are coefficients on v_c. */
const sideAt = (ratio: number): Side => ({ whole: 1, own: ratio ** -4, ratio });

// K on v_c by Crane TP-410 (2009), diverging tee of 90 degrees, errata 2012; the last two are the equal tee's own law.
describe('coefficients on the whole velocity', () => {
  it.each([
    [0.5, 0.25, 2, 0.025],
    [0.5, 0.5, 5, 0.1],
    [0.75, 0.3, 1.08533, -0.072],
    [0.75, 0.7, 1.46459, 0.0588],
    [0.9, 0.2, 1.03051, -0.048],
    [0.9, 0.6, 1.29039, 0.0216],
    [1, 0.3, 1.054, 0],
    [1, 0.6, 1.216, 0],
  ])('of bores %d with the share %d are %d and %d', (ratio, share, side, run) => {
    const flows = { side: share, whole: 1 };
    expectClose(sideDrop(sideAt(ratio), flows), side, { relative: 5e-6 });
    expectClose(runDrop({ whole: 1, widest: ratio }, flows), run, { relative: 1e-12, absolute: 1e-12 });
  });

  it('of a side that runs back are those of the equal tee', () => {
    expectClose(sideDrop(sideAt(0.5), { side: -0.5, whole: 1 }), -0.6 * 4, { relative: 1e-12 });
  });

  it('have no step where the leg begins to bring water', () => {
    for (const ratio of [0.5, 0.75, 0.9, 1]) {
      const nearly = sideDrop(sideAt(ratio), { side: 0.5, whole: 1e-9 });
      expectClose(sideDrop(sideAt(ratio), { side: 0.5, whole: 0 }), nearly, { relative: 1e-12 });
    }
  });
});

// Figures of a separate calculation, seawater of 25 degC.
describe('a side of half the bore', () => {
  const loop = loopOf({
    water: SEA,
    suction: [],
    discharge: {
      run: [pipe(50, 1)],
      split: 'tee-90',
      branches: [
        { run: [pipe(50, 1)], outlet: { name: 'on', nozzleDiameter: 0.022 } },
        { run: [pipe(25, 1)], outlet: { name: 'side' } },
      ],
    },
  });
  const system = systemOfLoop(loop);
  const solution = [...system.solution(8000 * LH).values()];

  it.each([
    ['head', system.head(8000 * LH), 0.62177],
    ['on', (system.outlets(8000 * LH)[0]?.flow ?? Number.NaN) / LH, 4619.02],
    ['side', (system.outlets(8000 * LH)[1]?.flow ?? Number.NaN) / LH, 3380.98],
    ['head at the node', solution[0]?.end ?? Number.NaN, 0.595441],
    ['head past the tee, on', solution[1]?.start ?? Number.NaN, 0.595441 - 0.00466583],
    ['head past the tee, side', solution[2]?.start ?? Number.NaN, 0.595441 - 0.251941],
  ])('has the stated %s', (_, actual, expected) => {
    expectClose(actual, expected, STATED);
  });
});
