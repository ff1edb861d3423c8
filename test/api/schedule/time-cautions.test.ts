/** The cautions about phases and batteries, each where it applies and not where it does not. */
import { describe, expect, it } from 'vitest';
import { facility } from './facility.ts';

const DAY = { name: 'day', from: '07:00', factor: 1 };

async function codesOf(schedule: object): Promise<readonly string[]> {
  const lab = await facility();
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
    ['battery-as-stated', { phases: [DAY], emergency: { factor: 0.3 } }],
    ['battery-as-stated', { phases: [DAY] }],
    ['phase-infeasible', { phases: [DAY] }],
  ])('do not give %s where it does not', async (code, schedule) => {
    expect(await codesOf(schedule)).not.toContain(code);
  });
});
