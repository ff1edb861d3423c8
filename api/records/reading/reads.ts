/** Readings read from a database: one by one, sampled, and averaged there by hours and days. */
import { type Kysely, sql } from 'kysely';
import type { Reading } from '../../../models/readings/reading.ts';
import type { ReadingOutletRow, ReadingRow, Tables } from '../../store/tables.ts';
import type { InSite } from '../../store/versions.ts';
import { isChosen } from './chosen.ts';
import type {
  BucketOffset,
  BucketRequest,
  ReadingBucket,
  ReadingChoice,
  ReadingOperations,
} from './contract.ts';

type Reads = Omit<ReadingOperations, 'insert' | 'delete'>;
type Key = InSite & Pick<ReadingChoice, 'loop'>;

const seriesOf = (db: Kysely<Tables>, { siteId, loop }: Key) =>
  db
    .selectFrom('reading_series')
    .select(['series', 'changes'])
    .where('site_id', '=', siteId)
    .where('loop_id', '=', loop)
    .executeTakeFirst();

type Measures = Omit<ReadingRow, 'series'>;

/** What was not measured is absent. */
function readingOf(row: Measures, outletFlows: Reading['outletFlows']): Reading {
  const { power, flow, head, suction_pressure: suctionPressure, discharge_pressure: dischargePressure } = row;
  return {
    time: row.time,
    setting: row.setting,
    ...(power === null ? {} : { power }),
    ...(flow === null ? {} : { flow }),
    ...(outletFlows === undefined ? {} : { outletFlows }),
    ...(head === null ? {} : { head }),
    ...(suctionPressure === null ? {} : { suctionPressure }),
    ...(dischargePressure === null ? {} : { dischargePressure }),
  };
}

const ALL_COLUMNS = [
  'time',
  'setting',
  'power',
  'flow',
  'head',
  'suction_pressure',
  'discharge_pressure',
] as const;

function withOutlets(
  rows: readonly Measures[],
  outlets: readonly Pick<ReadingOutletRow, 'time' | 'outlet' | 'flow'>[],
): readonly Reading[] {
  const flows = new Map<number, Record<string, number>>();
  for (const { time, outlet, flow } of outlets) {
    const there = flows.get(time) ?? {};
    there[outlet] = flow;
    flows.set(time, there);
  }
  return rows.map((row) => readingOf(row, flows.get(row.time)));
}

async function readingsBetween(
  db: Kysely<Tables>,
  { limit, ...choice }: ReadingChoice & InSite & { readonly limit: number },
): Promise<readonly Reading[]> {
  const known = await seriesOf(db, choice);
  if (known === undefined) return [];
  const rows = await db
    .selectFrom('reading')
    .select(ALL_COLUMNS)
    .where(isChosen(known.series, choice))
    .orderBy('time')
    .limit(limit)
    .execute();
  const last = rows.at(-1);
  if (last === undefined) return [];
  const outlets = await db
    .selectFrom('reading_outlet')
    .select(['time', 'outlet', 'flow'])
    .where(isChosen(known.series, { ...choice, before: last.time + 1 }))
    .orderBy('time')
    .orderBy('outlet')
    .execute();
  return withOutlets(rows, outlets);
}

async function sampledReadings(
  db: Kysely<Tables>,
  { apart, ...choice }: ReadingChoice & InSite & { readonly apart: number },
): Promise<readonly Reading[]> {
  const known = await seriesOf(db, choice);
  if (known === undefined) return [];
  const stretch = sql`cast(time / cast(${Math.round(apart)} as bigint) as bigint)`;
  const firsts = db
    .selectFrom('reading')
    .select(({ fn }) => fn.min('time').as('time'))
    .where(isChosen(known.series, choice))
    .groupBy(stretch);
  const rows = await db
    .selectFrom('reading')
    .select(ALL_COLUMNS)
    .where('series', '=', known.series)
    .where('time', 'in', firsts)
    .orderBy('time')
    .execute();
  const outlets = await db
    .selectFrom('reading_outlet')
    .select(['time', 'outlet', 'flow'])
    .where('series', '=', known.series)
    .where('time', 'in', firsts)
    .orderBy('time')
    .orderBy('outlet')
    .execute();
  return withOutlets(rows, outlets);
}

/** Local time of an instant by its offset, in whole widths. */
function bucketOf(offsets: readonly BucketOffset[], width: number) {
  const [first, ...others] = offsets;
  const whole = (value: number) => sql`cast(${Math.round(value)} as bigint)`;
  const offset = others.reduce(
    (before, change) =>
      sql`case when time < ${whole(change.at)} then ${before} else ${whole(change.offset)} end`,
    sql`${whole(first?.offset ?? 0)}`,
  );
  return sql<number>`cast((time + ${offset}) / ${whole(width)} as bigint)`;
}

async function readingBuckets(
  db: Kysely<Tables>,
  { width, offsets, ...choice }: BucketRequest & InSite,
): Promise<readonly ReadingBucket[]> {
  const known = await seriesOf(db, choice);
  if (known === undefined) return [];
  const place = bucketOf(offsets, width);
  const rows = await db
    .selectFrom('reading')
    .select(({ fn }) => [
      place.as('bucket'),
      fn.countAll<number | string>().as('readings'),
      fn.avg<number>('setting').as('setting'),
      fn.avg<number | null>('power').as('power'),
      fn.avg<number | null>('flow').as('flow'),
      fn.avg<number | null>('head').as('head'),
      fn.avg<number | null>('suction_pressure').as('suctionPressure'),
      fn.avg<number | null>('discharge_pressure').as('dischargePressure'),
    ])
    .where(isChosen(known.series, choice))
    .groupBy(sql`1`)
    .orderBy(sql`1`)
    .execute();
  const outlets = await db
    .selectFrom('reading_outlet')
    .select(({ fn }) => [place.as('bucket'), 'outlet', fn.avg<number>('flow').as('flow')])
    .where(isChosen(known.series, choice))
    .groupBy([sql`1`, 'outlet'])
    .orderBy('outlet')
    .execute();
  const flows = new Map<number, Record<string, number>>();
  for (const { bucket, outlet, flow } of outlets) {
    const there = flows.get(bucket) ?? {};
    there[outlet] = flow;
    flows.set(bucket, there);
  }
  return rows.map((row) => ({
    ...row,
    readings: Number(row.readings),
    outletFlows: flows.get(row.bucket) ?? {},
  }));
}

export const readingReads = (db: Kysely<Tables>, siteId: string): Reads => ({
  between: (asked) => readingsBetween(db, { ...asked, siteId }),

  sampled: (asked) => sampledReadings(db, { ...asked, siteId }),

  buckets: (asked) => readingBuckets(db, { ...asked, siteId }),

  async count(choice) {
    const known = await seriesOf(db, { ...choice, siteId });
    if (known === undefined) return 0;
    const { count } = await db
      .selectFrom('reading')
      .select(({ fn }) => fn.countAll<number | string>().as('count'))
      .where(isChosen(known.series, choice))
      .executeTakeFirstOrThrow();
    return Number(count);
  },

  async span(loop) {
    const known = await seriesOf(db, { siteId, loop });
    if (known === undefined) return { changes: 0, range: null };
    const edge = (order: 'asc' | 'desc') =>
      db
        .selectFrom('reading')
        .select('time')
        .where('series', '=', known.series)
        .orderBy('time', order)
        .limit(1)
        .executeTakeFirst();
    const [first, last] = [await edge('asc'), await edge('desc')];
    const range = first === undefined || last === undefined ? null : { first: first.time, last: last.time };
    return { changes: known.changes, range };
  },
});
