/** Every saving against two whole selections: one of the loop as it is, one of the loop changed by hand. */
import { describe, expect, it } from 'vitest';
import { type Choice, choose, type Question } from '../../../models/assurance/choose-assured.ts';
import { annualUse } from '../../../models/duty/energy.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { Branch, PipeworkLoop, RunElement } from '../../../models/loop/loop.ts';
import { canChange, changedLoop } from '../../../models/losses/loss-changes.ts';
import { type LossRow, lossRows } from '../../../models/losses/loss-rows.ts';
import { lossSavings, SAVINGS_ROWS, type Savings } from '../../../models/losses/loss-savings.ts';
import { expectClose } from '../../expect-close.ts';
import { randomCase } from '../../random-loop.ts';
import { canister250, kelpFlume } from '../../reference/independent/kelp-flume.ts';
import { canister, loopOf, modelOf, nested, pumpModelOf } from '../example-loops.ts';

const RUNNING = { price: 0.21, hoursPerDay: 24, elevation: 0 };
const LIMITS = { ...DEFAULT_LIMITS, throughSlotVelocity: null };
const candidates = [
  { pump: pumpModelOf(canister250), count: 1 },
  { pump: pumpModelOf(canister), count: 1 },
];
const plain: Question = {
  candidates,
  balancing: 'as-built',
  limits: LIMITS,
  running: RUNNING,
  assurance: null,
};

function chosen(loop: PipeworkLoop, question: Question): Choice {
  const choice = choose(modelOf(loop), question);
  if (!choice.ok) throw new Error(choice.failure.code);
  return choice.value;
}

const bestOf = (choice: Choice) => {
  const [best] = choice.selection.ranking;
  if (best === undefined) throw new Error('a candidate serves');
  return best;
};

function savingsOn(loop: PipeworkLoop, question: Question) {
  const choice = chosen(loop, question);
  const { loop: told } = choice.balanced.sampled;
  const list = lossRows(told, told.system.stateAt(bestOf(choice).duty.flow));
  if (list === null) throw new Error('the pump does work');
  const savings = lossSavings({ model: modelOf(loop), question, choice, rows: list.rows });
  const of = (path: string, kind: LossRow['kind']): Savings => {
    const place = list.rows.findIndex((row) => row.path.join('/') === path && row.kind === kind);
    const found = savings.get(place);
    if (found === undefined) throw new Error(`${path} is not among the dearest`);
    return found;
  };
  return { rows: list.rows, savings, of };
}

const inRoot = (change: (element: RunElement) => RunElement): PipeworkLoop => ({
  ...kelpFlume,
  discharge: { ...kelpFlume.discharge, run: kelpFlume.discharge.run.map(change) },
});
const inSuction = (change: (element: RunElement) => RunElement): PipeworkLoop => ({
  ...kelpFlume,
  suction: kelpFlume.suction.map(change),
});
const branchesOf = ({ branches = [] }: Branch) => branches;
const inBranch = (place: number, change: (branch: Branch) => Branch): PipeworkLoop => ({
  ...kelpFlume,
  discharge: {
    ...kelpFlume.discharge,
    branches: branchesOf(kelpFlume.discharge).map((one, i) => (i === place ? change(one) : one)),
  },
});

interface Edit {
  readonly what: string;
  readonly row: readonly [string, LossRow['kind']];
  readonly change: keyof Savings;
  readonly loop: PipeworkLoop;
}

