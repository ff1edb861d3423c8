/** Steps of bore that no element is entered for. */
import { describe, expect, it } from 'vitest';
import type { PipeworkLoop, RunElement } from '../../../models/loop/loop.ts';
import { stepsOfBore } from '../../../models/network/steps-of-bore.ts';
import { expectClose } from '../../expect-close.ts';
import { PUBLISHED_STEP, STEPPED_RUNS } from '../../reference/steps-of-bore.ts';
import { LITRE_PER_HOUR, loopOf, modelOf, networkOf, pipe } from '../example-loops.ts';

const bare = (run: readonly RunElement[], facts: Partial<PipeworkLoop> = {}): PipeworkLoop =>
  loopOf({ run, outlet: { name: 'end', lossCoefficient: 0 } }, { suction: [], ...facts });

const headOf = (loop: PipeworkLoop, flow: number): number => modelOf(loop).system.stateAt(flow).head;

const chargedIn = (loop: PipeworkLoop) =>
  (networkOf(loop).branches[0]?.elements ?? []).filter(({ kind }) => kind === 'bore-change');

describe.each(STEPPED_RUNS)('a run of %# ($source)', ({ water, run, flow: litres, ...row }) => {
  const flow = litres * LITRE_PER_HOUR;
  const relative = { relative: row.tolerance };

  it('is charged for each step at the place of the later pipe', () => {
    const charged = chargedIn(bare(run, { water }));
    expect(charged.map(({ path }) => path)).toEqual(
      row.steps.map(({ later }) => ['discharge', 'run', later]),
    );
    for (const [place, { lossCoefficient, head }] of row.steps.entries()) {
      expectClose(charged[place]?.lossCoefficient ?? Number.NaN, lossCoefficient, relative);
      expectClose(charged[place]?.resistance.lossAt(flow).head ?? Number.NaN, head, relative);
      expectClose(charged[place]?.resistance.lossAt(-flow).head ?? Number.NaN, -head, relative);
    }
  });

  it('needs the head that was worked out, and less where steps are ignored', () => {
    expectClose(headOf(bare(run, { water }), flow), row.head, relative);
    expectClose(headOf(bare(run, { water, boreChanges: 'ignored' }), flow), row.ignored, relative);
  });

  it('needs the same where the steps are entered', () => {
    const entered = run.flatMap((element, index): readonly RunElement[] => {
      const step = row.steps.find(({ later }) => later === index);
      const before = run.slice(0, index).findLast((one) => 'pipe' in one);
      if (step === undefined || before === undefined || !('pipe' in before) || !('pipe' in element))
        return [element];
      const [from, to] = [before.pipe, element.pipe].map((one) =>
        typeof one === 'string' ? Number.NaN : one.insideDiameter,
      );
      return [{ fitting: (from ?? 0) > (to ?? 0) ? 'reducer' : 'enlargement' }, element];
    });
    expectClose(headOf(bare(entered, { water }), flow), row.head, relative);
    expect(chargedIn(bare(entered, { water }))).toEqual([]);
  });
});

describe('a step of bore', () => {
  const [wide, narrow] = [pipe(0.05, 1), pipe(0.03, 1)];

  it(`has the published coefficient (${PUBLISHED_STEP.source})`, () => {
    const [step] = chargedIn(bare([pipe(PUBLISHED_STEP.before, 1), pipe(PUBLISHED_STEP.after, 1)]));
    expectClose(step?.lossCoefficient ?? Number.NaN, PUBLISHED_STEP.lossCoefficient, {
      relative: PUBLISHED_STEP.tolerance,
    });
  });

  it.each<[string, RunElement]>([
    ['a reducer', { fitting: 'reducer' }],
    ['a cone', { fitting: 'reducer-taper-30' }],
    ['a coefficient that says so', { lossCoefficient: 0.1, boreChange: true }],
    ['a loss that says so', { loss: { head: 0.1, flow: 1e-3 }, boreChange: true }],
  ])('is not charged where %s lies between', (_, element) => {
    expect(stepsOfBore([wide, element, narrow])).toEqual([]);
    expect(stepsOfBore([wide, element, narrow, wide])).toHaveLength(1);
  });

  it.each<[string, RunElement]>([
    ['an elbow', { fitting: 'elbow-90' }],
    ['a valve', { valve: 'ball' }],
    ['a coefficient', { lossCoefficient: 0.1 }],
    ['a coefficient that denies it', { lossCoefficient: 0.1, boreChange: false }],
    ['an element with a diameter of its own', { fitting: 'elbow-45', diameter: 0.02 }],
  ])('is charged although %s lies between', (_, element) => {
    expect(stepsOfBore([wide, element, narrow])).toEqual([{ later: 2, before: 0.05, after: 0.03 }]);
  });

  it('is none between bores that differ by rounding', () => {
    expect(stepsOfBore([wide, pipe(0.05 * (1 + 0.9e-9), 1)])).toEqual([]);
    expect(stepsOfBore([wide, pipe(0.05 * (1 + 1.1e-9), 1)])).toHaveLength(1);
  });

  it('is none across the pump, at a node or into a nozzle', () => {
    const loop = loopOf(
      { run: [wide], branches: [{ run: [narrow], outlet: { name: 'end', nozzleDiameter: 0.01 } }] },
      { suction: [pipe(0.06, 1)] },
    );
    const { suction, branches } = networkOf(loop);
    const kinds = [...suction, ...branches.flatMap(({ elements }) => elements)].map(({ kind }) => kind);
    expect(kinds).toEqual(['intake', 'pipe', 'pipe', 'pipe', 'outlet']);
  });

  it('of the suction is charged there', () => {
    const { suction } = networkOf(bare([wide], { suction: [narrow, wide] }));
    expect(suction.map(({ kind, path }) => [kind, path.join('/')])).toEqual([
      ['intake', 'intake'],
      ['pipe', 'suction/0'],
      ['bore-change', 'suction/1'],
      ['pipe', 'suction/1'],
    ]);
  });

  it('is multiplied like friction', () => {
    const [once, twice] = [1, 2].map((frictionMultiplier) =>
      chargedIn(bare([wide, narrow], { frictionMultiplier })).map(
        ({ resistance }) => resistance.lossAt(1e-3).head,
      ),
    );
    expectClose(twice?.[0] ?? Number.NaN, 2 * (once?.[0] ?? Number.NaN), { relative: 1e-12 });
  });
});
