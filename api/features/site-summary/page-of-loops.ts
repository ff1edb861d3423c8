/** Reads a page of the loops of a site, with all that their figures follow from. */
import { createHash } from 'node:crypto';
import type { Tariff } from '../../../models/tariff/tariff.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import { LOOPS } from '../../records/loop/kind.ts';
import { findPumps, type PumpRecord } from '../../records/pump/kind.ts';
import type { ScheduleRecord } from '../../records/schedule/kind.ts';
import { SCHEDULES } from '../../records/schedule/kind.ts';
import type { SiteRecord } from '../../records/site/kind.ts';
import type { TariffRecord } from '../../records/tariff/kind.ts';
import { TARIFFS } from '../../records/tariff/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import type { PageStart } from '../../store/versions.ts';
import type { SliceLoop } from './job.ts';

export interface SummaryLoop {
  readonly record: LoopRecord;
  readonly pump: PumpRecord;
  readonly slice: SliceLoop;
  /** Versions of all that its figures follow from besides the site and the pumps to choose among. */
  readonly versions: string;
}

export interface SummaryPage {
  readonly installed: readonly SummaryLoop[];
  readonly withoutPump: readonly LoopRecord[];
  /** Where the next page begins; null after the last. */
  readonly next: PageStart | null;
}

interface Asked {
  readonly site: SiteRecord;
  readonly limit: number;
  readonly after: PageStart | null;
  /** Tariffs that were read before, by id. */
  readonly tariffs: Map<string, TariffRecord>;
}

export async function readSummaryPage(
  store: SiteStore,
  { site, limit, after, tariffs }: Asked,
): Promise<SummaryPage> {
  const { records, more } = await store.of(LOOPS).list({ limit, after });
  const last = records.at(-1);
  const schedules = await store.of(SCHEDULES).some(records.map(({ id }) => id));
  const byLoop = new Map(schedules.map((schedule) => [schedule.id, schedule]));
  const wanted = records.flatMap(({ document }) => document.installed?.pump ?? []);
  const pumps = await findPumps(store, wanted);
  const byId = new Map(pumps.map((pump) => [pump.id, pump]));
  const installed: SummaryLoop[] = [];
  const withoutPump: LoopRecord[] = [];
  for (const record of records) {
    const pump = byId.get(record.document.installed?.pump ?? '');
    if (pump === undefined) withoutPump.push(record);
    else
      installed.push(
        await withSources(store, { record, pump, schedule: byLoop.get(record.id), site, tariffs }),
      );
  }
  const next = more && last !== undefined ? { createdAt: last.createdAt, id: last.id } : null;
  return { installed, withoutPump, next };
}

interface Sources {
  readonly record: LoopRecord;
  readonly pump: PumpRecord;
  readonly schedule: ScheduleRecord | undefined;
  readonly site: SiteRecord;
  readonly tariffs: Map<string, TariffRecord>;
}

async function withSources(
  store: SiteStore,
  { record, pump, schedule, site, tariffs }: Sources,
): Promise<SummaryLoop> {
  const { count = 1, setting = pump.document.settings.max } = record.document.installed ?? {};
  const tariffId = schedule === undefined ? null : (schedule.document.tariff ?? site.document.tariff);
  const tariff = tariffId === null ? null : await tariffOf(store, { id: tariffId, tariffs });
  const document: Tariff | null = tariff?.document ?? null;
  return {
    record,
    pump,
    slice: {
      document: record.document,
      calibration: record.calibration,
      installed: { pump: { id: pump.id, entered: pump.document, fit: pump.fit }, count, setting },
      schedule: schedule === undefined ? null : { document: schedule.document, tariff: document },
    },
    versions: JSON.stringify([
      ...[record.id, record.version, pump.id, pump.version],
      ...[schedule?.version, schedule?.createdAt, tariff?.id, tariff?.version],
    ]),
  };
}

/** A tariff that a schedule names cannot be deleted, so that it is there. */
async function tariffOf(
  store: SiteStore,
  { id, tariffs }: { readonly id: string } & Pick<Sources, 'tariffs'>,
): Promise<TariffRecord | null> {
  const known = tariffs.get(id) ?? (await store.of(TARIFFS).get(id));
  if (known !== undefined) tariffs.set(id, known);
  return known ?? null;
}

/** Tells one set of versions from another. */
export const digestOfVersions = (versions: readonly unknown[]): string =>
  createHash('sha256').update(JSON.stringify(versions)).digest('base64url');
