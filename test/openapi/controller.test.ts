/** A round of the controller script: what it asks, what it dials, and what it refuses to start with. */
import { chmodSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type ControllerBench, controllerBench, setpoint } from './controller-bench.ts';

const DEAD = 'http://127.0.0.1:1';

let bench: ControllerBench;
beforeEach(() => {
  bench = controllerBench();
});
afterEach(() => bench.dispose());

describe('a setpoint', () => {
  it('is dialled, and its fallback is remembered for when the service is away', async () => {
    const SERVICE = await bench.saying(setpoint(70));
    expect(await bench.run({ SERVICE })).toMatchObject({ code: 0, applied: ['70'] });
    expect(await bench.run({ SERVICE: DEAD })).toMatchObject({ code: 1, applied: ['70', '60'] });
  });

  it('is asked for once a round, so that all of it is of one moment', async () => {
    const asked: (string | undefined)[] = [];
    const SERVICE = await bench.listening((request, response) => {
      asked.push(request.url);
      response.end(JSON.stringify(setpoint(62.5)));
    });
    expect(await bench.run({ SERVICE })).toMatchObject({ code: 0, applied: ['62.5'] });
    expect(asked).toEqual(['/v1/loops/kelp-flume/setpoint']);
  });

  it('may be written in any way that is JSON, and be long', async () => {
    const outlets = Array.from({ length: 2_000 }, (_, i) => ({ name: `outlet ${i} \u00e9\\"`, setting: i }));
    const text = JSON.stringify(setpoint(70, { outlets }), null, 2);
    expect(await bench.run({ SERVICE: await bench.answering(text) })).toMatchObject({
      code: 0,
      applied: ['70'],
    });
  });

  it.each([
    [62.5, '62.5'],
    [33.3333333333, '33.3333333333'],
    [99.99999999999999, '100'],
    [0.00001, '0.00001'],
  ])('is dialled as a plain decimal: %d', async (setting, text) => {
    const SERVICE = await bench.answering(
      JSON.stringify(setpoint(0)).replace(':0,', `:${setting.toFixed(14)},`),
    );
    expect(await bench.run({ SERVICE })).toMatchObject({ code: 0, applied: [text] });
    expect(await bench.run({ SERVICE, MAX_JUMP: '1' })).toMatchObject({ applied: [text, text], errors: '' });
  });

  it('may come from an address with a slash at its end', async () => {
    const SERVICE = `${await bench.saying(setpoint(70))}/`;
    expect(await bench.run({ SERVICE })).toMatchObject({ code: 0, applied: ['70'] });
  });

  it('is dialled without a fallback too, or with one outside of the limits, which is not remembered', async () => {
    const limits = { MIN: '30', MAX: '80' };
    for (const fallback of [undefined, { setting: 5 }, { setting: '60' }, { setting: 0 }]) {
      const SERVICE = await bench.saying(setpoint(50, { fallback }));
      const ended = await bench.run({ SERVICE, ...limits });
      expect(ended.code).toBe(0);
      expect(ended.errors).toContain('no fallback within 30 to 80');
    }
    expect(await bench.run({ SERVICE: DEAD, ...limits })).toMatchObject({
      code: 1,
      applied: ['50', '50', '50', '50', '55'],
    });
  });
});

describe('an infeasible phase', () => {
  const SUMMARY =
    'Danger: No setting is feasible in phase "day". Set 83 %, the highest within the screen limit.';
  const document = setpoint(83, { feasible: false, reason: 'screen-velocity', step: 2, summary: SUMMARY });

  it('is dialled and ends with 4, with its reason and the sentence of the service in the log', async () => {
    const { code, applied, errors } = await bench.run({ SERVICE: await bench.saying(document) });
    expect([code, applied]).toEqual([4, ['83']]);
    expect(errors).toContain(`infeasible: screen-velocity. ${SUMMARY}\n`);
  });

  it('is followed by the fallback outside of MIN and MAX, and where it would stop the pump below MIN', async () => {
    const SERVICE = await bench.saying(document);
    expect(await bench.run({ SERVICE, MAX: '80' })).toMatchObject({ code: 1, applied: ['55'] });
    const stop = await bench.saying({ ...document, setting: 0 });
    expect(await bench.run({ SERVICE: stop, MIN: '30' })).toMatchObject({ code: 1, applied: ['55', '55'] });
  });
});

