/** Keeps answers about stored records for callers that ask the same again: cell by cell, minute by minute. */
import { LRUCache } from 'lru-cache';
import { type Result, success } from '../../curves/result.ts';
import type { Problem } from '../http/problem.ts';

/**
 * Its key must name all that the answer follows from, stored records by id and version, so that what is kept is never stale:
 * a changed record has another version, and no write needs to empty the cache.
 */
export interface AnswerCache<Answer extends object> {
  /**
   * The answer kept under a key, else the one computed now, which all who ask meanwhile wait for; problems are not kept.
   * Null: not to be kept.
   */
  answer(
    key: string | null,
    compute: () => Promise<Result<Answer, Problem>>,
  ): Promise<Result<Answer, Problem>>;
  /** Undefined where none is kept. */
  kept(key: string): Answer | undefined;
  keep(key: string, answer: Answer): void;
}

/** `max`: how many answers are kept; those that were asked for longest ago go first. */
export function answerCache<Answer extends object>({ max }: { readonly max: number }): AnswerCache<Answer> {
  const kept = new LRUCache<string, Answer>({ max });
  const underWay = new Map<string, Promise<Result<Answer, Problem>>>();
  const computed = async (key: string, compute: () => Promise<Result<Answer, Problem>>) => {
    try {
      const answer = await compute();
      if (answer.ok) kept.set(key, answer.value);
      return answer;
    } finally {
      underWay.delete(key);
    }
  };
  return {
    async answer(key, compute) {
      if (key === null) return compute();
      const known = kept.get(key);
      if (known !== undefined) return success(known);
      const awaited = underWay.get(key) ?? computed(key, compute);
      underWay.set(key, awaited);
      return awaited;
    },
    kept: (key) => kept.get(key),
    keep: (key, answer) => void kept.set(key, answer),
  };
}
