/** Valves over their opening. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LossMethod } from '../../../models/components/named-loss.ts';
import { openingForLoss, valveResistance } from '../../../models/components/valve-opening.ts';
import { findValve, VALVES, type ValveRow } from '../../../models/components/valves.ts';
import { GRAVITY } from '../../../models/physics/gravity.ts';
import { turbulenceFactor } from '../../../models/physics/turbulence-factor.ts';
import { expectClose } from '../../expect-close.ts';
import { PART_OPEN_VALVES } from '../../reference/fittings.ts';

const THROTTLING = ['ball', 'gate', 'butterfly', 'globe', 'diaphragm'];
const SITE = { diameter: 0.04, kinematicViscosity: 9.37e-7 };

function valve(name: string, method?: LossMethod): ValveRow {
  const found = findValve(name, method);
  if (found === undefined) throw new Error(`no valve ${name}`);
  return found;
}

function lossCoefficient(row: ValveRow, opening: number): number {
  const state = valveResistance(row, { ...SITE, opening });
  if (!state.ok) throw new Error(`${row.name} at ${opening} %: ${state.failure.code}`);
  if (state.value === 'closed') return Number.POSITIVE_INFINITY;
  const velocity = (4 * 1e-3) / (Math.PI * SITE.diameter ** 2);
  return (2 * GRAVITY * state.value.lossAt(1e-3).head) / velocity ** 2;
}

describe('a valve over its opening', () => {
  it.each([
    ['ball', 3],
    ['gate', 8],
    ['butterfly', 45],
    ['globe', 340],
  ] as const)('%s fully open has K = %d fT', (name, diameters) => {
    expectClose(lossCoefficient(valve(name), 100), diameters * turbulenceFactor(SITE.diameter), {
      relative: 1e-12,
    });
  });

  it.each(PART_OPEN_VALVES)('$name at $opening % has K $expected ($source)', (row) => {
    expectClose(lossCoefficient(valve(row.name), row.opening), row.expected, { relative: row.tolerance });
  });

  it.each([
    [20, 1.54],
    [60, 118],
  ])(
    'butterfly turned by %d degrees of 90 adds K %d (Weisbach 1855, by way of a table after Lapple)',
    (angle, added) => {
      const fullyOpen = lossCoefficient(valve('butterfly'), 100);
      const opening = 100 * (1 - angle / 90);
      expectClose(lossCoefficient(valve('butterfly'), opening), fullyOpen + added, { relative: 1e-9 });
    },
  );

  it.each(THROTTLING)('%s opens to the opening that loses as asked', (name) => {
    const openings = fc.double({ min: 0.5, max: 100, noNaN: true });
    fc.assert(
      fc.property(openings, (opening) => {
        const loss = { lossCoefficient: lossCoefficient(valve(name), opening), diameter: SITE.diameter };
        expectClose(openingForLoss(valve(name), loss) ?? Number.NaN, opening, { relative: 1e-9 });
      }),
      { seed: 1 },
    );
  });

  it.each(THROTTLING)('%s has no opening that loses less than it does fully open', (name) => {
    const lossCoefficientAsked = 0.999 * lossCoefficient(valve(name), 100);
    const asked = { lossCoefficient: lossCoefficientAsked, diameter: SITE.diameter };
    expect(openingForLoss(valve(name), asked)).toBeNull();
  });

  it.each<[string, LossMethod?]>([['check-swing'], ['ball', 'three-k'], ['plug']])(
    '%s has no opening for a loss',
    (name, method) => {
      expect(
        openingForLoss(valve(name, method), { lossCoefficient: 50, diameter: SITE.diameter }),
      ).toBeNull();
    },
  );

  it.each(VALVES)('$name by $method at 0 % is closed', (row) => {
    expect(valveResistance(row, { ...SITE, opening: 0 })).toEqual({ ok: true, value: 'closed' });
  });

  it.each(THROTTLING)('%s loses more the further it closes, at any bore', (name) => {
    const openings = fc.double({ min: 0.01, max: 99.9, noNaN: true });
    const diameters = fc.double({ min: 0.001, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(openings, diameters, (opening, diameter) => {
        const head = (at: number) => {
          const state = valveResistance(valve(name), { ...SITE, diameter, opening: at });
          return state.ok && state.value !== 'closed' ? state.value.lossAt(1e-3).head : Number.NaN;
        };
        expect(head(opening)).toBeGreaterThan(head(opening + 0.05));
      }),
      { seed: 1 },
    );
  });

  it.each(THROTTLING)('%s loses without bound as it shuts', (name) => {
    expect(lossCoefficient(valve(name), 0.01)).toBeGreaterThan(1e8);
  });

  it.each(THROTTLING)('%s does not jump at the rows of its table', (name) => {
    for (const { opening } of valve(name).partOpenings) {
      const below = lossCoefficient(valve(name), opening - 1e-9);
      expectClose(lossCoefficient(valve(name), opening + 1e-9), below, { relative: 1e-8 });
    }
  });

  it('has table rows from wide to narrow with rising loss, each with a source', () => {
    for (const { partOpenings, partOpeningSource } of VALVES) {
      const openings = partOpenings.map((part) => part.opening);
      const added = partOpenings.map((part) => part.addedLossCoefficient);
      expect(openings).toEqual(openings.toSorted((a, b) => b - a));
      expect(added).toEqual(added.toSorted((a, b) => a - b));
      expect(partOpeningSource === null).toBe(partOpenings.length === 0);
    }
  });

  it.each(['check-swing', 'foot-hinged', 'diaphragm-straight'])('%s is not known part open', (name) => {
    const failure = { code: 'opening-not-known', opening: 50 };
    expect(valveResistance(valve(name), { ...SITE, opening: 50 })).toEqual({ ok: false, failure });
  });

  it.each([-1, 100.5, Number.NaN])('an opening of %d % is not known', (opening) => {
    const failure = { code: 'opening-not-known', opening };
    expect(valveResistance(valve('ball'), { ...SITE, opening })).toEqual({ ok: false, failure });
  });

  it.each(['elbow-90', 'Ball', 'constructor', ''])('there is no valve %j', (name) => {
    expect(findValve(name)).toBeUndefined();
  });
});