describe('the access key', () => {
  const KEY = `lw_abcd1234_${'x'.repeat(43)}`;

  function keyFile(content: string, mode = 0o600): string {
    const path = join(bench.folder, 'key');
    writeFileSync(path, content);
    chmodSync(path, mode);
    return path;
  }

  /** The command lines of all processes, as any user can read them. */
  function commandLines(): string {
    return readdirSync('/proc')
      .filter((name) => /^\d+$/.test(name))
      .map((pid) => {
        try {
          return readFileSync(`/proc/${pid}/cmdline`, 'utf8');
        } catch {
          return '';
        }
      })
      .join('\n');
  }

  it('travels from its file by a header, and stands on no command line', async () => {
    const seen: (string | undefined)[] = [];
    let shown = '';
    const SERVICE = await bench.listening((request, response) => {
      seen.push(request.headers.authorization);
      shown += commandLines();
      response.end(JSON.stringify(setpoint(50)));
    });
    const ended = await bench.run({ SERVICE, KEY_FILE: keyFile(`${KEY}\n`) });
    expect(ended).toMatchObject({ code: 0, applied: ['50'] });
    expect(seen).toEqual([`Bearer ${KEY}`]);
    expect(shown).toContain('curl');
    expect(shown).not.toContain(KEY);
    expect(ended.errors).not.toContain('chmod');
  });

  it('is used, with a warning, from a file that others can read', async () => {
    const SERVICE = await bench.saying(setpoint(50));
    const { code, errors } = await bench.run({ SERVICE, KEY_FILE: keyFile(KEY, 0o644) });
    expect(code).toBe(0);
    expect(errors).toContain(`others can read or write ${join(bench.folder, 'key')}: use chmod 600`);
  });

  it.each(['', 'a key of words', `${KEY}"\nurl = "http://elsewhere`, `${KEY}\r\n`])(
    'that is none leads to the fallback: %j',
    async (content) => {
      const SERVICE = await bench.saying(setpoint(50));
      const ended = await bench.run({ SERVICE, KEY_FILE: keyFile(content) });
      expect(ended).toMatchObject({ code: 1, applied: ['55'] });
    },
  );

  it('that is missing leads to the fallback', async () => {
    const SERVICE = await bench.saying(setpoint(50));
    const { code, applied, errors } = await bench.run({ SERVICE, KEY_FILE: join(bench.folder, 'none') });
    expect([code, applied]).toEqual([1, ['55']]);
    expect(errors).toContain('cannot be read, or holds no access key');
  });

  it('is not taken from the environment', async () => {
    const seen: (string | undefined)[] = [];
    const SERVICE = await bench.listening((request, response) => {
      seen.push(request.headers.authorization);
      response.end(JSON.stringify(setpoint(50)));
    });
    const { code, errors } = await bench.run({ SERVICE, KEY });
    expect([code, seen]).toEqual([0, [undefined]]);
    expect(errors).toContain('KEY_FILE');
    expect(errors).not.toContain(KEY);
  });
});

describe('a variable that is wrong', () => {
  it.each([
    { LOOP: '' },
    { LOOP: 'a/../b' },
    { LOOP: 'kelp flume' },
    { LOOP: 'kelp_flume' },
    { LOOP: 'kelp-flume?at=2026-01-15T12:00:00Z' },
    { LOOP: 'kelp-flume#' },
    { LOOP: '..' },
    { LOOP: 'kélp' },
    { LOOP: 'kelp\nflume' },
    { LOOP: 'a'.repeat(65) },
    { APPLY: '' },
    { STATE: '' },
    { STATE: '/proc/none' },
    { FALLBACK: '' },
    { FALLBACK: '120' },
    { FALLBACK: '-5' },
    { FALLBACK: '0', MIN: '30' },
    { FALLBACK: '0', MAY_STOP: 'no' },
    { MIN: 'x' },
    { MAX: '1e2' },
    { MIN: '60', MAX: '40' },
    { MAX_JUMP: 'x' },
    { MAX_JUMP: '0' },
    { MAY_STOP: 'perhaps' },
    { TIMEOUT: '0' },
    { TIMEOUT: 'soon' },
    { ALARM_AFTER: '0' },
    { ALARM_AFTER: '1.5' },
  ])('ends with 2, and nothing is asked or dialled: %j', async (wrong) => {
    let asked = 0;
    const SERVICE = await bench.listening((_request, response) => {
      asked += 1;
      response.end(JSON.stringify(setpoint(50)));
    });
    const { code, applied, errors } = await bench.run({ SERVICE, ...wrong });
    expect([code, applied, asked]).toEqual([2, [], 0]);
    expect(errors).toContain('nothing is dialled');
  });

  it('is not a key or id of the greatest length', async () => {
    const SERVICE = await bench.saying(setpoint(50));
    for (const LOOP of ['kelp-flume', 'a'.repeat(64), '0198c1f2-7c1a-7b3e-9f00-0123456789ab']) {
      expect((await bench.run({ SERVICE, LOOP })).code).toBe(0);
    }
  });
});
