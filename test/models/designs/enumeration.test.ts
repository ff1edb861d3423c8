/** Designs of invented loops against the trial of every combination of sizes, pumps and settings. */
import { describe, expect, it } from 'vitest';
import { designs } from '../../../models/designs/designs.ts';
import { expectClose } from '../../expect-close.ts';
import { randomDesign } from '../../random/design-question.ts';
import {
  type EnumeratedDesign,
  enumeratedDesigns,
  enumeratedPipework,
} from '../../reference/independent-complementarity/enumerated-design.ts';
import { questionOf } from './question.ts';

const SEEDS = Array.from({ length: 200 }, (_, index) => index + 1);

/** Both solutions round alike to this. */
const ROUNDING = 1e-9;

const cheapest = (all: readonly EnumeratedDesign[]): EnumeratedDesign | undefined =>
  all.reduce<EnumeratedDesign | undefined>(
    (best, one) => (best === undefined || one.presentValue < best.presentValue ? one : best),
    undefined,
  );

describe('the cheapest design', () => {
  it.each(SEEDS)('is that of all combinations (seed %i)', (seed) => {
    const random = randomDesign(seed);
    const all = enumeratedDesigns(random, enumeratedPipework(random));
    const found = designs(questionOf(random));
    if (!found.ok) throw new Error(JSON.stringify(found.failure));
    const { best, ranking, rejected, optimalityGap } = found.value;
    const expected = cheapest(all);
    expect(optimalityGap).toBe(0);
    expect(best === null).toBe(expected === undefined);
    if (best === null || expected === undefined) return;
    expectClose(best.presentValue, expected.presentValue, { relative: ROUNDING });
    expectClose(best.power, expected.power, { relative: ROUNDING });
    for (const row of [best, ...ranking]) {
      const own = cheapest(all.filter(({ pump }) => pump === row.candidate));
      expectClose(row.presentValue, own?.presentValue ?? Number.NaN, { relative: ROUNDING });
    }
    const without = random.pumps.flatMap((_, place) =>
      all.some(({ pump }) => pump === place) ? [] : [place],
    );
    expect(rejected.map(({ candidate }) => candidate)).toEqual(without);
    const same = all.find(
      ({ pump, setting, pipework: { sizes } }) =>
        pump === best.candidate && setting === best.setting && sizes.join() === best.sizes.join(),
    );
    expectClose(same?.presentValue ?? Number.NaN, best.presentValue, { relative: ROUNDING });
    expectClose(same?.pipework.head ?? Number.NaN, best.requiredHead, { relative: ROUNDING });
  });

  it('is found in most invented loops, also with NPSH enforced, and none in some', () => {
    const outcomes = SEEDS.map((seed) => {
      const random = randomDesign(seed);
      const found = designs(questionOf(random));
      return { enforceNpsh: random.enforceNpsh, isFound: found.ok && found.value.best !== null };
    });
    expect(outcomes.filter(({ isFound }) => isFound).length).toBeGreaterThan(100);
    expect(outcomes.filter(({ isFound, enforceNpsh }) => isFound && enforceNpsh).length).toBeGreaterThan(30);
    expect(outcomes.filter(({ isFound }) => !isFound).length).toBeGreaterThan(10);
  });
});
