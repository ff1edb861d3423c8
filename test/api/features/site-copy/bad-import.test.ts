/** What an import refuses, and that it then stores nothing. */
import { beforeAll, describe, expect, it } from 'vitest';
import { appUnderTest } from '../../app-under-test.ts';
import { changed } from '../../changed.ts';
import { example, sent } from '../../requests.ts';
import { refused } from '../../stocked-app.ts';
import { exported, imported, stockedSite } from './stocked-site.ts';

let copy: { pumps: { id: string }[]; loops: { id: string }[] };

beforeAll(async () => {
  copy = JSON.parse(await exported(await stockedSite()));
});

describe('an import', () => {
  it.each<[string, unknown, string?]>([
    ['/format', 'other'],
    ['/format', undefined],
    ['/formatVersion', 2],
    ['/site', undefined],
    ['/site/currency', 'euro'],
    ['/site/tariff', 'none', '/site/tariff'],
    ['/colour', 'red'],
    ['/pumps', {}],
    ['/pumps/1', 'pump'],
    ['/pumps/1/id', 'a b'],
    ['/pumps/1/id', 7],
    ['/pumps/1/version', 0],
    ['/pumps/1/version', 2 ** 31],
    ['/pumps/1/createdAt', 'yesterday'],
    ['/pumps/1/colour', 'red'],
    ['/pumps/1/headPoints/0/head', -1],
    ['/pumps/1/headPoints', [{ flow: 0, head: 1 }]],
    ['/pumps/1/powerPoints/0/power', 0],
    ['/loops/0/discharge/branches/0/run/0/pipe', 'sch80 7'],
    ['/loops/0/installed/pump', 'none'],
    ['/loops/0/installed/count', 0],
    ['/schedules/0/tariff', 'none'],
    ['/schedules/0/id', 'none'],
    ['/schedules/0/id', undefined, '/schedules/0/id'],
    ['/schedules/0/phases/0/from', '25:00'],
    ['/schedules/0/phases/0/requiredFlows', { nowhere: 1 }],
    ['/units/flow', 'gal/h'],
    ['/units', 'us'],
  ])(
    'is refused with %s %j, at its place, and leaves the site empty',
    async (pointer, value, place = pointer) => {
      const target = await appUnderTest();
      const before = await exported(target);
      const problem = await refused(await imported(target, JSON.stringify(changed(copy, pointer, value))));
      expect(problem.status).toBe(422);
      expect(problem.errors?.map((error) => error.pointer ?? '').some((one) => one.startsWith(place))).toBe(
        true,
      );
      expect(await exported(target)).toBe(before);
    },
  );

  it('is refused where an id is there twice', async () => {
    const pumps = [...copy.pumps, { ...copy.pumps[0], key: null }];
    const problem = await refused(await imported(await appUnderTest(), JSON.stringify({ ...copy, pumps })));
    expect(problem).toMatchObject({ status: 422, errors: [{ pointer: '/pumps/4/id' }] });
  });

  it('of US units is refused where metric ones are in force', async () => {
    const text = await exported(await stockedSite(), 'us');
    const problem = await refused(await imported(await appUnderTest(), text));
    expect(problem.errors?.map(({ pointer }) => pointer)).toContain('/units/flow');
  });

  it('is refused by a site that holds records, which stay', async () => {
    const target = await appUnderTest();
    await target.call('/v1/pumps', sent('POST', example('pump-inline-60.json')));
    const before = await exported(target);
    const problem = await refused(await imported(target, JSON.stringify(copy)));
    expect(problem).toMatchObject({ status: 409, code: 'not-empty' });
    expect(problem.detail).toContain('pumps');
    expect(await exported(target)).toBe(before);
  });

  it('tells no more than a few faults', async () => {
    const pumps = Array.from({ length: 500 }, () => ({}));
    const problem = await refused(await imported(await appUnderTest(), JSON.stringify({ ...copy, pumps })));
    expect(problem.errors?.length).toBeLessThanOrEqual(50);
  });

  it('may not be larger than an export can be', async () => {
    const { call } = await appUnderTest();
    const headers = { 'Content-Type': 'application/json', 'Content-Length': String(64 * 1024 * 1024 + 1) };
    const problem = await refused(await call('/v1/export', { method: 'POST', headers, body: '{}' }));
    expect(problem).toMatchObject({ status: 413, limit: 64 * 1024 * 1024 });
  });

  it('may not hold more records of a kind than an export', async () => {
    const pumps = Array.from({ length: 10_001 }, () => 0);
    const problem = await refused(await imported(await appUnderTest(), JSON.stringify({ ...copy, pumps })));
    expect(problem).toMatchObject({ status: 422, code: 'limit-exceeded', limit: 10_000, actual: 10_001 });
  });
});
