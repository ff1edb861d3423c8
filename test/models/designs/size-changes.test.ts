/** What other sizes would change, against designs in which they are not to be chosen. */
import { describe, expect, it } from 'vitest';
import { designs } from '../../../models/designs/designs.ts';
import { sizedLoop } from '../../../models/designs/sized-loop.ts';
import { expectClose } from '../../expect-close.ts';
import { workedDesigns } from '../../reference/worked-designs.ts';
import { workedQuestion } from './question.ts';

const questions = workedDesigns.map(workedQuestion);

describe.each(questions.map((question) => [question.loop.name, question] as const))(
  'sizes of %s',
  (_, question) => {
    const found = designs(question);
    if (!found.ok || found.value.best === null) throw new Error('there is no design');
    const { best } = found.value;

    /** The design of these sizes alone; its pipes cost nothing, since none is to be chosen. */
    const only = (sizes: readonly number[]) => {
      const answer = designs({ ...question, loop: sizedLoop(question.loop, sizes) });
      return answer.ok ? answer.value.best : null;
    };

    it('change the cost by what a design of them costs', () => {
      expect(best.changes.length).toBeGreaterThan(0);
      for (const { option } of best.changes) {
        if (option === null) throw new Error('a pump of these serves every size');
        const alone = only(option.sizes);
        expect(alone).toMatchObject({ candidate: option.candidate, setting: option.setting });
        expectClose(option.presentValue, (alone?.presentValue ?? Number.NaN) + option.pipeCost, {
          relative: 1e-12,
        });
        expectClose(option.runningCost + option.pipeCost + best.trimCost, option.presentValue, {
          relative: 1e-12,
        });
        expect(option.presentValue).toBeGreaterThanOrEqual(best.presentValue);
      }
    });

    it('are the next by bore, one list changed at a time', () => {
      for (const { list, direction, place, option } of best.changes) {
        expect(option?.sizes).toEqual(best.sizes.with(list, place));
        expect(place - (best.sizes[list] ?? Number.NaN)).toBe(direction === 'larger' ? 1 : -1);
      }
    });

    it('of the first of every list are compared too', () => {
      const alone = only(best.sizes.map(() => 0));
      expectClose(
        best.firstSizes?.runningCost ?? Number.NaN,
        (alone?.presentValue ?? Number.NaN) - best.trimCost,
        {
          relative: 1e-12,
        },
      );
    });
  },
);
