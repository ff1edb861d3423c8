/** Single cases of the setpoint where no setting is feasible. */
import { describe, expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import { constantFallback, fallbackOf } from '../../../models/schedule/fallback.ts';
import type { Station } from '../../../models/schedule/phase-duty.ts';
import { planSchedule } from '../../../models/schedule/phase-plan.ts';
import { protectiveSetting } from '../../../models/schedule/protective-setting.ts';
import type { SettingGrid } from '../../../models/schedule/setting-grid.ts';
import type { Criterion } from '../../../models/selection/criterion.ts';
import { expectClose } from '../../expect-close.ts';
import { LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe, pumpModelOf } from '../example-loops.ts';

/** The exact curve 6 m (1 - (Q/10000 L/h)^2), 300 W at full speed. */
const pumpE = pumpModelOf({
  name: 'E',
  headPoints: [0, 2000, 4000, 6000, 8000, 9000].map((flow) => ({
    ...{ flow: flow * LITRE_PER_HOUR, head: 6 * (1 - (flow / 10_000) ** 2), setting: 100 },
  })),
  powerPoints: [{ setting: 100, power: 300 }],
  settings: { min: 30, max: 100, step: 1 },
  standbyPower: 0,
});

const station: Station = { pump: pumpE, count: 1, limits: DEFAULT_LIMITS, elevation: 0 };

/** Cylinder 90 mm, 0.2 m, open 0.3, half clogged: 4653.73 L/h at 0.1524 m/s. */
const screen = { shape: 'cylinder', diameter: 0.09, length: 0.2, openFraction: 0.3, count: 1 } as const;

const loopRequiring = (flow: number, facts: object = {}) =>
  modelOf(
    loopOf(
      { run: [pipe(0.04, 2)], outlet: { name: 'tank', requiredFlow: flow * LITRE_PER_HOUR } },
      { water: { temperature: 20, salinity: 0 }, ...facts },
    ),
  );

const ownOf = (loop: ReturnType<typeof loopRequiring>) => {
  const plan = planSchedule({ phases: [{ name: 'all', from: '00:00', factor: 1 }] }, loop, station);
  const [one] = plan.phases;
  if (one === undefined) throw new Error('no phase');
  return { plan, own: one.own };
};

describe('a setpoint where no setting is feasible', () => {
  // Worked apart: friction by Colebrook and White, intake and exit losses of 0.5 and 1, the curve above.
  it('is the highest within the screen limit', () => {
    const { own, plan } = ownOf(loopRequiring(6000, { intake: { lossCoefficient: 0.5, screen } }));
    expect(own).toMatchObject({ feasible: false, setting: 48, step: 2, limitedBy: ['screen-velocity'] });
    expectClose(own.duty.flow / LITRE_PER_HOUR, 4575.43, { relative: 1e-4 });
    expect(constantFallback(plan)).toEqual({
      ...{ setting: 48, requiredFlowsMet: false, phasesBelowRequired: [] },
    });
  });

  it('is the highest of all where nothing limits it', () => {
    const { own, plan } = ownOf(loopRequiring(20_000));
    expect(own).toMatchObject({
      ...{ feasible: false, setting: 100, reason: 'not-enough-head', step: 2, limitedBy: [] },
    });
    expect(fallbackOf(plan)).toEqual({
      ...{ setting: 100, requiredFlowsMet: false, phasesBelowRequired: ['all'] },
    });
  });

  it('is the lowest with all required flows where only an efficiency is against it', () => {
    const mistyped = pumpModelOf({ ...pumpE.entered, powerPoints: [{ setting: 100, power: 1 }] });
    const loop = loopRequiring(6000);
    const { own } = ownOf(loop);
    const phases = [{ name: 'all', from: '00:00', factor: 1 }];
    const [one] = planSchedule({ phases }, loop, { ...station, pump: mistyped }).phases;
    expect(one?.own).toMatchObject({ feasible: false, reason: 'efficiency-impossible', step: 1 });
    expect(one?.own.setting).toBe(own.setting);
  });

  it('keeps a volume that is out of reach within its greatest flow', () => {
    const volume = { perDay: 500, ceiling: 4000 * LITRE_PER_HOUR, mayStop: false, splits: true };
    const plan = planSchedule(
      { phases: [{ name: 'all', from: '00:00', volume }] },
      loopRequiring(1),
      station,
    );
    const own = plan.phases[0]?.own;
    expect(own).toMatchObject({ feasible: false, reason: 'not-enough-head', step: 2 });
    expect((own?.duty.flow ?? 0) / LITRE_PER_HOUR).toBeLessThanOrEqual(4000);
    const next = plan.phases[0]?.dutyAt((own?.setting ?? 0) + 1).flow ?? 0;
    expect(next / LITRE_PER_HOUR).toBeGreaterThan(4000);
    expect(fallbackOf(plan)).toMatchObject({ phasesBelowRequired: ['all'] });
  });

  it('judges NPSH wherever the pump has points for it', () => {
    const high = loopRequiring(6000, { pumpElevation: 6 });
    const npshPoints = [
      { flow: 0, head: 1 },
      { flow: 20_000 * LITRE_PER_HOUR, head: 9 },
    ];
    const withPoints = { ...station, pump: pumpModelOf({ ...pumpE.entered, npshPoints }) };
    const phases = [{ name: 'all', from: '00:00', factor: 4 }];
    expect(planSchedule({ phases }, high, withPoints).phases[0]?.own).toMatchObject({
      ...{ feasible: false, reason: 'not-enough-head', step: 2, limitedBy: ['npsh'] },
    });
    expect(planSchedule({ phases }, high, station).phases[0]?.own).toMatchObject({ setting: 100 });
  });
});

/** A grid of five settings, by what moves water and what holds at each. */
const gridOf = (moving: string, held: Readonly<Record<string, string>>): SettingGrid => ({
  size: moving.length,
  settingAt: (index) => 20 * (index + 1),
  movesWater: (index) => moving[index] === 'y',
  keeps: (index, { reason }) => held[reason]?.[index] === 'y',
  dutyAt: () => {
    throw new Error('no duty is asked for');
  },
});

const criterion = (reason: Criterion['reason']): Criterion => ({
  ...{ reason, by: null, along: null },
  judge: () => {
    throw new Error('judged by the grid');
  },
});

const served = criterion('not-enough-head');
const upper = [criterion('outlet-above-maximum'), criterion('pump-above-maximum')];

describe('the steps of the rule', () => {
  it.each([
    ['1', 'yyyyy', 'nnyyy', 'yyyyy', 'yyyyn', [2, 1, 'lowest-served', []]],
    ['2', 'yyyyy', 'nnnyy', 'yyynn', 'yyyyn', [2, 2, 'highest-within', ['outlet-above-maximum']]],
    [
      '2, of two limits',
      'yyyyy',
      'nnnny',
      'yynnn',
      'yynnn',
      [1, 2, 'highest-within', ['outlet-above-maximum', 'pump-above-maximum']],
    ],
    ['3', 'yyyyy', 'nnyyy', 'yyyyn', 'nnnnn', [2, 3, 'lowest-served', ['pump-above-maximum']]],
    [
      '4',
      'yyyyy',
      'nnnny',
      'yynnn',
      'nnnnn',
      [1, 4, 'highest-within', ['outlet-above-maximum', 'pump-above-maximum']],
    ],
    [
      '4, the lowest that moves water',
      'nyyyy',
      'nnyyy',
      'ynnnn',
      'ynnnn',
      [1, 4, 'lowest-moving', ['outlet-above-maximum', 'pump-above-maximum']],
    ],
    ['2, where no water moves', 'nnnnn', 'yyyyy', 'nnnnn', 'nnnnn', [4, 2, 'highest-within', []]],
  ] as const)('lead to step %s', (_step, moving, flows, maximum, pump, expected) => {
    const grid = gridOf(moving, {
      ...{ 'not-enough-head': flows, 'outlet-above-maximum': maximum, 'pump-above-maximum': pump },
    });
    const { index, step, choice, limitedBy } = protectiveSetting(grid, { served, upper });
    expect([index, step, choice, limitedBy]).toEqual(expected);
  });

  it('take the highest within the limits where nothing is required', () => {
    const grid = gridOf('yyyyy', { 'outlet-above-maximum': 'yyynn', 'pump-above-maximum': 'yyyyy' });
    expect(protectiveSetting(grid, { served: null, upper })).toMatchObject({ index: 2, step: 2 });
  });
});

describe('the fallback', () => {
  it('is below the highest setting where that breaks a limit in a phase that could keep it', () => {
    const two = modelOf(
      loopOf({
        run: [pipe(0.04, 2)],
        branches: [
          outlet('left', { requiredFlow: 1500 * LITRE_PER_HOUR }),
          outlet('right', { requiredFlow: 1500 * LITRE_PER_HOUR, maximumFlow: 2500 * LITRE_PER_HOUR }),
        ],
      }),
    );
    const phases = [
      { name: 'both', from: '00:00', factor: 1.5 },
      { name: 'one', from: '12:00', factor: 1, openings: { left: 0 } },
    ];
    const plan = planSchedule({ phases }, two, station);
    const [both, one] = plan.phases;
    const highest = Math.max(both?.own.setting ?? 0, one?.own.setting ?? 0);
    const fallback = fallbackOf(plan);
    expect(fallback.setting).toBeLessThan(highest);
    expect(fallback).toMatchObject({ requiredFlowsMet: false, phasesBelowRequired: ['both'] });
    const right = (setting: number) => (one?.dutyAt(setting).outletFlows[1] ?? 0) / LITRE_PER_HOUR;
    expect(right(fallback.setting)).toBeLessThanOrEqual(2500);
    expect(right(fallback.setting + 1)).toBeGreaterThan(2500);
  });
});
