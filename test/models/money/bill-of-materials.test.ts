/** What a loop is made of, counted by hand. */
import { describe, expect, it } from 'vitest';
import type { Branch, PipeworkLoop } from '../../../models/loop/loop.ts';
import { billOfMaterials, type Material } from '../../../models/money/bill-of-materials.ts';
import { priceBill } from '../../../models/money/bill-price.ts';
import { expectClose } from '../../expect-close.ts';
import { loopOf, outlet } from '../example-loops.ts';

const leaf = (name: string, run: Branch['run']): Branch => outlet(name, { nozzleDiameter: 0.014 }, run);

/** Suction of sch80 2; a trunk of sch80 1-1/2 that splits into two, the second of a bore of its own. */
const LOOP: PipeworkLoop = loopOf(
  {
    run: [{ pipe: 'sch80 1-1/2', length: 2.5 }, { fitting: 'elbow-90', count: 2 }, { lossCoefficient: 2 }],
    split: 'tee-90',
    branches: [
      leaf('near', [
        { valve: 'ball', opening: 100 },
        { pipe: 'sch80 1-1/2', length: 0.7 },
      ]),
      leaf('far', [
        { pipe: { insideDiameter: 0.0404 }, length: 3 },
        { fitting: 'elbow-90' },
        { valve: { kv: 12 } },
        { fitting: 'union', diameter: 0.05 },
      ]),
    ],
  },
  { suction: [{ fitting: 'bulkhead' }, { pipe: 'sch80 2', length: 1.2 }, { fitting: 'elbow-90', count: 2 }] },
);

const byName = (materials: readonly Material[]) =>
  Object.fromEntries(materials.map(({ name, count, length }) => [name, length ?? count]));

describe('a bill of materials', () => {
  it('adds up what is alike, each thing at the size of its pipe', () => {
    const { materials, unnamed } = billOfMaterials(LOOP);
    expect(byName(materials)).toEqual({
      'pipe, sch80 2': 1.2,
      'pipe, sch80 1-1/2': 3.2,
      'pipe, 40.4 mm': 3,
      // Before any pipe: that of the pipe after it.
      'bulkhead, sch80 2': 1,
      'elbow-90, sch80 2': 2,
      'elbow-90, sch80 1-1/2': 2,
      'elbow-90, 40.4 mm': 1,
      'union, 50 mm': 1,
      // From upstream, the pipe of its own run coming after it.
      'ball, sch80 1-1/2': 1,
      'valve of kv 12, 40.4 mm': 1,
      'tee, sch80 1-1/2': 1,
      'nozzle, 14 mm': 2,
    });
    expect(unnamed).toEqual(['/discharge/run/2']);
  });

  it('lists pipes first, then by kind and name', () => {
    const kinds = billOfMaterials(LOOP).materials.map(({ kind }) => kind);
    expect([...new Set(kinds)]).toEqual(['pipe', 'fitting', 'valve', 'tee', 'nozzle']);
  });

  it('counts the screens of the intake', () => {
    const screen = { shape: 'cylinder', diameter: 0.06, length: 0.5, openFraction: 0.35, count: 2 } as const;
    const { materials } = billOfMaterials({ ...LOOP, intake: { lossCoefficient: 0.5, screen } });
    expect(materials.find(({ kind }) => kind === 'screen')).toMatchObject({
      name: 'screen, cylinder 60 mm x 500 mm',
      count: 2,
    });
  });

  it('names both sizes of a fitting that joins two', () => {
    const run = [{ pipe: 'sch80 2', length: 1 }, { fitting: 'reducer' }, { pipe: 'sch80 1', length: 1 }];
    const { materials } = billOfMaterials(loopOf(leaf('only', run)));
    const fittings = materials.filter(({ kind }) => kind === 'fitting');
    expect(fittings.map(({ name }) => name)).toEqual(['reducer, sch80 2 to sch80 1']);
  });

  it('lists a split without a tee as unnamed, and counts none', () => {
    const { split: _, ...discharge } = LOOP.discharge;
    const { materials, unnamed } = billOfMaterials({ ...LOOP, discharge });
    expect(unnamed).toEqual(['/discharge/run/2', '/discharge/branches']);
    expect(materials.some(({ kind }) => kind === 'tee')).toBe(false);
  });

  /** Every row of the tables whose description says that it is a tee. */
  const TEES = [
    ...['tee-run', 'tee-branch', 'tee-run-two-k', 'tee-run-flanged-two-k', 'tee-branch-two-k'],
    ...['tee-branch-flanged-two-k', 'tee-run-three-k', 'tee-run-flanged-three-k', 'tee-branch-three-k'],
    'tee-branch-flanged-three-k',
  ];

  it.each(TEES)('does not list a split as unnamed whose branch has a %s of its own', (fitting) => {
    const branches = [leaf('near', [{ fitting }]), leaf('far', [])];
    const run = [{ pipe: 'sch80 2', length: 1 }];
    const { materials, unnamed } = billOfMaterials(loopOf({ run, branches }));
    expect(unnamed).toEqual([]);
    expect(byName(materials)).toMatchObject({ [`${fitting}, sch80 2`]: 1 });
  });

  it('has no more pipe than the runs state, whatever the tree', () => {
    const { materials } = billOfMaterials(LOOP);
    const length = materials.reduce((sum, material) => sum + (material.length ?? 0), 0);
    expectClose(length, 1.2 + 2.5 + 0.7 + 3, { relative: 1e-12 });
  });
});

describe('a bill with prices', () => {
  const { materials } = billOfMaterials(LOOP);

  it('costs pipe by the metre or by whole lengths, the rest by the piece', () => {
    const priced = priceBill(materials, [
      { name: 'pipe, sch80 2', price: 20 },
      { name: 'pipe, sch80 1-1/2', price: 45, soldBy: 3 },
      { name: 'elbow-90, sch80 2', price: 9.5 },
      { name: 'pipe, sch40 4', price: 1000 },
    ]);
    // 1.2 m at 20, two lengths of 3 m for 3.2 m at 45, two elbows at 9.5.
    expectClose(priced.total ?? Number.NaN, 24 + 90 + 19, { relative: 1e-12 });
    expect(priced.materials.find(({ name }) => name === 'pipe, sch80 1-1/2')?.piecesToBuy).toBe(2);
    expect(priced.unpriced).toHaveLength(materials.length - 3);
  });

  it('does not buy a further length for what rounding leaves over', () => {
    const pipe: Material = { kind: 'pipe', name: 'p', count: 3, length: 0.1 + 0.2 };
    expect(priceBill([pipe], [{ name: 'p', price: 1, soldBy: 0.1 }]).materials[0]?.piecesToBuy).toBe(3);
  });

  it('without prices is a bill all the same', () => {
    const { total, unpriced } = priceBill(materials, []);
    expect(total).toBeNull();
    expect(unpriced).toEqual(materials.map(({ name }) => name));
  });
});
