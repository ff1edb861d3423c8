/** Whether a pump follows its setpoint, by a reading. Thresholds are those of a stopped pump and 20 % (common practice). */
import { describe, expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { planSchedule } from '../../../models/schedule/phase-plan.ts';
import { readingState } from '../../../models/schedule/reading-state.ts';
import type { Step } from '../../../models/schedule/setpoints.ts';
import { kelpFlume } from '../../reference/independent/kelp-flume.ts';
import { canister, modelOf, pumpModelOf } from '../example-loops.ts';

const station = { pump: pumpModelOf(canister), count: 1, limits: DEFAULT_LIMITS, elevation: 0 };
const plan = planSchedule(
  { phases: [{ name: 'all', from: '00:00', factor: 1 }] },
  modelOf(kelpFlume),
  station,
);
const { flow, power, head } = plan.dutyAt(70);
const step = (setting: number): Step => ({
  ...{ phase: 0, setting, part: 'own', feasible: true, from: 0, until: 1 },
});
const stateOf = (reading: Omit<Reading, 'time'>, due = 70) =>
  readingState(plan, { time: 0, ...reading }, step(due)).state;

describe('a reading of a pump that is set to 70 %', () => {
  it.each([
    ['stopped', { setting: 70, power: 0.5 }],
    ['stopped', { setting: 70, power: 0.05 * power }],
    ['differs', { setting: 70, power: 0.06 * power }],
    ['stopped', { setting: 70, power, flow: 0.019 * flow }],
    ['differs', { setting: 70, power, flow: 0.021 * flow }],
    // Against a closed valve the pump turns: its head shows it.
    ['differs', { setting: 70, power, flow: 0, head }],
    ['stopped', { setting: 70, flow: 0, head: 0 }],
    ['other-setting', { setting: 60, power: 55 }],
    ['stopped', { setting: 60, power: 0.5 }],
    ['other-setting', { setting: 0, power: 0.5 }],
    ['differs', { setting: 70, power: 1.21 * power }],
    ['differs', { setting: 70, power: 0.79 * power, flow }],
    ['as-set', { setting: 70, power: 1.19 * power, flow: 0.81 * flow }],
    ['as-set', { setting: 70, head }],
  ] as const)('is %s: %j', (state, reading) => {
    expect(stateOf(reading)).toBe(state);
  });

  it('at a setting that the pump does not offer is of another setting', () => {
    expect(stateOf({ setting: 20, power: 0.5 })).toBe('other-setting');
  });

  it('takes one and a half standby powers as stopped, where these are more than 5 % of the predicted', () => {
    const idle = { ...station, pump: pumpModelOf({ ...canister, standbyPower: 8 }) };
    const phases = [{ name: 'all', from: '00:00', factor: 1 }];
    const other = planSchedule({ phases }, modelOf(kelpFlume), idle);
    const of = (watts: number) => readingState(other, { time: 0, setting: 70, power: watts }, step(70)).state;
    expect([of(12), of(12.1)]).toEqual(['stopped', 'differs']);
  });

  it('of a pump that should be stopped differs where it draws more than its standby', () => {
    expect(stateOf({ setting: 0, power: 3 }, 0)).toBe('as-set');
    expect(stateOf({ setting: 0, power: 80 }, 0)).toBe('differs');
  });
});
