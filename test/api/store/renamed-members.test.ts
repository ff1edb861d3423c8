/** Stored documents and exports of version 0.1 under the names of 0.2. */
import Database from 'better-sqlite3';
import { Kysely, type Migration, SqliteDialect } from 'kysely';
import { describe, expect, it } from 'vitest';
import { digestOf } from '../../../api/store/json-text.ts';
import { migrate } from '../../../api/store/migrate.ts';
import { MIGRATIONS } from '../../../api/store/migrations/all.ts';
import { EXPORT_NAMES, withNames } from '../../../api/store/renamed-members.ts';

const isBefore = (name: string): boolean => name < '0008';

const BEFORE: Readonly<Record<string, Migration>> = Object.fromEntries(
  Object.entries(MIGRATIONS).filter(([name]) => isBefore(name)),
);

/** A database as version 0.1 left it, with rows written by hand. */
async function migrated(rows: Readonly<Record<string, Readonly<Record<string, unknown>>>>) {
  const database = new Database(':memory:');
  const db = new Kysely<Record<string, Record<string, unknown>>>({
    dialect: new SqliteDialect({ database }),
  });
  await migrate(db, BEFORE);
  for (const [table, row] of Object.entries(rows)) {
    const names = Object.keys(row);
    const values = names.map(() => '?').join(', ');
    database.pragma('foreign_keys = OFF');
    database
      .prepare(`insert into ${table} (${names.join(', ')}) values (${values})`)
      .run(...Object.values(row));
  }
  await migrate(db);
  return (table: string): Record<string, unknown> => {
    const row: unknown = database.prepare(`select * from ${table}`).get();
    return { ...Object(row) };
  };
}

const common = { site_id: 'site', id: 'one', version: 3, created_at: 1, updated_at: 2, name: 'one' };

const documentRow = (document: object) => {
  const text = JSON.stringify(document);
  return { ...common, document: text, digest: digestOf([text]) };
};

const PHASE = { name: 'all', from: '00:00' };

describe('a database of version 0.1', () => {
  it('gives the phases of a schedule the names of 0.2, with the digest of the new text', async () => {
    const volume = { perDay: 2, floor: 0.001, ceiling: 0.002, mayStop: true, splits: false };
    const rowOf = await migrated({
      schedule: { ...documentRow({ tariff: null, phases: [{ ...PHASE, volume }] }), tariff_id: null },
    });
    const { document, digest, version } = rowOf('schedule');
    expect(JSON.parse(String(document))).toEqual({
      tariff: null,
      phases: [
        {
          ...PHASE,
          dailyVolume: { volume: 2, minimumFlow: 0.001, maximumFlow: 0.002, mayStop: true, splits: false },
        },
      ],
    });
    expect(digest).toBe(digestOf([String(document)]));
    expect(version).toBe(3);
  });

  it('renames candidates and yearly spending of an upgrade plan, and leaves what was named `budget` before', async () => {
    const question = { budget: [5], candidates: [{ name: 'a', notBefore: 1, notAfter: 2, must: true }] };
    const plan = { spending: [{ year: 1, budget: 5, available: 5, spent: 2, carried: 3 }] };
    const rowOf = await migrated({ upgrade_plan: documentRow({ name: 'one', question, plan }) });
    expect(JSON.parse(String(rowOf('upgrade_plan').document))).toEqual({
      name: 'one',
      question: { budget: [5], candidates: [{ name: 'a', firstYear: 1, lastYear: 2, mandatory: true }] },
      plan: { spending: [{ year: 1, newBudget: 5, available: 5, spent: 2, carriedOver: 3 }] },
    });
  });

  it('renames what a comparison entered and found', async () => {
    const question = { options: [{ name: 'a', risk: { valueAtRisk: 1, neededShare: 0.5 } }] };
    const figures = {
      options: [{ name: 'a', range: { low: 1, high: 2 }, attention: { devices: 1, hours: 2, cost: 3 } }],
      sensitivity: [{ input: 'inflation', low: 1, high: 2, effect: 3, flips: false }],
    };
    const rowOf = await migrated({ comparison: documentRow({ name: 'one', question, figures }) });
    expect(JSON.parse(String(rowOf('comparison').document))).toEqual({
      name: 'one',
      question: { options: [{ name: 'a', risk: { valueAtRisk: 1, requiredShare: 0.5 } }] },
      figures: {
        options: [
          {
            name: 'a',
            presentValueInterval: { low: 1, high: 2 },
            upkeep: { pumpCount: 1, annualHours: 2, annualCost: 3 },
          },
        ],
        sensitivity: [
          {
            input: 'inflation',
            savingIfLower: 1,
            savingIfHigher: 2,
            largestChange: 3,
            changesCheapest: false,
          },
        ],
      },
    });
  });

  it('renames the calibrations of loops', async () => {
    const text = JSON.stringify({
      badEnd: { friction: 2, head: 1 },
      readings: 9,
      factors: { friction: 1.5 },
    });
    const calibrated = { calibration: text, calibration_digest: digestOf([text]), calibration_of: 'x' };
    const rowOf = await migrated({
      loop: { ...documentRow({ name: 'one' }), installed_pump_id: null, ...calibrated },
      loop_calibration: { site_id: 'site', loop_id: 'one', place: 1, applied_at: 1, ...calibrated },
    });
    for (const table of ['loop', 'loop_calibration']) {
      const { calibration, calibration_digest: digest } = rowOf(table);
      expect(JSON.parse(String(calibration))).toEqual({
        worstCase: { friction: 2, head: 1 },
        readingCount: 9,
        factors: { friction: 1.5 },
      });
      expect(digest).toBe(digestOf([String(calibration)]));
    }
  });

  it('leaves a text that its digest contradicts as it is, so that it is still found to be damaged', async () => {
    const row = { ...documentRow({ title: 'a' }), digest: 'damaged', tariff_id: null };
    const rowOf = await migrated({ schedule: row });
    expect(rowOf('schedule')).toMatchObject({ document: row.document, digest: 'damaged' });
  });
});

describe('an export of version 0.1', () => {
  it('is read under the names of 0.2, kind by kind', () => {
    const copy = {
      maintenanceTasks: [{ title: 'Clean', kind: 'other' }],
      calibrations: [{ place: 2, of: 'x', calibration: { badEnd: { friction: 1 }, readings: 3 } }],
      comparisons: [{ document: { question: { options: [{ risk: { neededShare: 1 } }] }, figures: {} } }],
      pumps: [{ title: 'is no member of a pump, and stays' }],
    };
    expect(withNames(copy, EXPORT_NAMES)).toEqual({
      maintenanceTasks: [{ name: 'Clean', kind: 'other' }],
      calibrations: [
        { sequence: 2, scope: 'x', calibration: { worstCase: { friction: 1 }, readingCount: 3 } },
      ],
      comparisons: [{ document: { question: { options: [{ risk: { requiredShare: 1 } }] }, figures: {} } }],
      pumps: [{ title: 'is no member of a pump, and stays' }],
    });
  });
});
