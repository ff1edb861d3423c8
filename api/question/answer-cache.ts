/** Answers to questions about stored records, kept for callers that ask the same again: cell by cell, night by night. */
import { LRUCache } from 'lru-cache';
import type { Result } from '../../curves/result.ts';
import type { Problem } from '../http/problem.ts';

export interface AnswerCache<Answer> {
  /**
   * The answer kept under a key, else the one computed now; problems are not kept. The key must name all that the answer
   * follows from, stored records by id and version; null: not to be kept.
   */
  answer(
    key: string | null,
    compute: () => Promise<Result<Answer, Problem>>,
  ): Promise<Result<Answer, Problem>>;
}

const KEPT_ANSWERS = 200;

export function answerCache<Answer>(): AnswerCache<Answer> {
  const kept = new LRUCache<string, Extract<Result<Answer, Problem>, { ok: true }>>({ max: KEPT_ANSWERS });
  return {
    async answer(key, compute) {
      const known = key === null ? undefined : kept.get(key);
      if (known !== undefined) return known;
      const computed = await compute();
      if (key !== null && computed.ok) kept.set(key, computed);
      return computed;
    },
  };
}
