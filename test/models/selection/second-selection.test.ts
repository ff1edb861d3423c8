/** Whole selections and duties of invented loops with every feature against a solution of its own algorithms. */
import { describe, expect, it } from 'vitest';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { limitsOf } from '../../../models/loop/limits.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { balancedLoop } from '../../../models/selection/balanced-loop.ts';
import { select } from '../../../models/selection/select.ts';
import { agreementOf, type Service } from '../../reference/independent/agreement.ts';
import type { Question } from '../../reference/independent-complementarity/selection.ts';
import { modelOf, pumpModelOf } from '../example-loops.ts';

/** How many selections are compared as built, and as many trimmed: `SELECTIONS=300` takes three minutes. */
const SELECTIONS = Number(process.env.SELECTIONS ?? 10);
/** [ms] */
const LONGEST = 3_600_000;
/** Nothing of it enters what is compared. */
const RUNNING = { price: 0.2, hoursPerDay: 24, elevation: 0 };

function sampledOf({ loop, balancing }: Question) {
  const balanced = balancedLoop(modelOf(loop), balancing);
  if (!balanced.ok) throw new Error(JSON.stringify(balanced.failure));
  return balanced.value.sampled;
}

type Figures = Pick<ReturnType<typeof dutyPoint>, 'flow' | 'head' | 'power' | 'outletFlows'>;

function shown({ loop: { system } }: ReturnType<typeof sampledOf>, duty: Figures) {
  const outlets = system.outlets.map(({ name }, place) => ({
    name,
    flow: duty.outletFlows[place] ?? Number.NaN,
  }));
  return { flow: duty.flow, head: duty.head, power: duty.power, outlets };
}

const models: Service = {
  dutyAt: (question, setting) => {
    const sampled = sampledOf(question);
    const { pump, count } = question;
    return shown(sampled, dutyPoint(sampled.loop, pumpAtSetting(pumpModelOf(pump), { setting, count })));
  },
  select: (question) => {
    const sampled = sampledOf(question);
    const candidates = [{ pump: pumpModelOf(question.pump), count: question.count }];
    const { ranking, rejected } = select({
      ...{ sampled, candidates, limits: limitsOf(question.limits), running: RUNNING },
    });
    const [best] = ranking;
    if (best !== undefined)
      return { feasible: true, setting: best.duty.setting, duty: shown(sampled, best.duty) };
    const failing = rejected[0]?.outcome.failing.map(({ reason }) => reason) ?? [];
    return { feasible: false, reasons: failing.length > 0 ? failing : ['no-setting'] };
  },
};

describe.each(['as-built', 'trimmed'] as const)('a second solution of selections %s', (balancing) => {
  it('agrees on settings, reasons and figures', { timeout: LONGEST }, () => {
    const found = agreementOf(models, { balancing, firstSeed: 1, loops: SELECTIONS });
    expect(found.disagreements).toEqual([]);
    expect(found.unsolved.length).toBeLessThanOrEqual(0.01 * SELECTIONS);
  });
});
