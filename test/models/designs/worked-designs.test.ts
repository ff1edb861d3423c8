/** Designs against two loops worked out by an enumeration that was programmed apart. */
import { describe, expect, it } from 'vitest';
import { type Designs, designs } from '../../../models/designs/designs.ts';
import { expectClose } from '../../expect-close.ts';
import { type WorkedDesign, workedDesigns } from '../../reference/worked-designs.ts';
import { workedQuestion } from './question.ts';

function designsOf(worked: WorkedDesign): Designs {
  const found = designs(workedQuestion(worked));
  if (!found.ok) throw new Error(JSON.stringify(found.failure));
  return found.value;
}

/** Stated to the cent, and to six figures. */
const CENT = { absolute: 0.00501 };
const SIX_FIGURES = { relative: 5e-6 };

describe.each(workedDesigns.map((worked) => [worked.loop.name, worked] as const))(
  'the worked design of %s',
  (_, worked) => {
    const { best, ranking, rejected, optimalityGap } = designsOf(worked);
    if (best === null) throw new Error('there is no design');

    it('has the sizes, the pump and the setting of the enumeration', () => {
      const { candidate, setting, bores } = worked.best;
      expect([best.candidate, best.setting]).toEqual([candidate, setting]);
      expect(best.runs.map(({ pipe }) => pipe)).toEqual(
        bores.map((millimetres) => ({ insideDiameter: millimetres / 1000 })),
      );
    });

    it('has its heads and its power', () => {
      expectClose(best.requiredHead, worked.best.requiredHead, SIX_FIGURES);
      expectClose(best.head, worked.best.head, SIX_FIGURES);
      expectClose(best.power, worked.best.power, SIX_FIGURES);
    });

    it('costs the same to the cent, element by element', () => {
      for (const element of ['pumpCost', 'energyCost', 'pipeCost', 'trimCost', 'presentValue'] as const) {
        expectClose(best[element], worked.best[element], CENT);
      }
    });

    it('is followed by the best of the other pumps', () => {
      expect(ranking.map(({ candidate, setting }) => ({ candidate, setting }))).toEqual(
        worked.others.map(({ candidate, setting }) => ({ candidate, setting })),
      );
      for (const [place, { presentValue }] of worked.others.entries()) {
        expectClose(ranking[place]?.presentValue ?? Number.NaN, presentValue, CENT);
      }
    });

    it('is proven to be the cheapest', () => {
      expect(optimalityGap).toBe(0);
      expect(rejected).toEqual([]);
    });
  },
);
