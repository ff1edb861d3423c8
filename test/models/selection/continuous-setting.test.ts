/** The smallest setting of any decimals: between two steps of the grid, with the deciding criterion just met. */
import { describe, expect, it } from 'vitest';
import { choose, type Question } from '../../../models/assurance/choose-assured.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import { continuousDuty } from '../../../models/selection/continuous-setting.ts';
import { expectClose } from '../../expect-close.ts';
import { randomCase } from '../../random-loop.ts';
import { canister250, kelpFlume } from '../../reference/independent/kelp-flume.ts';
import { LITRE_PER_HOUR, modelOf, pumpModelOf } from '../example-loops.ts';

const RUNNING = { price: null, hoursPerDay: 24, elevation: 0 };

function both(loop: Parameters<typeof modelOf>[0], question: Question) {
  const choice = choose(modelOf(loop), question);
  const [candidate] = question.candidates;
  if (!choice.ok || candidate === undefined) throw new Error('the question is not one');
  const { balanced, worstCase, selection } = choice.value;
  const [best] = selection.ranking;
  if (best === undefined) return null;
  const { limits, running } = question;
  const steps = { sampled: balanced.sampled, worstCase, candidate, limits, running };
  return { grid: best.duty, continuous: continuousDuty(steps, best.duty), sampled: balanced.sampled };
}

const asked = (facts: Partial<Question> = {}): Question => ({
  candidates: [{ pump: pumpModelOf(canister250), count: 1 }],
  balancing: 'as-built',
  limits: { ...DEFAULT_LIMITS, throughSlotVelocity: null },
  running: RUNNING,
  assurance: null,
  ...facts,
});

describe('the smallest setting of any decimals', () => {
  it('gives the limiting outlet what it needs and no more', () => {
    const found = both(kelpFlume, asked());
    expectClose((found?.continuous.outletFlows[0] ?? 0) / LITRE_PER_HOUR, 3000, { relative: 1e-7 });
    expect(found?.continuous.setting).toBeGreaterThan(69);
    expect(found?.continuous.setting).toBeLessThan(70);
  });

  it('lands at the duty that the loop requires of any pump', () => {
    const found = both(kelpFlume, asked());
    const { required } = found?.sampled ?? {};
    expectClose(found?.continuous.flow ?? 0, required?.flow ?? 1, { relative: 1e-7 });
    expectClose(found?.continuous.head ?? 0, required?.head ?? 1, { relative: 1e-7 });
  });

  it('gives just the larger flows under a margin', () => {
    const found = both(kelpFlume, asked({ assurance: { margin: 0.1 } }));
    expectClose((found?.continuous.outletFlows[0] ?? 0) / LITRE_PER_HOUR, 3300, { relative: 1e-7 });
  });

  it('is the grid setting itself at the lowest of the grid', () => {
    const pump = pumpModelOf({ ...canister250, settings: { min: 80, max: 100, step: 1 } });
    const found = both(kelpFlume, asked({ candidates: [{ pump, count: 1 }] }));
    expect(found?.grid.setting).toBe(80);
    expect(found?.continuous.setting).toBe(80);
  });

  it('lies within one step below the grid setting: invented loops', () => {
    let found = 0;
    for (let seed = 1200; seed < 1230; seed += 1) {
      const { loop, pump, count } = randomCase({ seed, everyOutlet: true });
      const result = both(
        loop,
        asked({ candidates: [{ pump: pumpModelOf(pump), count }], limits: DEFAULT_LIMITS }),
      );
      if (result === null) continue;
      const { grid, continuous } = result;
      expect(continuous.setting).toBeLessThanOrEqual(grid.setting);
      expect(continuous.setting).toBeGreaterThanOrEqual(grid.setting - pump.settings.step - 1e-9);
      found += 1;
    }
    expect(found).toBeGreaterThan(8);
  });
});
