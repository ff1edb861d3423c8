/** The loop that a design answers, computed as any other loop. */
import { describe, expect, it } from 'vitest';
import { designs } from '../../../models/designs/designs.ts';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { compileLoop } from '../../../models/network/compiled-loop.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { balancedLoop } from '../../../models/selection/balanced-loop.ts';
import { select } from '../../../models/selection/select.ts';
import { expectValue } from '../../curves/expect-value.ts';
import { expectClose } from '../../expect-close.ts';
import { randomDesign } from '../../random/design-question.ts';
import { workedDesigns } from '../../reference/worked-designs.ts';
import { questionOf, workedQuestion } from './question.ts';

const invented = Array.from({ length: 60 }, (_, index) => index + 1).map((seed) =>
  questionOf(randomDesign(seed)),
);

const found = [...workedDesigns.map(workedQuestion), ...invented].flatMap((question) => {
  const answer = designs(question);
  return answer.ok && answer.value.best !== null ? [{ question, best: answer.value.best }] : [];
});

describe('the loop of a design at its setting', () => {
  it('is found in enough cases', () => {
    expect(found.length).toBeGreaterThan(30);
  });

  it('gives each outlet what it requires, at the stated head and power', () => {
    for (const { question, best } of found) {
      const model = compileLoop(best.loop);
      const candidate = question.candidates[best.candidate];
      if (!model.ok || candidate === undefined) throw new Error(JSON.stringify(model));
      const pump = pumpAtSetting(candidate.pump, { setting: best.setting, count: candidate.count });
      const duty = dutyPoint(model.value, pump);
      expect(duty.deadHead).toBe(false);
      expectClose(duty.flow, best.flow, { relative: 1e-8 });
      expectClose(duty.head, best.head, { relative: 1e-8 });
      expectClose(duty.power, best.power, { relative: 1e-8 });
      for (const [place, { requiredFlow }] of model.value.system.outlets.entries()) {
        expectClose(duty.outletFlows[place] ?? Number.NaN, requiredFlow ?? 0, {
          ...{ relative: 1e-8, absolute: 1e-8 * best.flow },
        });
      }
    }
  });

  it('is recommended the same pump at the same setting', () => {
    for (const { question, best } of found) {
      const { limits, price, hoursPerDay, elevation, candidates } = question;
      const balanced = expectValue(balancedLoop(expectValue(compileLoop(best.loop)), 'as-built'));
      const [recommended] = select({
        ...{ sampled: balanced.sampled, limits, running: { price, hoursPerDay, elevation } },
        candidates: candidates.slice(best.candidate, best.candidate + 1),
      }).ranking;
      expect(recommended?.duty.setting).toBe(best.setting);
    }
  });

  it('keeps every element of the loop as entered at its place', () => {
    for (const { question, best } of found) {
      expect(best.loop.discharge.run.slice(0, question.loop.discharge.run.length)).toMatchObject(
        question.loop.discharge.run.map((element) =>
          'pipes' in element ? { length: element.length } : element,
        ),
      );
    }
  });

  it('has a cost for each pipe, and what the pipes lose', () => {
    for (const { best } of found) {
      const sum = best.runs.reduce((total, { cost }) => total + cost, 0);
      expectClose(sum, best.pipeCost, { relative: 1e-12, absolute: 1e-12 });
      for (const { head, velocity } of best.runs) expect(velocity === 0).toBe(head === 0);
    }
  });
});
