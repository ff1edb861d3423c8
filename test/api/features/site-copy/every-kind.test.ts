/** Every kind of record goes out with a site and comes in again. */
import { beforeAll, describe, expect, it } from 'vitest';
import { appUnderTest } from '../../app-under-test.ts';
import { changed } from '../../changed.ts';
import { documentValidator } from '../../document-validator.ts';
import { type Json, jsonOf } from '../../requests.ts';
import { refused } from '../../stocked-app.ts';
import { furnishedSite } from './furnished-site.ts';
import { exported, imported, type StockedSite } from './stocked-site.ts';

const KINDS = [
  'tariffs',
  'pumps',
  'loops',
  'schedules',
  'comparisons',
  'upgradePlans',
  'maintenanceTasks',
  'completions',
  'calibrations',
  'baselines',
  'readings',
] as const;

/** The curves that a calibration keeps are those fitted anew to points that were written in other units: alike to 1e-14. */
const withoutFits = (text: string): unknown =>
  JSON.parse(text, (name, value) => (name === 'fit' ? undefined : value));

let source: StockedSite;
let copy: Record<(typeof KINDS)[number], Json[]>;

beforeAll(async () => {
  source = await furnishedSite();
  copy = JSON.parse(await exported(source));
});

describe('an export', () => {
  it('has every kind of record, each as the document describes it', async () => {
    for (const kind of KINDS) expect(copy[kind].length, kind).toBeGreaterThan(0);
    const check = await documentValidator(source);
    expect(check({ path: '/v1/export', method: 'get', status: 200 }, copy)).toBe('');
  });

  it.each(['metric', 'us'])('is the same after a round trip, in %s units', async (units) => {
    const text = await exported(source, units);
    const target = await appUnderTest();
    const response = await imported(target, text, units);
    const said = await response.text();
    expect(response.status, said).toBe(201);
    const counts = Object.fromEntries(KINDS.map((kind) => [kind, copy[kind].length]));
    const readings = copy.readings.reduce(
      (sum, { readings: list }) => sum + (Array.isArray(list) ? list.length : Number.NaN),
      0,
    );
    expect(JSON.parse(said)).toEqual({ counts: { ...counts, readings } });
    expect(withoutFits(await exported(target, units))).toEqual(withoutFits(text));
    if (units === 'metric') expect(await exported(target, units)).toBe(text);
  });

  it('leaves readings out where it is asked to', async () => {
    const response = await source.call('/v1/export?exclude=readings');
    expect(await response.json()).toEqual({ ...copy, readings: [] });
  });

  it('leaves out several kinds, and imports the rest', async () => {
    const response = await source.call('/v1/export?exclude=readings,calibrations,schedules');
    const less: unknown = await response.json();
    expect(less).toEqual({ ...copy, readings: [], calibrations: [], schedules: [] });
    await imported(await appUnderTest(), JSON.stringify(less));
  });

  it.each(['', 'loops', 'readings,loops', 'readings,', 'false'])(
    'refuses to leave out "%s"',
    async (kinds) => {
      const { status, errors } = await refused(await source.call(`/v1/export?exclude=${kinds}`));
      expect([status, errors?.[0]?.parameter]).toEqual([422, 'exclude']);
    },
  );
});

describe('what was imported', () => {
  it('answers as the site it came from: calibrated loops, checks, plans, comparisons, readings', async () => {
    const target = await appUnderTest();
    await imported(target, JSON.stringify(copy));
    const [loop] = source.loopIds;
    const paths = [
      `/v1/loops/${loop}/recommendation`,
      `/v1/loops/${loop}/duty-point`,
      `/v1/loops/${loop}/readings`,
      `/v1/loops/${loop}/condition`,
      `/v1/comparisons/${copy.comparisons[0]?.id}`,
      '/v1/comparisons',
      `/v1/upgrade-plans/${copy.upgradePlans[0]?.id}`,
      '/v1/upgrade-plans',
      '/v1/maintenance-tasks',
      `/v1/maintenance-tasks/${copy.maintenanceTasks[0]?.id}/completions`,
    ];
    for (const path of paths) {
      const [before, after] = await Promise.all([source.call(path), target.call(path)]);
      expect(after.status, path).toBe(200);
      expect(await after.json(), path).toEqual(await before.json());
    }
  });

  it('goes by its calibration still, when it came in the other units', async () => {
    const target = await appUnderTest();
    await imported(target, await exported(source, 'us'), 'us');
    const path = `/v1/loops/${source.loopIds[0]}/duty-point?setting=70`;
    const [before, after] = await Promise.all([source.call(path), target.call(path)]);
    expect(await after.json()).toEqual(await before.json());
  });
});

describe('an import', () => {
  it.each<[string, unknown, string?]>([
    ['/comparisons/0/document', {}],
    ['/comparisons/0/document/figures/options', 'none', '/comparisons/0/document'],
    ['/comparisons/0/document/figures/options/0/presentValue', null, '/comparisons/0/document'],
    ['/comparisons/0/document/sources/loops', 7, '/comparisons/0/document'],
    ['/upgradePlans/0/document', { name: 'x' }],
    ['/upgradePlans/0/document/plan/plan/items', [{ candidate: 99, year: 1 }], '/upgradePlans/0/document'],
    ['/upgradePlans/0/document/question/candidates', null, '/upgradePlans/0/document'],
    ['/maintenanceTasks/0/loop', 'none'],
    ['/maintenanceTasks/0/every', 'P1X'],
    ['/completions/0/task', 'none'],
    ['/completions/0/day', '2026-02-30'],
    ['/calibrations/0/loop', 'none'],
    ['/calibrations/0/calibration/factors/friction', 0],
    ['/calibrations/0/calibration/parameters', [{}]],
    ['/baselines/0/loop', 'none'],
    ['/baselines/0/requestedFrom', 'yesterday'],
    ['/readings/0/loop', 'none'],
    ['/readings/0/readings/1/time', '2020-01-01T00:00:00Z'],
    ['/readings/0/readings/0/flow', -1],
    ['/readings/0/readings/8/time', '2090-01-01T00:00:00Z'],
  ])('is refused with %s %j, and stores nothing', async (pointer, value, place = pointer) => {
    const target = await appUnderTest();
    const before = await exported(target);
    const problem = await refused(await imported(target, JSON.stringify(changed(copy, pointer, value))));
    expect(problem.status).toBe(422);
    expect(problem.errors?.some((error) => error.pointer?.startsWith(place))).toBe(true);
    expect(await exported(target)).toBe(before);
  });

  it.each(['completions', 'calibrations', 'baselines', 'maintenanceTasks'] as const)(
    'is refused with one of %s twice',
    async (kind) => {
      const twice = { ...copy, [kind]: [...copy[kind], copy[kind][0]] };
      const problem = await refused(await imported(await appUnderTest(), JSON.stringify(twice)));
      expect(
        problem.errors?.some(({ pointer }) => pointer?.startsWith(`/${kind}/${copy[kind].length}`)),
      ).toBe(true);
    },
  );

  it('of anything at all is answered by the service, never by a fault of it', async () => {
    for (const kind of KINDS) {
      for (const odd of [null, 7, 'x', [], {}, { document: null }, { document: { name: 1, plan: {} } }]) {
        const response = await imported(await appUnderTest(), JSON.stringify({ ...copy, [kind]: [odd] }));
        expect(response.status, `${kind} ${JSON.stringify(odd)}`).toBe(422);
        await jsonOf(response);
      }
    }
  });
});
