/** Each kind of element placed in a run: its resistance by hand, its name, its role, what can be wrong with it. */
import { describe, expect, it } from 'vitest';
import { findPipe } from '../../../models/components/pipe-sizes.ts';
import type { RunElement } from '../../../models/loop/loop.ts';
import { placeRun } from '../../../models/network/place-elements.ts';
import { expectClose } from '../../expect-close.ts';
import { pipe } from '../example-loops.ts';

const FLOW = 1e-3;
const GRAVITY = 9.80665;
const VISCOSITY = 1e-6;

interface Ends {
  readonly upstream?: number | null;
  readonly downstream?: number | null;
  readonly multiplier?: number;
}

const placed = (
  run: readonly RunElement[],
  { upstream = 0.04, downstream = null, multiplier = 1 }: Ends = {},
) =>
  placeRun({
    ...{ run, path: ['suction'], upstream, downstream, multiplier },
    ...{ kinematicViscosity: VISCOSITY, boreChanges: 'abrupt' },
  });

function elementOf(element: RunElement, ends?: Ends) {
  const run = placed([element], ends);
  if (!run.ok) throw new Error(run.failure.code);
  const [only] = run.value.elements;
  if (only === undefined) throw new Error('the element has no resistance');
  return only;
}

const failureOf = (element: RunElement, ends?: Ends) => {
  const run = placed([pipe(0.04, 1), element], ends);
  return run.ok ? null : run.failure;
};

const velocityHead = (bore: number): number => (FLOW / ((Math.PI / 4) * bore ** 2)) ** 2 / (2 * GRAVITY);

describe('an element of a run', () => {
  it.each<[string, RunElement, object, number]>([
    [
      'a loss coefficient',
      { lossCoefficient: 3 },
      { kind: 'loss', role: null, bore: 0.04 },
      3 * velocityHead(0.04),
    ],
    [
      'a loss coefficient on its own bore',
      { lossCoefficient: 3, diameter: 0.02 },
      { kind: 'loss', name: null, bore: 0.02 },
      3 * velocityHead(0.02),
    ],
    [
      'a head at a flow',
      { loss: { head: 2, flow: 2e-3 } },
      { kind: 'loss', name: null, role: null, bore: null },
      2 / 4,
    ],
    [
      'a union',
      { fitting: 'union' },
      { kind: 'fitting', name: 'union', role: 'union', bore: 0.04 },
      0.04 * velocityHead(0.04),
    ],
    [
      'three unions',
      { fitting: 'union', count: 3, diameter: 0.05 },
      { kind: 'fitting', bore: 0.05 },
      3 * 0.04 * velocityHead(0.05),
    ],
    [
      'a valve of Kv 10 m3/h at 1 bar',
      { valve: { kv: 10 } },
      { kind: 'valve', name: 'kv', role: 'valve', bore: null },
      (3.6 / 10) ** 2 * (1e5 / (1000 * GRAVITY)),
    ],
    [
      'a valve of Cv 11.5609923',
      { valve: { cv: 11.5609923 } },
      { kind: 'valve', name: 'cv', role: 'valve', bore: null },
      (3.6 / 10) ** 2 * (1e5 / (1000 * GRAVITY)),
    ],
  ])('%s loses what it states', (_, element, facts, head) => {
    const one = elementOf(element);
    expect(one).toMatchObject({ path: ['suction', 0], ...facts });
    expectClose(one.resistance.lossAt(FLOW).head, head, { relative: 1e-9 });
  });

  it('is a pipe of a standard size, named by it', () => {
    expect(elementOf({ pipe: 'pn10 63', length: 1 })).toMatchObject({
      ...{ kind: 'pipe', name: 'pn10 63', role: 'pipe', bore: findPipe('pn10 63')?.insideDiameter },
    });
    expect(elementOf(pipe(0.03, 1))).toMatchObject({ kind: 'pipe', name: null, role: 'pipe', bore: 0.03 });
  });

  it('is an equivalent length, which loses what as long a pipe of its bore does', () => {
    const head = (element: RunElement) => elementOf(element).resistance.lossAt(FLOW).head;
    expectClose(head({ equivalentLength: 2 }), head(pipe(0.04, 2)), { relative: 1e-12 });
    expectClose(head({ equivalentLength: 2, diameter: 0.03 }), head(pipe(0.03, 2)), { relative: 1e-12 });
    const rough = { insideDiameter: 0.04, roughness: 1e-4 };
    expectClose(head({ equivalentLength: 2, roughness: 1e-4 }), head({ pipe: rough, length: 2 }), {
      relative: 1e-12,
    });
    expect(head({ equivalentLength: 2, roughness: 1e-4 })).toBeGreaterThan(head({ equivalentLength: 2 }));
  });

  it('is a valve that is part open, and knows its opening for a loss', () => {
    const half = elementOf({ valve: 'gate', opening: 50 });
    const { head } = half.resistance.lossAt(FLOW);
    expect(head).toBeGreaterThan(elementOf({ valve: 'gate' }).resistance.lossAt(FLOW).head);
    expectClose(half.openingFor?.({ head, flow: FLOW }) ?? Number.NaN, 50, { relative: 1e-9 });
    expect(half).toMatchObject({ kind: 'valve', name: 'gate', role: 'valve', bore: 0.04 });
    expect(elementOf({ valve: 'check-swing', diameter: 0.03 })).toMatchObject({
      ...{ role: 'check-valve', bore: 0.03 },
    });
  });

  it('loses times the multiplier, a valve too, whose opening is then that for the entered table', () => {
    for (const element of [{ fitting: 'union' }, { valve: { kv: 10 } }, pipe(0.03, 1)] as const) {
      const once = elementOf(element).resistance.lossAt(FLOW).head;
      const twice = elementOf(element, { multiplier: 2 }).resistance.lossAt(FLOW).head;
      expectClose(twice, 2 * once, { relative: 1e-12 });
    }
    const half = elementOf({ valve: 'gate', opening: 50 }, { multiplier: 2 });
    const { head } = half.resistance.lossAt(FLOW);
    expectClose(half.openingFor?.({ head, flow: FLOW }) ?? Number.NaN, 50, { relative: 1e-9 });
  });
});

