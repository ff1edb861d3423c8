/** The notes about steps of bore, against the figures of worked runs. */
import { describe, expect, it } from 'vitest';
import { boreChangeCautions } from '../../../models/cautions/bore-changes.ts';
import type { PipeworkLoop, RunElement } from '../../../models/loop/loop.ts';
import { expectClose } from '../../expect-close.ts';
import { STEPPED_RUNS } from '../../reference/steps-of-bore.ts';
import { LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe } from '../example-loops.ts';

function given(loop: PipeworkLoop, flow: number, deadHead = false) {
  const model = modelOf(loop);
  return boreChangeCautions(model, { state: model.system.stateAt(flow), deadHead });
}

const bare = (run: readonly RunElement[], facts: Partial<PipeworkLoop> = {}): PipeworkLoop =>
  loopOf({ run, outlet: { name: 'end', lossCoefficient: 0 } }, { suction: [], ...facts });

describe.each(STEPPED_RUNS)('a run of %# ($source)', ({ water, run, flow, steps, tolerance }) => {
  it('has a note at the later pipe of each step, with the head lost and K', () => {
    const notes = given(bare(run, { water }), flow * LITRE_PER_HOUR);
    expect(notes).toHaveLength(steps.length);
    for (const { later, head, lossCoefficient } of steps) {
      const pointer = `/discharge/run/${later}`;
      const note = notes.find((one) => one.pointer === pointer);
      expect(note).toMatchObject({ code: 'bore-change-assumed', severity: 'note', quantity: 'head' });
      expect(note?.limit).toBeUndefined();
      expectClose(note?.value ?? Number.NaN, head, { relative: tolerance });
      expect(note?.detail).toContain(`(${pointer}: K ${lossCoefficient.toPrecision(3)})`);
    }
  });

  it('has none where steps are ignored, and where the pump moves nothing', () => {
    const metres = flow * LITRE_PER_HOUR;
    expect(given(bare(run, { water, boreChanges: 'ignored' }), metres)).toEqual([]);
    expect(given(bare(run, { water }), metres, true)).toEqual([]);
  });
});

describe('the notes about steps', () => {
  it('are those of the five that lose most, of suction and branches, that which loses most first', () => {
    const widths = [0.05, 0.045, 0.04, 0.035, 0.03, 0.025];
    const loop = loopOf(
      { run: widths.map((bore) => pipe(bore, 1)), outlet: { name: 'end' } },
      { suction: [pipe(0.05, 1), pipe(0.02, 1)] },
    );
    const notes = given(loop, 1e-3);
    expect(notes.map(({ pointer }) => pointer)).toEqual([
      '/suction/1',
      ...[5, 4, 3, 2].map((place) => `/discharge/run/${place}`),
    ]);
  });

  it('state what is lost where water runs backwards as well', () => {
    const loop = loopOf({
      run: [pipe(0.05, 1)],
      branches: [
        outlet('low', { staticHead: -1 }),
        outlet('high', { staticHead: 2, exit: 'submerged' }, [pipe(0.02, 1), pipe(0.04, 1)]),
      ],
    });
    const [note] = given(loop, 1e-4);
    expect(note?.pointer).toBe('/discharge/branches/1/run/1');
    expect(note?.value).toBeGreaterThan(0);
  });
});
