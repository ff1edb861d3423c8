/** Readings written to a database: all of a request in one transaction, many rows a statement. */
import type { Compilable, CompiledQuery, Kysely, Transaction } from 'kysely';
import type { Reading } from '../../../models/readings/reading.ts';
import { compiledOnce } from '../../store/compiled-once.ts';
import { unlessReferenceBroken } from '../../store/foreign-key-violation.ts';
import type { Tables } from '../../store/tables.ts';
import type { InSite } from '../../store/versions.ts';
import type { CheckedReadings, NewReadings, ReadingOperations } from './contract.ts';

type Value = number | string | null;

/** Rows of one statement; what is left over goes row by row. */
const ROWS = 50;

const COLUMNS = [
  'setting',
  'power',
  'flow',
  'head',
  'suction_pressure',
  'discharge_pressure',
] as const satisfies readonly (keyof Tables['reading'])[];

const readingInsert = (db: Kysely<Tables>, rows: number): Compilable =>
  db
    .insertInto('reading')
    .values(
      Array.from({ length: rows }, () => ({
        series: 0,
        time: 0,
        setting: 0,
        power: 0,
        flow: 0,
        head: 0,
        suction_pressure: 0,
        discharge_pressure: 0,
      })),
    )
    .onConflict((conflict) =>
      conflict
        .columns(['series', 'time'])
        .doUpdateSet(({ fn, ref }) =>
          Object.fromEntries(
            COLUMNS.map((name) => [name, fn.coalesce(ref(`excluded.${name}`), ref(`reading.${name}`))]),
          ),
        ),
    );

const outletInsert = (db: Kysely<Tables>, rows: number): Compilable =>
  db
    .insertInto('reading_outlet')
    .values(Array.from({ length: rows }, () => ({ series: 0, time: 0, outlet: '', flow: 0 })))
    .onConflict((conflict) =>
      conflict
        .columns(['series', 'time', 'outlet'])
        .doUpdateSet(({ ref }) => ({ flow: ref('excluded.flow') })),
    );

const timesThere = (db: Kysely<Tables>, rows: number): Compilable<{ time: number }> =>
  db
    .selectFrom('reading')
    .select('time')
    .where('series', '=', 0)
    .where(
      'time',
      'in',
      Array.from({ length: rows }, () => 0),
    );

/** Statements of a number of rows, with their parameters. */
function prepared<Row>(build: (rows: number) => Compilable<Row>) {
  const compiled = compiledOnce<Row>();
  return (rows: number, parameters: readonly Value[]): CompiledQuery<Row> => ({
    ...compiled(rows, () => build(rows)),
    parameters,
  });
}

interface Statements {
  readonly reading: ReturnType<typeof prepared<unknown>>;
  readonly outlet: ReturnType<typeof prepared<unknown>>;
  readonly times: ReturnType<typeof prepared<{ time: number }>>;
}

/** Pieces of `ROWS`, then single ones. */
function* piecesOf<Item>(items: readonly Item[]): Generator<readonly Item[]> {
  let at = 0;
  for (; at + ROWS <= items.length; at += ROWS) yield items.slice(at, at + ROWS);
  for (; at < items.length; at += 1) yield items.slice(at, at + 1);
}

const readingValues = (series: number, one: Reading): readonly Value[] => [
  series,
  one.time,
  one.setting,
  one.power ?? null,
  one.flow ?? null,
  one.head ?? null,
  one.suctionPressure ?? null,
  one.dischargePressure ?? null,
];

/** The number under which a loop's readings stand, counted as changed; one statement makes it where there is none. */
async function changedSeries(
  all: Transaction<Tables>,
  { siteId, loop }: InSite & Pick<NewReadings, 'loop'>,
): Promise<number> {
  const next = await all
    .selectFrom('reading_series')
    .select(({ fn }) => fn.max<number | null>('series').as('last'))
    .executeTakeFirstOrThrow();
  const { series } = await all
    .insertInto('reading_series')
    .values({ series: (next.last ?? 0) + 1, site_id: siteId, loop_id: loop, changes: 1 })
    .onConflict((conflict) =>
      conflict
        .columns(['site_id', 'loop_id'])
        .doUpdateSet((eb) => ({ changes: eb('reading_series.changes', '+', 1) })),
    )
    .returning('series')
    .executeTakeFirstOrThrow();
  return series;
}

/** How many of the instants have a reading, or stood in the request before. */
async function mergedAmong(
  all: Transaction<Tables>,
  { times }: Statements,
  { series, readings }: { readonly series: number; readonly readings: readonly Reading[] },
): Promise<number> {
  const distinct = [...new Set(readings.map(({ time }) => time))];
  const [first, last] = [distinct[0], distinct.at(-1)];
  if (first === undefined || last === undefined) return 0;
  const any = await all
    .selectFrom('reading')
    .select('time')
    .where('series', '=', series)
    .where('time', '>=', first)
    .where('time', '<=', last)
    .limit(1)
    .executeTakeFirst();
  const found = new Set<number>();
  if (any !== undefined) {
    for (const piece of piecesOf(distinct)) {
      const { rows } = await all.executeQuery(times(piece.length, [series, ...piece]));
      for (const { time } of rows) found.add(time);
    }
  }
  let merged = 0;
  for (const { time } of readings) {
    if (found.has(time)) merged += 1;
    else found.add(time);
  }
  return merged;
}