const EDITS: readonly Edit[] = [
  {
    what: 'a wider pipe',
    row: ['discharge/run/0', 'pipe'],
    change: 'boreUp',
    loop: inRoot((one) => ('pipe' in one ? { ...one, pipe: 'sch80 2' } : one)),
  },
  {
    what: 'a wider suction',
    row: ['suction/0', 'pipe'],
    change: 'boreUp',
    loop: inSuction((one) => ('pipe' in one ? { ...one, pipe: 'sch80 2-1/2' } : one)),
  },
  {
    what: 'no pipe',
    row: ['discharge/run/0', 'pipe'],
    change: 'removed',
    loop: inRoot((one) => ('pipe' in one ? { ...one, length: 0 } : one)),
  },
  {
    what: 'half of two elbows',
    row: ['suction/1', 'fitting'],
    change: 'halved',
    loop: inSuction((one) => ('fitting' in one ? { ...one, count: 1 } : one)),
  },
  {
    what: 'no elbows',
    row: ['suction/1', 'fitting'],
    change: 'removed',
    loop: inSuction((one) => ('fitting' in one ? { lossCoefficient: 0 } : one)),
  },
  {
    what: 'half of a loss',
    row: ['discharge/branches/1/run/0', 'loss'],
    change: 'halved',
    loop: inBranch(1, (branch) => ({ ...branch, run: [{ lossCoefficient: 1 }] })),
  },
  {
    what: 'a better intake',
    row: ['intake', 'intake'],
    change: 'halved',
    loop: { ...kelpFlume, intake: { ...kelpFlume.intake, lossCoefficient: 0.25 } },
  },
  {
    what: 'a nozzle of half the loss',
    row: ['discharge/branches/0/outlet', 'outlet'],
    change: 'halved',
    loop: inBranch(0, ({ outlet, ...branch }) => ({
      ...branch,
      ...(outlet && { outlet: { ...outlet, lossCoefficient: 0.5 } }),
    })),
  },
  {
    what: 'a split without loss',
    row: ['discharge/branches/1', 'tee-branch'],
    change: 'removed',
    loop: { ...kelpFlume, discharge: { ...kelpFlume.discharge, split: undefined } },
  },
];

const QUESTIONS: readonly (readonly [string, Question])[] = [
  ['as built', plain],
  ['trimmed', { ...plain, balancing: 'trimmed' }],
  ['with a grade', { ...plain, assurance: { grade: '2B' } }],
  ['with more friction, trimmed', { ...plain, balancing: 'trimmed', assurance: { frictionMultiplier: 1.3 } }],
];

describe.each(QUESTIONS)('a saving %s', (name, question) => {
  const { of } = savingsOn(kelpFlume, question);
  const before = bestOf(chosen(kelpFlume, question));
  // A K in place of a fitting, or no length in place of a pipe, is multiplied alike: all edits can be asked for.
  it.each(EDITS)('of $what is the difference of two whole selections', ({ row, change, loop }) => {
    const after = bestOf(chosen(loop, question));
    const grid = of(...row)[change]?.grid;
    expectClose(grid?.annualEnergy ?? Number.NaN, before.annualEnergy - after.annualEnergy, {
      absolute: 1e-8 * before.annualEnergy,
    });
    expectClose(grid?.annualCost ?? Number.NaN, (before.annualCost ?? 0) - (after.annualCost ?? 0), {
      absolute: 1e-8 * (before.annualCost ?? 0),
    });
    expect(grid?.setting, name).toBe(after.duty.setting);
    expect(grid?.candidate).toBe(after.candidate);
  });

  it.each(EDITS)('of $what goes on between the steps of the grid', ({ row, change, loop }) => {
    // Steps of 0.01 % stand for no steps: a hundredth of a step moves a year's energy by less than 0.1 %.
    const fine = {
      ...question,
      candidates: candidates.map(({ pump, count }) => ({
        pump: { ...pump, entered: { ...pump.entered, settings: { min: 50, max: 100, step: 0.01 } } },
        count,
      })),
    };
    const [less, more] = [bestOf(chosen(loop, fine)), bestOf(chosen(kelpFlume, fine))];
    const saving = of(...row)[change]?.continuous;
    expectClose(saving?.setting ?? 0, less.duty.setting, { absolute: 0.0101 });
    expectClose(saving?.annualEnergy ?? 0, more.annualEnergy - less.annualEnergy, {
      absolute: 1e-3 * more.annualEnergy,
    });
  });
});