describe('a run', () => {
  it('is shut by a closed valve, which has no resistance', () => {
    const run = placed([pipe(0.04, 1), { valve: 'ball', opening: 0 }, { fitting: 'union' }]);
    if (!run.ok) throw new Error(run.failure.code);
    expect(run.value.shut).toBe(true);
    expect(run.value.elements.map(({ kind }) => kind)).toEqual(['pipe', 'fitting']);
    const open = placed([pipe(0.04, 1)]);
    expect(open.ok && open.value.shut).toBe(false);
  });

  it('is shut by a closed valve of known Kv', () => {
    const run = placed([{ valve: { kv: 10 }, opening: 0 }]);
    expect(run.ok && run.value.shut).toBe(true);
  });

  it('says the bore of its first element that has one', () => {
    const boreOf = (elements: readonly RunElement[], ends?: Ends) => {
      const run = placed(elements, ends);
      return run.ok ? run.value.firstSizedBore : Number.NaN;
    };
    expect(
      boreOf([{ loss: { head: 1, flow: 1 } }, { fitting: 'union', diameter: 0.02 }, pipe(0.05, 1)]),
    ).toBe(0.02);
    expect(boreOf([{ loss: { head: 1, flow: 1 } }])).toBeNull();
    expect(boreOf([])).toBeNull();
  });

  it('places a reducer between the bores around it', () => {
    const run = placed([{ fitting: 'reducer' }], { upstream: 0.05, downstream: 0.03 });
    expect(run.ok && run.value.elements[0]).toMatchObject({ bore: 0.03, role: 'bore-change' });
    expect(failureOf({ fitting: 'reducer' }, { downstream: null })).toMatchObject({
      code: 'bores-not-known',
    });
  });
});

describe('an element that makes no sense', () => {
  it.each<[string, RunElement, object]>([
    [
      'a size nobody makes',
      { pipe: 'hose', length: 1 },
      { code: 'unknown-pipe', path: ['suction', 1, 'pipe'], name: 'hose' },
    ],
    [
      'an unknown fitting',
      { fitting: 'knot' },
      { code: 'unknown-fitting', path: ['suction', 1, 'fitting'], name: 'knot' },
    ],
    [
      'an unknown valve',
      { valve: 'tap' },
      { code: 'unknown-valve', path: ['suction', 1, 'valve'], name: 'tap' },
    ],
    [
      'a valve without a table, half open',
      { valve: 'plug', opening: 50 },
      { code: 'opening-not-known', path: ['suction', 1, 'opening'], name: 'plug', opening: 50 },
    ],
    [
      'a Kv, half open',
      { valve: { kv: 10 }, opening: 50 },
      { code: 'opening-not-known', path: ['suction', 1, 'opening'], name: 'kv', opening: 50 },
    ],
    [
      'a Cv, half open',
      { valve: { cv: 10 }, opening: 50 },
      { code: 'opening-not-known', path: ['suction', 1, 'opening'], name: 'cv', opening: 50 },
    ],
    [
      'a pipe as rough as a tenth of its bore and more',
      { pipe: { insideDiameter: 0.04, roughness: 0.0041 }, length: 1 },
      {
        code: 'roughness-too-large',
        path: ['suction', 1, 'pipe', 'roughness'],
        roughness: 0.0041,
        bore: 0.04,
      },
    ],
    [
      'an equivalent length as rough',
      { equivalentLength: 1, roughness: 0.0041 },
      { code: 'roughness-too-large', path: ['suction', 1, 'roughness'], roughness: 0.0041, bore: 0.04 },
    ],
  ])('%s is named', (_, element, failure) => {
    expect(failureOf(element)).toEqual(failure);
  });

  it('is no pipe just as rough as a tenth of its bore', () => {
    expect(failureOf({ pipe: { insideDiameter: 0.04, roughness: 0.004 }, length: 1 })).toBeNull();
  });

  it.each<[string, RunElement]>([
    ['a fitting', { fitting: 'union' }],
    ['a valve', { valve: 'ball' }],
    ['a loss coefficient', { lossCoefficient: 1 }],
    ['an equivalent length', { equivalentLength: 1 }],
  ])('is %s whose bore no pipe gives', (_, element) => {
    const run = placed([element], { upstream: null });
    expect(run.ok ? null : run.failure).toEqual({ code: 'element-without-diameter', path: ['suction', 0] });
  });
});
