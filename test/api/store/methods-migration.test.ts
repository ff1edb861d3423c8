/** Fittings of version 0.1 under their names and methods of 0.2. */
import { Kysely, SqliteDialect } from 'kysely';
import { expect, it } from 'vitest';
import { digestOf } from '../../../api/store/json-text.ts';
import { withMethods } from '../../../api/store/methods-of-fittings.ts';
import { migrate } from '../../../api/store/migrate.ts';
import { MIGRATIONS } from '../../../api/store/migrations/all.ts';
import { openDatabase } from '../../../api/store/sqlite.ts';
import { findFitting } from '../../../models/components/fittings.ts';
import { findValve } from '../../../models/components/valves.ts';
import { T0 } from './examples.ts';

const METHODS = '0013-methods';

/** Names of 0.1, with K1, K and Kd as their rows had them (Hooper 1981; Silverberg and Darby 1999). */
const OLD_NAMES = [
  ['elbow-90-two-k', [800, 0.4]],
  ['elbow-90-flanged-two-k', [800, 0.25]],
  ['elbow-90-mitre-two-k', [1000, 1.15]],
  ['elbow-45-two-k', [500, 0.2]],
  ['elbow-45-mitre-two-k', [500, 0.25]],
  ['return-bend-two-k', [1000, 0.35]],
  ['tee-run-two-k', [200, 0.1]],
  ['tee-run-flanged-two-k', [150, 0.05]],
  ['tee-branch-two-k', [500, 0.7]],
  ['tee-branch-flanged-two-k', [800, 0.8]],
  ['elbow-90-three-k', [800, 0.14, 4]],
  ['elbow-90-flanged-three-k', [800, 0.091, 4]],
  ['elbow-90-long-radius-three-k', [800, 0.071, 4.2]],
  ['elbow-90-mitre-three-k', [1000, 0.27, 4]],
  ['elbow-45-three-k', [500, 0.071, 4.2]],
  ['elbow-45-long-radius-three-k', [500, 0.052, 4]],
  ['elbow-45-mitre-three-k', [500, 0.086, 4]],
  ['return-bend-three-k', [1000, 0.23, 4]],
  ['tee-run-three-k', [200, 0.091, 4]],
  ['tee-run-flanged-three-k', [150, 0.05, 4]],
  ['tee-branch-three-k', [500, 0.274, 4]],
  ['tee-branch-flanged-three-k', [800, 0.28, 4]],
  ['elbow-90-long-radius', [800, 0.2]],
  ['elbow-45-long-radius', [500, 0.15]],
  ['return-bend-long-radius', [1000, 0.3]],
] as const;

it.each(OLD_NAMES)('%s keeps its figures', (fitting, [laminarValue, value, sizeValue]) => {
  const element: unknown = withMethods({ fitting });
  const { fitting: name, method } = Object(element);
  const figures = sizeValue === undefined ? { laminarValue, value } : { laminarValue, value, sizeValue };
  expect(findFitting(name, method)).toMatchObject(figures);
});

it.each([
  ['ball-reduced-two-k', [500, 0.15]],
  ['angle-two-k', [1000, 2]],
  ['check-lift-two-k', [2000, 10]],
  ['ball-three-k', [300, 0.017, 3.5]],
  ['angle-45-three-k', [950, 0.25, 4]],
] as const)('%s keeps its figures as a valve', (valve, [laminarValue, value, sizeValue]) => {
  const { valve: name, method } = Object(withMethods({ valve }));
  const figures = sizeValue === undefined ? { laminarValue, value } : { laminarValue, value, sizeValue };
  expect(findValve(name, method)).toMatchObject(figures);
});

it('leaves other names, counts and valves by Kv alone', () => {
  const run = [{ fitting: 'elbow-90', count: 2 }, { valve: { kv: 25 } }, { pipe: 'sch80 1', length: 1 }];
  expect(withMethods({ run })).toEqual({ run });
});

it('is done to stored loops, whose calibration stays theirs', async () => {
  const opened = openDatabase(':memory:');
  if (!opened.ok) throw new Error(opened.failure.code);
  const database = opened.value;
  const kysely = new Kysely({ dialect: new SqliteDialect({ database }) });
  const before = Object.fromEntries(Object.entries(MIGRATIONS).filter(([name]) => name < METHODS));
  expect(await migrate(kysely, before)).toMatchObject({ ok: true });
  database.prepare(`insert into site values ('site', 1, ?, ?, 'Site', '{}', '')`).run(T0, T0);
  const loopOf = (element: object) =>
    JSON.stringify({
      name: 'reef',
      staticHead: 0,
      suction: [element],
      discharge: { run: [{ valve: 'gate-two-k', opening: 100 }], outlet: { name: 'only' } },
    });
  const document = loopOf({ fitting: 'return-bend-two-k', count: 2 });
  const insertion = database.prepare(
    `insert into loop (site_id, id, version, created_at, updated_at, name, document, digest, calibration_of)
     values ('site', ?, 4, ?, ?, 'reef', ?, ?, ?)`,
  );
  insertion.run('sound', T0, T0, document, digestOf([document]), 'another loop');
  insertion.run('damaged', T0, T0, document, 'another digest', null);

  expect(await migrate(kysely, MIGRATIONS)).toMatchObject({ ok: true });
  const [damaged, sound] = database
    .prepare('select document, digest, calibration_of from loop order by id')
    .all()
    .map((row) => Object(row));
  expect(damaged).toMatchObject({ document, digest: 'another digest' });
  expect(JSON.parse(sound.document)).toMatchObject({
    suction: [{ fitting: 'return-bend-flanged', method: 'two-k', count: 2 }],
    discharge: { run: [{ valve: 'gate', method: 'two-k', opening: 100 }] },
  });
  expect(sound).toMatchObject({ digest: digestOf([sound.document]), calibration_of: 'another loop' });
});
