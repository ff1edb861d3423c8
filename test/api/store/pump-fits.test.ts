/** Pumps that were stored before power had two laws and head curves had shapes. */
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { PUMPS } from '../../../api/records/pump/kind.ts';
import { defaultSite, SITE } from '../../../api/records/site/kind.ts';
import { digestOf } from '../../../api/store/json-text.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { fitPump } from '../../../models/pump/pump-model.ts';
import { exampleFit, examplePump, T0 } from './examples.ts';
import { openedStore, removeDirectory, temporaryDirectory } from './opened.ts';

const siteId = 'site';

let directory = '';
beforeEach(() => {
  directory = temporaryDirectory();
});
afterEach(() => removeDirectory(directory));

/** One whose points have a falling curve. */
const pumpNamed = (name: string): Pump => ({
  ...examplePump(name),
  headPoints: [0, 1, 2].map((flow) => ({ flow: flow / 3600, head: 4.1 - flow ** 2, setting: 100 })),
});

/** As fits were written then: the sum of powers without its name, one law of power without an alternative. */
const FIT_BEFORE = {
  speedMap: { settings: [0, 100], speeds: [0, 100] },
  headCurve: {
    ...{ powers: [0, 2], coefficients: [4.1, -4.1], flowScale: 1 / 3600, range: { min: 0, max: 1 / 3600 } },
    ...{
      r2: 1,
      standardError: null,
      degreesOfFreedom: 1,
      residuals: [0, 0, 0],
      leaveOneOut: 0,
      drooping: false,
    },
  },
  powerLaw: {
    ...{
      exponent: 3,
      exponentAssumed: true,
      coefficient: 118,
      flowTerms: [],
      flowScale: null,
      flowCentre: null,
    },
    ...{ flowRange: null, standbyPower: 2, r2: null, standardError: null, degreesOfFreedom: 0 },
  },
};

it('are fitted by the laws in force when the store is opened, their documents and versions as they were', async () => {
  const path = join(directory, 'loops.sqlite');
  const store = await openedStore(path);
  await store.of(siteId, SITE).ensure({ document: defaultSite('EUR'), now: T0 });
  for (const id of ['p1', 'p2']) {
    await store.of(siteId, PUMPS).insert({ id, document: pumpNamed(id), fit: exampleFit, now: T0 });
  }
  const before = await store.of(siteId, PUMPS).get('p1');
  await store.close();

  const database = new Database(path);
  const fit = JSON.stringify(FIT_BEFORE);
  for (const id of ['p1', 'p2']) {
    const document = JSON.stringify(pumpNamed(id));
    const columns = { id, fit, digest: digestOf([document, fit]) };
    database.prepare('update pump set fit = @fit, digest = @digest where id = @id').run(columns);
  }
  for (const table of ['pump', 'loop', 'tariff', 'maintenance_task'])
    database.exec(`drop index ${table}_by_key; alter table ${table} drop column key`);
  database.exec(`delete from kysely_migration where name >= '0008'`);
  database.close();

  const reopened = await openedStore(path);
  const fitted = fitPump(pumpNamed('p1'));
  expect(fitted.ok).toBe(true);
  expect(await reopened.of(siteId, PUMPS).get('p1')).toEqual({ ...before, fit: fitted.ok && fitted.value });
  expect(await reopened.of(siteId, PUMPS).get('p2')).toMatchObject({
    version: 1,
    fit: { powerLaw: { law: 'fixed-loss' } },
  });
  await reopened.close();
});
