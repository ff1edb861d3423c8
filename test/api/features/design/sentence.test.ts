/** What the summary of a design says where a search was thinned, or a recommendation takes another setting. */
import { describe, expect, it } from 'vitest';
import { designAnswer } from '../../../../api/features/design/answer.ts';
import { type DesignFigures, type DesignWork, designJob } from '../../../../api/features/design/job.ts';
import { expectValue } from '../../../curves/expect-value.ts';
import { workedQuestion } from '../../../models/designs/question.ts';
import { workedDesigns } from '../../../reference/worked-designs.ts';

function workedWork(): DesignWork {
  const [one] = workedDesigns;
  if (one === undefined) throw new Error('there is no worked design');
  const question = workedQuestion(one);
  const candidates = question.candidates.map(({ pump, count }) => ({
    ...pump,
    count,
    id: null,
    version: null,
  }));
  return { ...question, candidates };
}

const work = workedWork();
const figures = expectValue(await designJob.compute(null, work));

const answerOf = (changed: DesignFigures) =>
  designAnswer(
    {
      ...{ work, figures: changed, tariff: null, site: { document: { currency: 'EUR' } } },
      ...{ loop: { id: null, version: null, document: work.loop } },
      candidates: work.candidates.map((candidate) => ({ ...candidate, version: null })),
    },
    { system: 'metric', rankingLimit: 20 },
  );

describe('the summary of a design', () => {
  it('says that nothing costs less where the search was not thinned', () => {
    const { summary, solution } = answerOf(figures);
    expect(solution).toBe('optimal');
    expect(summary).toContain('No trimmed design of these sizes and pumps costs less.');
    expect(summary).not.toContain('A recommendation');
  });

  it('states the gap where it was', () => {
    const { summary, solution, optimalityGap } = answerOf({
      ...figures,
      designs: { ...figures.designs, optimalityGap: 1.2e-4 },
    });
    expect([solution, optimalityGap]).toEqual(['bounded', 1.2e-4]);
    expect(summary).toContain('costs less by more than 0.012 %.');
  });

  it('says why a recommendation on its loop takes another step', () => {
    const { best } = figures;
    if (best === null) throw new Error('there is no design');
    expect(best.recommendedSetting).toBe(82);
    const { summary } = answerOf({ ...figures, best: { ...best, recommendedSetting: 83 } });
    expect(summary).toContain(
      'A recommendation on this loop gives 83 %: at 82 % each outlet has exactly its required flow, and rounding decides.',
    );
  });
});
