/** Probabilities of causes, by hand. */
import { describe, expect, it } from 'vitest';
import { explainingPairs, namedCauses, rankedCauses } from '../../../models/condition/causes.ts';
import type { Term } from '../../../models/condition/evidence.ts';
import type { Point, Signature } from '../../../models/condition/signatures.ts';
import { expectClose } from '../../expect-close.ts';

const term = (place: number, difference: number, facts: Partial<Term> = {}): Term => ({
  ...{ place, difference, variance: 1e-4, degrees: 1e7 },
  ...facts,
});
const point = (...shifts: readonly number[]): Point => ({ magnitude: 0.1, shifts });
const signature = (cause: Signature['cause'], prior: number, points: readonly Point[]): Signature => ({
  ...{ cause, prior, points },
});

describe('the probability of causes', () => {
  it('is their prior where all move the gauges alike', () => {
    const alike = [point(-0.1, -0.02)];
    const found = rankedCauses(
      [term(0, -0.1), term(1, -0.03)],
      [
        signature('worn-pump', 0.15, alike),
        signature('clogged-intake', 0.22, alike),
        signature('speed-low', 0.05, alike),
      ],
    );
    expect(found.map(({ signature: { cause } }) => cause)).toEqual([
      'clogged-intake',
      'worn-pump',
      'speed-low',
    ]);
    for (const {
      probability,
      signature: { prior },
    } of found)
      expectClose(probability, prior / 0.42, { relative: 1e-9 });
  });

  it('is prior times the normal density of what is left, V widened by (0.15 s)^2', () => {
    const [a, b] = [point(-0.1), point(-0.08)];
    const found = rankedCauses(
      [term(0, -0.1)],
      [signature('clogged-intake', 0.2, [a]), signature('worn-pump', 0.1, [b])],
    );
    const density = (shift: number) => {
      const variance = 1e-4 + (0.15 * shift) ** 2;
      return Math.exp(-((0.1 - shift) ** 2) / (2 * variance)) / Math.sqrt(variance);
    };
    const [first, second] = [0.2 * density(0.1), 0.1 * density(0.08)];
    expectClose(found[0]?.probability ?? Number.NaN, Math.max(first, second) / (first + second), {
      relative: 1e-5,
    });
  });

  it('is shared over magnitudes: a cause that fits at one of four counts a quarter', () => {
    const far = [point(-3), point(-4), point(-5)];
    const found = rankedCauses(
      [term(0, -0.1)],
      [signature('clogged-intake', 0.2, [point(-0.1), ...far]), signature('worn-pump', 0.2, [point(-0.1)])],
    );
    expectClose(found[0]?.probability ?? Number.NaN, 0.8, { relative: 1e-6 });
  });

  it('states the magnitude that fits, within its interval', () => {
    const points = Array.from({ length: 40 }, (_, i) => ({
      magnitude: 0.01 * (i + 1),
      shifts: [-0.01 * (i + 1)],
    }));
    const [found] = rankedCauses([term(0, -0.2)], [signature('clogged-intake', 1, points)]);
    expectClose(found?.magnitude ?? Number.NaN, 0.2, { absolute: 0.01 });
    expect(found?.interval.low).toBeLessThan(0.19);
    expect(found?.interval.high).toBeGreaterThan(0.21);
  });
});

describe('causes that are named', () => {
  it('are the fewest that reach 0.9', () => {
    const alike = [point(-0.1)];
    const all = ([0.5, 0.3, 0.15, 0.05] as const).map((prior) => signature('clogged-intake', prior, alike));
    expect(namedCauses(rankedCauses([term(0, -0.1)], all))).toHaveLength(3);
  });
});

describe('what no single cause explains', () => {
  const clog = signature('clogged-intake', 0.2, [point(-0.1, 0, 0.1), point(-0.2, 0, 0.2)]);
  const motor = signature('draws-more', 0.1, [point(0, 0.2, 0), point(0, 0.1, 0)]);
  const worn = signature('worn-pump', 0.15, [point(-0.1, -0.02, -0.1)]);

  it('is explained by a pair, the likeliest of them first', () => {
    const both = [term(0, -0.1), term(1, 0.2), term(2, 0.1)];
    const pairs = explainingPairs(both, [clog, worn, motor]);
    expect(pairs?.[0]?.map(({ signature: { cause } }) => cause)).toEqual(['clogged-intake', 'draws-more']);
  });

  it('is not looked for where one cause explains it, or one gauge was read', () => {
    expect(explainingPairs([term(0, -0.1), term(1, 0), term(2, 0.1)], [clog, worn, motor])).toBeNull();
    expect(explainingPairs([term(0, 0.9)], [clog, worn, motor])).toBeNull();
  });

  it('may have no pair either', () => {
    expect(explainingPairs([term(0, 0.5), term(1, 0.5), term(2, -0.5)], [clog, worn, motor])).toEqual([]);
  });
});