async function writeRows(
  all: Transaction<Tables>,
  statements: Statements,
  { series, readings }: { readonly series: number; readonly readings: readonly Reading[] },
): Promise<void> {
  for (const piece of piecesOf(readings)) {
    const values = piece.flatMap((one) => readingValues(series, one));
    await all.executeQuery(statements.reading(piece.length, values));
  }
  const outlets = readings.flatMap(({ time, outletFlows = {} }) =>
    Object.entries(outletFlows).map(([outlet, flow]) => [series, time, outlet, flow]),
  );
  for (const piece of piecesOf(outlets)) {
    await all.executeQuery(statements.outlet(piece.length, piece.flat()));
  }
}

/** Readings of the same instant in one request are written one after the other, so that later ones win. */
function withoutRepeats(readings: readonly Reading[]): readonly Reading[] {
  const kept: Reading[] = [];
  for (const one of readings) {
    const before = kept.at(-1);
    if (before?.time !== one.time) {
      kept.push(one);
      continue;
    }
    const outletFlows = { ...before.outletFlows, ...one.outletFlows };
    const stated = Object.fromEntries(Object.entries(one).filter(([, value]) => value !== undefined));
    kept[kept.length - 1] = { ...before, ...stated, outletFlows };
  }
  return kept;
}

const statementsFor = (db: Kysely<Tables>): Statements => ({
  reading: prepared((rows) => readingInsert(db, rows)),
  outlet: prepared((rows) => outletInsert(db, rows)),
  times: prepared((rows) => timesThere(db, rows)),
});

/** Within a transaction of the caller: how many of them were merged. */
export async function writeReadings(
  all: Transaction<Tables>,
  { siteId, loop, readings }: NewReadings & InSite,
  statements = statementsFor(all),
): Promise<number> {
  const series = await changedSeries(all, { siteId, loop });
  const merged = await mergedAmong(all, statements, { series, readings });
  await writeRows(all, statements, { series, readings: withoutRepeats(readings) });
  return merged;
}

/** The instant of a merged reading without a flow at speed and without a head, which by itself would be refused; null: none. */
async function stillAmong(
  all: Transaction<Tables>,
  { siteId, loop, readings, outlets }: CheckedReadings & InSite,
): Promise<number | null> {
  const [first, last] = [readings[0], readings.at(-1)];
  if (first === undefined || last === undefined) return null;
  const still = await all
    .selectFrom('reading')
    .innerJoin('reading_series', 'reading_series.series', 'reading.series')
    .select('reading.time')
    .where('site_id', '=', siteId)
    .where('loop_id', '=', loop)
    .where('reading.time', '>=', first.time)
    .where('reading.time', '<=', last.time)
    .where((eb) => {
      const shut = eb
        .selectFrom('reading_outlet')
        .select(({ fn }) => fn.countAll<number>().as('count'))
        .whereRef('reading_outlet.series', '=', 'reading.series')
        .whereRef('reading_outlet.time', '=', 'reading.time')
        .where('reading_outlet.flow', '=', 0)
        .where('reading_outlet.outlet', 'in', outlets);
      const noFlow = eb('reading.flow', '=', 0);
      return outlets.length === 0 ? noFlow : eb.or([noFlow, eb(shut, '=', outlets.length)]);
    })
    .where('setting', '>', 0)
    .where('head', 'is', null)
    .where((eb) => eb.or([eb('suction_pressure', 'is', null), eb('discharge_pressure', 'is', null)]))
    .limit(1)
    .executeTakeFirst();
  return still?.time ?? null;
}

/** Undoes the transaction that it is thrown in. */
class Still extends Error {
  constructor(readonly time: number) {
    super('no flow at speed');
  }
}

export function readingWrites(db: Kysely<Tables>): (siteId: string) => Pick<ReadingOperations, 'insert'> {
  const statements = statementsFor(db);
  return (siteId) => ({
    async insert(asked) {
      const written = { ...asked, siteId };
      const write = async (all: Transaction<Tables>): Promise<number> => {
        const merged = await writeReadings(all, written, statements);
        const still = merged === 0 ? null : await stillAmong(all, written);
        if (still !== null) throw new Still(still);
        return merged;
      };
      const merged = await unlessReferenceBroken(() => db.transaction().execute(write)).catch((error) => {
        if (error instanceof Still) return error;
        throw error;
      });
      if (merged instanceof Still) return { outcome: 'still', time: merged.time };
      return merged === undefined
        ? { outcome: 'missing' }
        : { outcome: 'written', accepted: written.readings.length, merged };
    },
  });
}
