/** How the controller script gets from one setting to another: steps, stops, starts. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type ControllerBench, controllerBench, setpoint, type Variables } from './controller-bench.ts';

const DEAD = 'http://127.0.0.1:1';

let bench: ControllerBench;
beforeEach(() => {
  bench = controllerBench();
});
afterEach(() => bench.dispose());

/** Rounds against a service that says these settings, one after another; the exit code of each. */
async function rounds(settings: readonly number[], variables: Variables): Promise<readonly number[]> {
  const codes: number[] = [];
  for (const setting of settings) {
    codes.push((await bench.run({ SERVICE: await bench.saying(setpoint(setting)), ...variables })).code);
  }
  return codes;
}

const times = (count: number, setting: number): readonly number[] => Array<number>(count).fill(setting);

describe('a change above MAX_JUMP', () => {
  it('is made in steps of it, up and down, one a round, and arrives', async () => {
    const MAX_JUMP = '15';
    expect(await rounds([40, ...times(4, 100)], { MAX_JUMP })).toEqual(times(5, 0));
    expect(await rounds(times(5, 30), { MAX_JUMP })).toEqual(times(5, 0));
    expect(bench.lines('applied')).toEqual(['40', '55', '70', '85', '100', '85', '70', '55', '40', '30']);
  });

  it('is said in the log, with where it leads', async () => {
    await rounds([40], {});
    const SERVICE = await bench.saying(setpoint(71));
    const { errors } = await bench.run({ SERVICE, MAX_JUMP: '15' });
    expect(errors).toContain('from 40 to 71 in steps of 15: now 55\n');
  });

  it('follows a setpoint that changes on the way', async () => {
    await rounds([40, 100, 30, 62.5, 62.5], { MAX_JUMP: '12.5' });
    expect(bench.lines('applied')).toEqual(['40', '52.5', '40', '52.5', '62.5']);
  });

  it('is one to the fallback too, and leads away from it again', async () => {
    const MAX_JUMP = '15';
    await rounds([30], { MAX_JUMP });
    expect((await bench.run({ SERVICE: DEAD, MAX_JUMP })).code).toBe(1);
    expect((await bench.run({ SERVICE: DEAD, MAX_JUMP })).code).toBe(1);
    expect(await rounds(times(3, 90), { MAX_JUMP })).toEqual([0, 0, 0]);
    expect(bench.lines('applied')).toEqual(['30', '45', '60', '75', '90', '90']);
  });

  it('ends with 4 where the phase is infeasible', async () => {
    await rounds([40], {});
    const SERVICE = await bench.saying(setpoint(90, { feasible: false, reason: 'npsh' }));
    expect(await bench.run({ SERVICE, MAX_JUMP: '20' })).toMatchObject({ code: 4, applied: ['40', '60'] });
  });

  it('never leads outside of MIN and MAX, where these have changed', async () => {
    await rounds([10, 95], { MAX_JUMP: '100' });
    await rounds(times(3, 40), { MAX_JUMP: '5', MIN: '30', MAX: '60' });
    expect(bench.lines('applied')).toEqual(['10', '95', '60', '55', '50']);
    await rounds([10], { MAX_JUMP: '100' });
    await rounds(times(3, 40), { MAX_JUMP: '5', MIN: '30', MAX: '60' });
    expect(bench.lines('applied').slice(-4)).toEqual(['10', '30', '35', '40']);
  });

  it('begins at the setting that was dialled last, not at one that APPLY refused', async () => {
    await rounds([40], {});
    const SERVICE = await bench.saying(setpoint(90));
    expect((await bench.run({ SERVICE, APPLY: 'false', MAX_JUMP: '20' })).code).toBe(3);
    expect((await bench.run({ SERVICE, MAX_JUMP: '20' })).applied).toEqual(['40', '60']);
  });
});

describe('a stop', () => {
  it('is dialled where the schedule lets the pump stop', async () => {
    expect(await rounds([70, 0, 0, 70], {})).toEqual([0, 0, 0, 0]);
    expect(bench.lines('applied')).toEqual(['70', '0', '0', '70']);
  });

  it('is reached and left by steps over the settings that the pump runs at, MIN to MAX', async () => {
    const limits = { MIN: '30', MAX: '90', MAX_JUMP: '15' };
    expect(await rounds([70, ...times(4, 0)], limits)).toEqual(times(5, 0));
    expect(await rounds(times(4, 70), limits)).toEqual(times(4, 0));
    expect(bench.lines('applied')).toEqual(['70', '55', '40', '30', '0', '30', '45', '60', '70']);
  });

  it.each(['0', '30'])('is not dialled where the pump may not stop, with a MIN of %s', async (MIN) => {
    expect(await rounds([70, 0], { MIN, MAY_STOP: 'no' })).toEqual([0, 1]);
    expect(bench.lines('applied')).toEqual(['70', '60']);
  });

  it('is never the fallback below MIN', async () => {
    const SERVICE = await bench.saying(setpoint(0, { fallback: { setting: 0 } }));
    await bench.run({ SERVICE, MIN: '30' });
    expect((await bench.run({ SERVICE: DEAD, MIN: '30' })).applied).toEqual(['0', '55']);
  });

  it('ends although APPLY refuses the settings that the pump does not start at', async () => {
    const APPLY = bench.command(
      'at-least-30',
      `[ "$1" -eq 0 ] || [ "$1" -ge 30 ] || exit 1\nprintf '%s\\n' "$1" >>'${bench.folder}/applied'`,
    );
    const variables = { APPLY, MAX_JUMP: '12' };
    expect(await rounds([0, ...times(6, 60)], variables)).toEqual([0, 3, 3, 0, 0, 0, 0]);
    expect(bench.lines('applied')).toEqual(['0', '36', '48', '60', '60']);
  });
});
