/** The key under which the figures of a recommendation are kept names all that they follow from. */
import { describe, expect, it } from 'vitest';
import type { RecommendationQuestion } from '../../../../api/features/recommendation/question.ts';
import { cacheKey } from '../../../../api/features/recommendation/recommendation.ts';
import { DEFAULT_LIMITS } from '../../../../models/loop/limits.ts';
import { kelpFlume } from '../../../reference/independent/kelp-flume.ts';
import { candidate } from '../../question/sized-loops.ts';

const site: RecommendationQuestion['site'] = {
  ...{ id: 'site', version: 1, createdAt: 0, updatedAt: 0, name: 'Site' },
  document: {
    ...{ name: 'Site', timeZone: 'UTC', currency: 'EUR', elevation: 0 },
    ...{ price: 0.2, labourRate: null, tariff: null },
  },
};

const question: RecommendationQuestion = {
  site,
  loop: { id: 'loop', version: 1, document: kelpFlume },
  candidates: [{ ...candidate, id: 'pump', version: 1 }],
  options: {
    ...{ hoursPerDay: 24, balancing: 'as-built', limits: DEFAULT_LIMITS, rankingLimit: 5, detail: 'plain' },
  },
  tariff: null,
  places: { loop: null, balancing: { parameter: 'balancing' }, currency: { parameter: 'price' } },
  system: 'metric',
};

const tariff = { id: 'tariff', version: 1, name: 'Tariff', year: 2026, price: 0.2 };

const OTHERS: Readonly<Record<string, Partial<RecommendationQuestion>>> = {
  'another site': { site: { ...site, id: 'other' } },
  'the site changed': { site: { ...site, version: 2 } },
  'another loop': { loop: { ...question.loop, id: 'other' } },
  'the loop changed': { loop: { ...question.loop, version: 2 } },
  'another pump': { candidates: [{ ...candidate, id: 'other', version: 1 }] },
  'the pump changed': { candidates: [{ ...candidate, id: 'pump', version: 2 }] },
  'several of the pump': { candidates: [{ ...candidate, id: 'pump', version: 1, count: 2 }] },
  'no pump': { candidates: [] },
  'a tariff': { tariff },
  'other hours': { options: { ...question.options, hoursPerDay: 12 } },
  'a price': { options: { ...question.options, price: 0.3 } },
  'trimmed pipework': { options: { ...question.options, balancing: 'trimmed' } },
  'other limits': { options: { ...question.options, limits: { ...DEFAULT_LIMITS, pipeVelocity: 2 } } },
  losses: { options: { ...question.options, detail: 'losses' } },
  'another objective': { options: { ...question.options, objective: 'life-cycle-cost' } },
};

describe('the key of a recommendation', () => {
  it('is the same for the same records and options, whatever the units and the place of a fault', () => {
    const again = {
      ...question,
      loop: { ...question.loop },
      system: 'us' as const,
      places: { ...question.places, loop: { pointer: '/loop' } },
    };
    expect(cacheKey(again)).toBe(cacheKey(question));
  });

  it.each(Object.keys(OTHERS))('is another with %s', (name) => {
    expect(cacheKey({ ...question, ...OTHERS[name] })).not.toBe(cacheKey(question));
  });

  it('is another with a tariff of another version or year', () => {
    const keys = [tariff, { ...tariff, version: 2 }, { ...tariff, year: 2027 }].map((one) =>
      cacheKey({ ...question, tariff: one }),
    );
    expect(new Set(keys).size).toBe(3);
  });

  it('is none where a record came with the request, an assurance is asked for, or candidates are many', () => {
    expect(cacheKey({ ...question, loop: { ...question.loop, id: null } })).toBeNull();
    expect(cacheKey({ ...question, candidates: [{ ...candidate, version: null }] })).toBeNull();
    const assured = { ...question.options, assurance: { margin: 0.1 } };
    expect(cacheKey({ ...question, options: assured })).toBeNull();
    const many = Array.from({ length: 51 }, (_, i) => ({ ...candidate, id: `pump ${i}`, version: 1 }));
    expect(cacheKey({ ...question, candidates: many })).toBeNull();
  });
});
