/** When the controller script calls for help. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type ControllerBench, controllerBench, setpoint, type Variables } from './controller-bench.ts';

const DEAD = 'http://127.0.0.1:1';

let bench: ControllerBench;
beforeEach(() => {
  bench = controllerBench();
});
afterEach(() => bench.dispose());

const alarm = (): string => bench.command('alarm', `printf '%s\\n' "$*" >>'${bench.folder}/alarms'`);
const alarms = (): readonly string[] => bench.lines('alarms');

async function rounds(count: number, variables: Variables): Promise<void> {
  for (let round = 0; round < count; round += 1) await bench.run({ ALARM_AFTER: '3', ...variables });
}

describe('rounds without success', () => {
  it('call ALARM once they are enough, once, with the loop, their number and the last cause', async () => {
    const ALARM = alarm();
    await rounds(2, { SERVICE: DEAD, ALARM });
    expect(alarms()).toEqual([]);
    await rounds(3, { SERVICE: DEAD, ALARM });
    expect(alarms()).toEqual([
      'Loop kelp-flume: rounds without success: 3. The last: no whole answer from http://127.0.0.1:1',
    ]);
  });

  it('are counted anew after a success, and then call again', async () => {
    const ALARM = alarm();
    const SERVICE = await bench.saying(setpoint(70));
    await rounds(2, { SERVICE: DEAD, ALARM });
    await rounds(1, { SERVICE, ALARM });
    await rounds(2, { SERVICE: DEAD, ALARM });
    expect(alarms()).toEqual([]);
    await rounds(1, { SERVICE: DEAD, ALARM });
    await rounds(1, { SERVICE, ALARM });
    await rounds(3, { SERVICE: DEAD, ALARM });
    expect(alarms()).toHaveLength(2);
  });

  it.each<[string, (there: ControllerBench) => Promise<Variables>, string]>([
    [
      'an infeasible phase',
      async (there) => ({ SERVICE: await there.saying(setpoint(80, { feasible: false, reason: 'npsh' })) }),
      'infeasible: npsh',
    ],
    [
      'APPLY',
      async (there) => ({ SERVICE: await there.saying(setpoint(80)), APPLY: 'false' }),
      'APPLY failed at setting 80',
    ],
    ['a wrong variable', async () => ({ LOOP: 'a/../b' }), 'LOOP must be'],
  ])('are those of %s too', async (_what, variables, cause) => {
    await rounds(3, { ALARM: alarm(), ...(await variables(bench)) });
    expect(alarms()).toHaveLength(1);
    expect(alarms()[0]).toContain(cause);
  });

  it('call in the first round where they cannot be counted', async () => {
    const ALARM = alarm();
    const STATE = '/proc/self';
    await rounds(1, { SERVICE: DEAD, ALARM, STATE });
    expect(alarms()).toHaveLength(1);
  });
});

describe('an ALARM that', () => {
  it.each([
    ['fails', 'exit 1'],
    ['hangs', 'sleep 300'],
    ['is not there', ''],
  ])('%s changes neither setting nor exit code, and is called again', async (_what, script) => {
    const called = `echo called >>'${bench.folder}/alarms'\n${script}`;
    const ALARM = script === '' ? `${bench.folder}/nothing` : bench.command('alarm', called);
    const variables = { SERVICE: DEAD, ALARM, ALARM_AFTER: '1', TIMEOUT: '1' };
    const first = await bench.run(variables);
    const second = await bench.run(variables);
    expect([first.code, second.code, second.applied]).toEqual([1, 1, ['55', '55']]);
    expect(second.errors).toContain('ALARM failed');
    expect(alarms()).toHaveLength(script === '' ? 0 : 2);
  });
});
