/** Which recommendations are long jobs. */
import { describe, expect, it } from 'vitest';
import { type RecommendationWork, recommendationJob } from '../../../../api/features/recommendation/job.ts';
import { DEFAULT_LIMITS } from '../../../../models/loop/limits.ts';
import { candidates, flume, manifold } from '../../question/sized-loops.ts';

const workOf = (pumps: RecommendationWork['candidates']): RecommendationWork => ({
  candidates: pumps,
  balancing: 'as-built',
  limits: DEFAULT_LIMITS,
  running: { price: null, hoursPerDay: 24, elevation: 0 },
  rankingLimit: 1,
  assurance: null,
  detail: 'plain',
});
const isLong = (loop: typeof flume, pumps: RecommendationWork['candidates']) =>
  recommendationJob.isLong(loop, workOf(pumps));

describe('the job of a recommendation', () => {
  it('is short for a few pumps on a flume', () => {
    expect(isLong(flume, candidates(4))).toBe(false);
    expect(isLong(flume, [])).toBe(false);
  });

  it('is long with many candidates, with many settings, or on a large loop', () => {
    expect(isLong(flume, candidates(1000))).toBe(true);
    expect(isLong(flume, candidates(50, 0.01))).toBe(true);
    expect(isLong(manifold(1000), candidates(1))).toBe(true);
  });

  it('is long where losses and their savings are asked for', () => {
    expect(recommendationJob.isLong(flume, { ...workOf(candidates(1)), detail: 'losses' })).toBe(true);
  });

  it('grows with the number of settings', () => {
    const settings = [1, 0.1, 0.01].map((step) => isLong(flume, candidates(20, step)));
    expect(settings).toEqual(settings.toSorted((a, b) => Number(a) - Number(b)));
  });
});
