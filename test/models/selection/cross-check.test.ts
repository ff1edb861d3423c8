/** Selections of invented loops against a solution of its own algorithms: nested bisection and a scan of every setting. */
import { describe, expect, it } from 'vitest';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { Branch, PipeworkLoop, RunElement } from '../../../models/loop/loop.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { gridSize, settingAt } from '../../../models/pump/settings-grid.ts';
import { balancedLoop } from '../../../models/selection/balanced-loop.ts';
import { criteriaFor } from '../../../models/selection/criteria.ts';
import { select } from '../../../models/selection/select.ts';
import { expectClose } from '../../expect-close.ts';
import { plainPipework } from '../../random/plain-pipework.ts';
import { type RandomCase, randomCase } from '../../random-loop.ts';
import { standardBore } from '../../reference/independent/bore.ts';
import { type Duty, dutyOf, fitPump } from '../../reference/independent/duty.ts';
import { systemOf } from '../../reference/independent/flows.ts';
import { circuitFor, select as selectApart } from '../../reference/independent/selection.ts';
import { density } from '../../reference/independent/water.ts';
import { modelOf, pumpModelOf } from '../example-loops.ts';

type Balancing = 'as-built' | 'trimmed';

/** The tables' bores are stated, so that both sides compute with the same ones. */
const stated = (element: RunElement): RunElement =>
  'pipe' in element && typeof element.pipe === 'string'
    ? { pipe: { insideDiameter: standardBore(element.pipe) }, length: element.length }
    : element;

const withStatedBores = (branch: Branch): Branch => ({
  ...branch,
  run: branch.run.map(stated),
  ...(branch.branches === undefined ? {} : { branches: branch.branches.map(withStatedBores) }),
});

function caseOf(seed: number, balancing: Balancing): RandomCase {
  const found = randomCase({ seed, everyOutlet: balancing === 'trimmed' });
  const { loop } = found;
  const bored: PipeworkLoop = {
    ...loop,
    suction: loop.suction.map(stated),
    discharge: withStatedBores(loop.discharge),
  };
  // This solution knows none of the rules of one-way runs, outlets in air, steps of bore and reducing tees.
  return { ...found, loop: plainPipework(bored) };
}

function balanced(loop: PipeworkLoop, balancing: Balancing) {
  const ready = balancedLoop(modelOf(loop), balancing);
  if (!ready.ok) throw new Error(JSON.stringify(ready.failure));
  return ready.value.sampled;
}

/** Both sides' duties agree; outlets that get next to nothing are compared with the total. */
function expectSameDuty(
  actual: { flow: number; head: number; power: number; outletFlows: readonly number[] },
  expected: Duty,
) {
  expectClose(actual.flow, expected.flow, { relative: 1e-3, absolute: 1e-12 });
  expectClose(actual.head, expected.head, { relative: 2e-3 });
  expectClose(actual.power, expected.power, { relative: 2e-3 });
  for (const [index, outlet] of expected.outlets.entries()) {
    const flow = actual.outletFlows[index] ?? Number.NaN;
    expectClose(flow, outlet.flow, { relative: 1e-3, absolute: 1e-6 * expected.flow + 1e-12 });
  }
}

const range = (from: number, count: number) => Array.from({ length: count }, (_, index) => from + index);
const running = { price: 0.2, hoursPerDay: 20, elevation: 0 };

describe.each(['as-built', 'trimmed'] as const)('invented loops %s', (balancing) => {
  it.each(range(1, 4))('take the setting and figures of a full scan (seed %d)', (seed) => {
    const { loop, pump, count } = caseOf(seed, balancing);
    const question = { loop, pump, count, balancing, price: running.price, hoursPerDay: running.hoursPerDay };
    const apart = selectApart(question);
    const sampled = balanced(loop, balancing);
    const candidates = [{ pump: pumpModelOf(pump), count }];
    const { ranking, rejected } = select({ sampled, candidates, limits: DEFAULT_LIMITS, running });
    const [best] = ranking;
    if (!apart.feasible) {
      const failing = rejected[0]?.outcome.failing.map(({ reason }) => reason) ?? [];
      expect(failing.length > 0 ? failing : ['no-setting']).toEqual(apart.reasons);
      return;
    }
    expect(best?.duty.setting).toBe(apart.choice.duty.setting);
    if (best === undefined) throw new Error('no candidate qualifies');
    expectSameDuty(best.duty, apart.choice.duty);
    expectClose(best.annualCost ?? Number.NaN, apart.choice.annualCost, { relative: 2e-3 });
  });

  it.each(range(100, 16))('land where nested bisection says (seed %d)', (seed) => {
    const { loop, pump, count } = caseOf(seed, balancing);
    const fitted = fitPump(pump);
    if (fitted === undefined) throw new Error('the pump has no curve');
    const system = systemOf(circuitFor(loop, balancing));
    const sampled = balanced(loop, balancing);
    const setting = settingAt(pump.settings, Math.floor(0.6 * gridSize(pump.settings)));
    const expected = dutyOf(system, { fitted, count, setting }, density(loop.water));
    const duty = dutyPoint(sampled.loop, pumpAtSetting(pumpModelOf(pump), { setting, count }));
    expect(duty.deadHead).toBe(expected.deadHead);
    expectSameDuty(duty, expected);
  });

  it.each(range(200, 16))(
    'take the first grid setting whose exact duty meets every criterion (seed %d)',
    (seed) => {
      const { loop, pump, count } = caseOf(seed, balancing);
      const sampled = balanced(loop, balancing);
      const candidate = { pump: pumpModelOf(pump), count };
      const { ranking, rejected } = select({
        sampled,
        candidates: [candidate],
        limits: DEFAULT_LIMITS,
        running,
      });
      const context = { loop: sampled.loop, pump: candidate.pump, limits: DEFAULT_LIMITS, elevation: 0 };
      const criteria = criteriaFor(context);
      const judged = range(0, gridSize(pump.settings)).map((index) => {
        const at = pumpAtSetting(candidate.pump, { setting: settingAt(pump.settings, index), count });
        const duty = dutyPoint(sampled.loop, at);
        return { setting: duty.setting, held: criteria.map((one) => one.judge(duty).clearance >= 0) };
      });
      const first = judged.find(({ held }) => held.every((one) => one));
      expect(ranking[0]?.duty.setting).toBe(first?.setting);
      if (first !== undefined) return;
      const nowhere = criteria.filter((_, c) => judged.every(({ held }) => held[c] === false));
      expect(rejected[0]?.outcome.failing.map(({ reason }) => reason)).toEqual(
        nowhere.map(({ reason }) => reason),
      );
    },
  );
});