describe('the rows that are looked into', () => {
  it('are the ten that take most of those that can change', () => {
    const { rows, savings } = savingsOn(loopOf(withRequirements(nested(12))), plain);
    expect(savings.size).toBe(SAVINGS_ROWS);
    const least = Math.min(...[...savings.keys()].map((place) => rows[place]?.share ?? Number.NaN));
    for (const [place, row] of rows.entries()) {
      if (!savings.has(place) && canChange(row)) expect(row.share).toBeLessThanOrEqual(least);
    }
  });

  it('offer each kind the changes that say something of it', () => {
    const { of } = savingsOn(kelpFlume, plain);
    expect(of('discharge/run/0', 'pipe').halved).toBeNull();
    expect(of('suction/1', 'fitting').boreUp).toBeNull();
    expect(of('discharge/branches/0/outlet', 'outlet').removed).toBeNull();
    // A pipe by its bore alone has no series.
    expect(of('discharge/branches/0/run/0', 'pipe').boreUp).toBeNull();
  });

  it('leave lifts, trims and system curves alone', () => {
    const model = modelOf(kelpFlume);
    for (const kind of ['lift', 'trim', 'system-curve'] as const) {
      const row = { path: [], kind, name: null, bore: null, flow: 1, head: 1, power: 1, share: 1 };
      expect(changedLoop(model, row, 'removed')).toBeNull();
      expect(canChange(row)).toBe(false);
    }
  });

  it('say that nothing would serve where a smaller loss lifts an outlet above its maximum', () => {
    const tight = inBranch(1, (branch) => ({
      ...branch,
      branches: branchesOf(branch).map(({ outlet, ...rest }) => ({
        ...rest,
        ...(outlet && { outlet: { ...outlet, maximumFlow: 1.02 * 2252.34 * (1 / 3.6e6) } }),
      })),
    }));
    const one = { ...plain, candidates: candidates.slice(0, 1) };
    const saving = savingsOn(tight, one).of('discharge/branches/1/run/0', 'loss').removed;
    expect(saving).toEqual({ grid: null, continuous: null });
  });

  it('have no money without a price', () => {
    const { of } = savingsOn(kelpFlume, { ...plain, running: { ...RUNNING, price: null } });
    expect(of('suction/1', 'fitting').removed?.grid?.annualCost).toBeNull();
    expect(of('suction/1', 'fitting').removed?.grid?.annualEnergy).toBeGreaterThan(0);
  });

  it('save nothing on a branch that trims bring level in any case', () => {
    const { of } = savingsOn(kelpFlume, { ...plain, balancing: 'trimmed' });
    const saving = of('discharge/branches/1/run/0', 'loss').halved;
    expect(saving?.grid?.annualEnergy).toBe(0);
    expect(saving?.continuous?.annualEnergy).toBe(0);
  });
});

describe('a smaller loss', () => {
  it('never costs more trimmed: invented loops', () => {
    let savings = 0;
    for (let seed = 700; seed < 708; seed += 1) {
      const { loop, pump, count } = randomCase({ seed, everyOutlet: true });
      const { flowLimits: _, ...free } = pump;
      const limits = { ...LIMITS, allowExtrapolation: true, maximumEfficiency: 1e9 };
      const model = pumpModelOf(free);
      if (model.fit.headCurve.drooping || model.fit.powerLaw.flowTerms.length > 0) continue;
      const question: Question = {
        ...plain,
        limits,
        balancing: 'trimmed',
        candidates: [{ pump: model, count }],
      };
      const choice = chosen(loop, question);
      if (choice.selection.ranking.length === 0) continue;
      for (const { halved, removed } of savingsOn(loop, question).savings.values()) {
        for (const grid of [halved?.grid, removed?.grid]) {
          if (grid === null || grid === undefined) continue;
          expect(grid.annualEnergy).toBeGreaterThanOrEqual(0);
          savings += 1;
        }
      }
    }
    expect(savings).toBeGreaterThan(10);
  });

  it('is told in the same money as a year', () => {
    const { of } = savingsOn(kelpFlume, plain);
    const grid = of('suction/1', 'fitting').removed?.grid;
    const perHour = annualUse({ power: 1, standbyPower: 0, hoursPerDay: 24, price: RUNNING.price });
    const price = (perHour.annualCost ?? 0) / perHour.annualEnergy;
    expectClose(grid?.annualCost ?? 0, price * (grid?.annualEnergy ?? 0), { relative: 1e-9 });
  });
});

function withRequirements(branch: Branch): Branch {
  return {
    ...branch,
    ...(branch.outlet && { outlet: { ...branch.outlet, requiredFlow: 1e-5 } }),
    ...(branch.branches && { branches: branch.branches.map(withRequirements) }),
  };
}
