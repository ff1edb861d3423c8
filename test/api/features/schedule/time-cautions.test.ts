/** The cautions about phases and batteries, each where it applies and not where it does not. */
import { describe, expect, it } from 'vitest';
import { exampleJson } from '../../../openapi/read-example.ts';
import { facility } from './facility.ts';

const DAY = { name: 'day', from: '07:00', factor: 1 };

const VOLUME = { phases: [{ name: 'all', from: '00:00', dailyVolume: { volume: 100_000 } }] };

async function codesOf(schedule: object, step = 1): Promise<readonly string[]> {
  const lab = await facility();
  if (step !== 1) {
    const pump = { ...exampleJson('pump-canister-250.json'), settings: { min: 30, max: 100, step } };
    const path = `/v1/pumps/${lab.pump}`;
    expect((await lab.send('PUT', path, pump, { 'if-match': '*' })).status).toBe(200);
  }
  const answer = await lab.send('PUT', `/v1/loops/${lab.loop}/schedule`, schedule);
  expect(answer.status).toBe(201);
  return (await answer.json()).cautions.map(({ code }: { code: string }) => code);
}

describe('the cautions of a schedule', () => {
  it.each([
    ['battery-as-stated', { phases: [DAY], emergency: { factor: 0.3, batteryEnergy: 1.2 } }],
    ['phase-infeasible', { phases: [{ ...DAY, factor: 5 }] }],
  ])('give %s where it applies', async (code, schedule) => {
    expect(await codesOf(schedule)).toContain(code);
  });

  it.each([
    [1, false],
    [0.07, false],
    [0.06, true],
  ])('of a volume among settings %d %% apart tell that some are left out: %s', async (step, isTold) => {
    expect((await codesOf(VOLUME, step)).includes('settings-thinned')).toBe(isTold);
    expect(await codesOf({ phases: [DAY] }, step)).not.toContain('settings-thinned');
  });

  it.each([
    ['battery-as-stated', { phases: [DAY], emergency: { factor: 0.3 } }],
    ['battery-as-stated', { phases: [DAY] }],
    ['phase-infeasible', { phases: [DAY] }],
  ])('do not give %s where it does not', async (code, schedule) => {
    expect(await codesOf(schedule)).not.toContain(code);
  });
});
