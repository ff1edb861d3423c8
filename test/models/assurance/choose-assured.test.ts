/** What holds of every choice among candidates. */
import { describe, expect, it } from 'vitest';
import type { Assurance } from '../../../models/assurance/assure-loop.ts';
import { choose, type Question } from '../../../models/assurance/choose-assured.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import { randomCase } from '../../random-loop.ts';
import { canister250, kelpFlume } from '../../reference/independent/kelp-flume.ts';
import { canister, LITRE_PER_HOUR, loopOf, modelOf, outlet, pumpModelOf } from '../example-loops.ts';

const RUNNING = { price: 0.21, hoursPerDay: 18, elevation: 0 };
const drawn = Array.from({ length: 12 }, (_, index) => randomCase({ seed: 900 + index, everyOutlet: true }));

function bestCost(
  loop: Parameters<typeof modelOf>[0],
  question: Omit<Question, 'limits' | 'running'>,
): number {
  const choice = choose(modelOf(loop), { ...question, limits: DEFAULT_LIMITS, running: RUNNING });
  if (!choice.ok) throw new Error(choice.failure.code);
  return choice.value.selection.ranking[0]?.annualCost ?? Number.POSITIVE_INFINITY;
}

describe('a further candidate never makes the best dearer', () => {
  const assurances: readonly (Assurance | null)[] = [null, { grade: '2B' }, { margin: 0.1 }];

  it.each(drawn.map((one, index) => ({ ...one, index })))('on invented loop $index', ({ loop }) => {
    const candidates = drawn.map(({ pump, count }) => ({ pump: pumpModelOf(pump), count }));
    for (const balancing of ['as-built', 'trimmed'] as const) {
      for (const assurance of assurances) {
        const costs = [1, 4, 8, 12].map((most) =>
          bestCost(loop, { candidates: candidates.slice(0, most), balancing, assurance }),
        );
        expect(costs).toEqual(costs.toSorted((a, b) => (a === b ? 0 : b - a)));
      }
    }
  });
});

describe('a choice', () => {
  const candidates = [
    { pump: pumpModelOf(canister), count: 1 },
    { pump: pumpModelOf(canister250), count: 1 },
  ];
  const question = { candidates, balancing: 'as-built', assurance: null } as const;

  it('is the same from a loop made ready before', () => {
    const model = modelOf(kelpFlume);
    const asked = { ...question, limits: DEFAULT_LIMITS, running: RUNNING };
    const first = choose(model, asked);
    if (!first.ok) throw new Error(first.failure.code);
    const again = choose(model, asked, first.value.balanced);
    expect(again.ok && again.value.selection.ranking).toEqual(first.value.selection.ranking);
    expect(again.ok && again.value.worstCase).toBeUndefined();
  });

  it.each<[string, Assurance | null]>([
    ['without an assurance', null],
    ['with a margin', { margin: 0.1 }],
    ['with a grade', { grade: '2B' }],
    ['with more friction', { frictionMultiplier: 2 }],
  ])('fails where nothing is required, %s', (_, assurance) => {
    const model = modelOf(loopOf(outlet('free')));
    const asked = { ...question, assurance, limits: DEFAULT_LIMITS, running: RUNNING };
    expect(choose(model, asked)).toEqual({ ok: false, failure: { code: 'no-requirement' } });
  });

  it('fails with the place of an outlet that trims need a requirement of', () => {
    const free = { run: [], branches: [outlet('a', { requiredFlow: 1000 * LITRE_PER_HOUR }), outlet('b')] };
    const asked = { ...question, limits: DEFAULT_LIMITS, running: RUNNING };
    const choice = choose(modelOf(loopOf(free)), {
      ...asked,
      balancing: 'trimmed',
      assurance: { margin: 0.1 },
    });
    expect(choice).toMatchObject({
      ok: false,
      failure: { code: 'trim-needs-requirement', outlet: 'b', path: ['discharge', 'branches', 1, 'outlet'] },
    });
  });
});
