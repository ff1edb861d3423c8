/** Reducers and enlargements against published figures and laws. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  BORE_CHANGES,
  type BoreChange,
  boreChangeLossCoefficient,
  boreChangeResistance,
  findBoreChange,
  fits,
} from '../../../models/components/bore-change.ts';
import { roundedEntranceLoss } from '../../../models/components/rounded-entrance.ts';
import { expectClose } from '../../expect-close.ts';
import {
  BORE_CHANGE_COEFFICIENTS,
  ENLARGEMENT_HEAD,
  ROUNDED_ENTRANCES,
} from '../../reference/bore-changes.ts';

function named(name: string): BoreChange {
  const row = findBoreChange(name);
  if (row === undefined) throw new Error(`no fitting ${name}`);
  return row;
}

const bores = fc.tuple(
  fc.double({ min: 0.005, max: 0.3, noNaN: true }),
  fc.double({ min: 1.01, max: 20, noNaN: true }),
);

describe('a change of bore', () => {
  it.each(BORE_CHANGE_COEFFICIENTS)('$name from $before to $after m has K $expected ($source)', (row) => {
    expectClose(boreChangeLossCoefficient(named(row.name), row), row.expected, { relative: row.tolerance });
  });

  it(`loses 16.7 mm of head from 40 to 50 mm at 7.2 m3/h (${ENLARGEMENT_HEAD.source})`, () => {
    const { flow, expected, tolerance } = ENLARGEMENT_HEAD;
    const { head } = boreChangeResistance(named('enlargement'), ENLARGEMENT_HEAD).lossAt(flow);
    expectClose(head, expected, { relative: tolerance });
  });

  it('narrowing from a wide tank is the sharp entrance, K 0.5; widening into one is the exit, K 1', () => {
    expectClose(boreChangeLossCoefficient(named('reducer'), { before: 1e6, after: 0.04 }), 0.5, {
      relative: 1e-12,
    });
    expectClose(boreChangeLossCoefficient(named('enlargement'), { before: 0.04, after: 1e6 }), 1, {
      relative: 1e-12,
    });
  });

  it('loses less the more slender its cone, and never less than nothing', () => {
    for (const towards of ['narrower', 'wider'] as const) {
      const rows = BORE_CHANGES.filter((row) => row.towards === towards).toSorted(
        (a, b) => a.angle - b.angle,
      );
      expect(rows.map(({ angle }) => angle)).toEqual([15, 30, 45, 180]);
      fc.assert(
        fc.property(bores, ([small, ratio]) => {
          const large = small * ratio;
          const pair =
            towards === 'narrower' ? { before: large, after: small } : { before: small, after: large };
          const losses = rows.map((row) => boreChangeLossCoefficient(row, pair));
          expect(losses).toEqual(losses.toSorted((a, b) => a - b));
          expect(losses[0]).toBeGreaterThan(0);
        }),
        { seed: 1 },
      );
    }
  });

  it('by a cone of 30 degrees is 0.8 sin 15 or 2.6 sin 15 degrees of the handbook', () => {
    // Crane Technical Paper 410; sin 15 degrees = 0.258819, areas 1 to 4.
    const narrower = boreChangeLossCoefficient(named('reducer-taper-30'), { before: 0.08, after: 0.04 });
    expectClose(narrower, 0.8 * 0.258819 * 0.75, { relative: 1e-5 });
    const wider = boreChangeLossCoefficient(named('enlargement-taper-30'), { before: 0.04, after: 0.08 });
    expectClose(wider, 2.6 * 0.258819 * 0.75 ** 2, { relative: 1e-5 });
  });

  it('fits bores that change its way alone', () => {
    expect(fits(named('reducer'), { before: 0.05, after: 0.04 })).toBe(true);
    expect(fits(named('reducer'), { before: 0.04, after: 0.05 })).toBe(false);
    expect(fits(named('enlargement'), { before: 0.04, after: 0.05 })).toBe(true);
    expect(fits(named('enlargement'), { before: 0.04, after: 0.04 })).toBe(false);
  });

  it('says of every row where it comes from', () => {
    for (const { source, description, verified } of BORE_CHANGES) {
      expect(source).toMatch(/Crane|Borda/);
      expect(description).toMatch(/bores/);
      expect(verified).toBe(true);
    }
  });

  it.each(['reducers', 'Reducer', 'reducer-taper-60', 'toString', ''])('there is no row %j', (name) => {
    expect(findBoreChange(name)).toBeUndefined();
  });
});

describe('a rounded entrance', () => {
  it.each(ROUNDED_ENTRANCES)('of radius $ratio of the bore has K $expected ($source)', (row) => {
    expectClose(roundedEntranceLoss(row.ratio), row.expected, { absolute: row.tolerance });
  });

  it('loses less the rounder it is', () => {
    const losses = [0, 0.02, 0.05, 0.1, 0.2, 0.4, 0.8].map(roundedEntranceLoss);
    expect(losses).toEqual(losses.toSorted((a, b) => b - a));
  });
});
