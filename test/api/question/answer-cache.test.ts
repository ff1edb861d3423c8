/** Answers are kept under a key that names all that they follow from. */
import { describe, expect, it } from 'vitest';
import { problem } from '../../../api/http/problem.ts';
import { answerCache } from '../../../api/question/answer-cache.ts';
import { failed, success } from '../../../curves/result.ts';

const counting = () => {
  let times = 0;
  return {
    times: () => times,
    compute: async () => {
      times += 1;
      return success({ times });
    },
  };
};

describe('the cache of answers', () => {
  it('computes an answer once for a key', async () => {
    const answers = answerCache<object>({ max: 2 });
    const { compute, times } = counting();
    const first = await answers.answer('loop 1', compute);
    expect(await answers.answer('loop 1', compute)).toEqual(first);
    expect(answers.kept('loop 1')).toEqual({ times: 1 });
    expect(times()).toBe(1);
  });

  it('never gives the answer of one version for another', async () => {
    const answers = answerCache<object>({ max: 2 });
    const { compute, times } = counting();
    await answers.answer('loop 1', compute);
    expect(await answers.answer('loop 2', compute)).toEqual(success({ times: 2 }));
    expect(answers.kept('loop 3')).toBeUndefined();
    expect(times()).toBe(2);
  });

  it('computes once for all who ask at the same time', async () => {
    const answers = answerCache<object>({ max: 2 });
    const { compute, times } = counting();
    const [one, other] = await Promise.all([
      answers.answer('loop 1', compute),
      answers.answer('loop 1', compute),
    ]);
    expect(one).toBe(other);
    expect(times()).toBe(1);
  });

  it('keeps neither what has no key, nor a problem, nor a fault', async () => {
    const answers = answerCache<object>({ max: 2 });
    const { compute, times } = counting();
    await answers.answer(null, compute);
    await answers.answer(null, compute);
    expect(times()).toBe(2);
    const refused = failed(problem('not-found', 'There is no loop.'));
    expect(await answers.answer('loop 1', async () => refused)).toBe(refused);
    await expect(answers.answer('loop 1', () => Promise.reject(new Error('a bug')))).rejects.toThrow('a bug');
    expect(await answers.answer('loop 1', compute)).toEqual(success({ times: 3 }));
  });

  it('keeps a bounded number of answers, those asked for last', () => {
    const answers = answerCache<object>({ max: 2 });
    for (const key of ['loop 1', 'loop 2', 'loop 3']) answers.keep(key, { key });
    expect(['loop 1', 'loop 2', 'loop 3'].map((key) => answers.kept(key))).toEqual([
      undefined,
      { key: 'loop 2' },
      { key: 'loop 3' },
    ]);
  });
});
