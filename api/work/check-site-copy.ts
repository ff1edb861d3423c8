/** The records of a copied site made ready to be stored, checked as if each were stored by itself. */
import { failed, type Result, success } from '../../curves/result.ts';
import type { LoopModel } from '../../models/loop-model.ts';
import { type PathPart, toPointer } from '../http/json-pointer.ts';
import { invalidRequest, type Problem, type ProblemError } from '../http/problem.ts';
import type { LoopRecord, PumpRecord, ScheduleRecord, SiteRecord, TariffRecord } from '../store/records.ts';
import type { SiteContents } from '../store/site-contents-contract.ts';
import type { StoredRecord } from '../store/stored.ts';
import { scheduleProblem } from './check-schedule.ts';
import { compileLoopOrProblem } from './compile-loop.ts';
import { fitPumpOrProblem } from './fit-pump.ts';
import { pauseAfter } from './pause.ts';
import type { CopiedRecord, SiteCopy } from './read-site-copy.ts';

interface Means {
  readonly now: number;
  readonly newId: () => string;
}

/** Whoever mends ten faults will ask again. */
const FAULTS_MAX = 10;

type Errors = ProblemError[];

const asRecord = <Document extends object>(
  { id, version, createdAt, updatedAt, document }: CopiedRecord<Document>,
  { now, newId }: Means,
): StoredRecord<Document> => ({
  id: id ?? newId(),
  version,
  createdAt: createdAt ?? now,
  updatedAt: updatedAt ?? createdAt ?? now,
  name: 'name' in document && typeof document.name === 'string' ? document.name : '',
  document,
});

function told(errors: Errors, { errors: found = [] }: Problem, at: readonly PathPart[] = []): void {
  errors.push(...found.map((error) => ({ ...error, pointer: `${toPointer(at)}${error.pointer ?? ''}` })));
}

function refuseTwice(errors: Errors, kind: string, records: readonly { readonly id: string }[]): void {
  const seen = new Set<string>();
  for (const [place, { id }] of records.entries()) {
    if (seen.has(id)) errors.push({ pointer: `/${kind}/${place}/id`, detail: 'is there twice' });
    seen.add(id);
  }
}

function refuseUnknown(
  errors: Errors,
  known: readonly { readonly id: string }[],
  named: readonly { readonly id: string | null | undefined; readonly at: readonly PathPart[] }[],
  noun: string,
): void {
  const ids = new Set(known.map(({ id }) => id));
  for (const { id, at } of named) {
    if (id === null || id === undefined || ids.has(id)) continue;
    errors.push({ pointer: toPointer(at), detail: `names no ${noun} of the document` });
  }
}

async function fitted(records: readonly StoredRecord<PumpRecord['document']>[], errors: Errors) {
  const pumps: PumpRecord[] = [];
  for (const [place, record] of records.entries()) {
    if (errors.length >= FAULTS_MAX) break;
    const fit = fitPumpOrProblem(record.document, ['pumps', place]);
    if (fit.ok) pumps.push({ ...record, fit: fit.value });
    else told(errors, fit.failure);
    await pauseAfter(place + 1);
  }
  return pumps;
}

/** The models of those that schedules need, by id. */
async function compiled(
  records: readonly LoopRecord[],
  errors: Errors,
): Promise<ReadonlyMap<string, LoopModel>> {
  const models = new Map<string, LoopModel>();
  for (const [place, { id, document }] of records.entries()) {
    if (errors.length >= FAULTS_MAX) break;
    const model = compileLoopOrProblem(document, ['loops', place]);
    if (model.ok) models.set(id, model.value);
    else told(errors, model.failure);
    await pauseAfter(place + 1);
  }
  return models;
}

function refuseMisfits(
  errors: Errors,
  schedules: readonly ScheduleRecord[],
  models: ReadonlyMap<string, LoopModel>,
): void {
  for (const [place, { id, document }] of schedules.entries()) {
    const model = models.get(id);
    const misfit = model === undefined ? null : scheduleProblem(document, model);
    if (misfit !== null) told(errors, misfit, ['schedules', place]);
  }
}

interface Known {
  readonly site: SiteRecord;
  readonly tariffs: readonly TariffRecord[];
  readonly pumps: readonly PumpRecord[];
  readonly loops: readonly LoopRecord[];
  readonly schedules: readonly ScheduleRecord[];
}

function refuseLooseEnds(errors: Errors, { site, tariffs, pumps, loops, schedules }: Known): void {
  for (const [kind, records] of Object.entries({ tariffs, pumps, loops, schedules }))
    refuseTwice(errors, kind, records);
  const scheduleTariffs = schedules.map(({ document: { tariff } }, place) => ({
    id: tariff,
    at: ['schedules', place, 'tariff'],
  }));
  refuseUnknown(
    errors,
    tariffs,
    [{ id: site.document.tariff, at: ['site', 'tariff'] }, ...scheduleTariffs],
    'tariff',
  );
  refuseUnknown(
    errors,
    pumps,
    loops.map(({ document: { installed } }, place) => ({
      id: installed?.pump,
      at: ['loops', place, 'installed', 'pump'],
    })),
    'pump',
  );
  refuseUnknown(
    errors,
    loops,
    schedules.map(({ id }, place) => ({ id, at: ['schedules', place, 'id'] })),
    'loop',
  );
}

const later = <Item>(items: readonly Item[]): readonly (() => Item)[] => items.map((item) => () => item);

/** The problem names each fault where it stands in the document. */
export async function checkSiteCopy(
  { site, records }: SiteCopy,
  means: Means,
): Promise<Result<SiteContents, Problem>> {
  const errors: Errors = [];
  const made = <Document extends object>(record: CopiedRecord<Document>) => asRecord(record, means);
  const loops = records.loops.map(made);
  const known = {
    site: made(site),
    tariffs: records.tariffs.map(made),
    pumps: await fitted(records.pumps.map(made), errors),
    loops,
    schedules: records.schedules.map(made),
  };
  const models = await compiled(loops, errors);
  if (errors.length === 0) {
    refuseLooseEnds(errors, known);
    refuseMisfits(errors, known.schedules, models);
  }
  if (errors.length > 0) return failed(invalidRequest(errors));
  const { tariffs, pumps, schedules } = known;
  return success({
    site: known.site,
    records: {
      tariffs: later(tariffs),
      pumps: later(pumps),
      loops: later(loops),
      schedules: later(schedules),
    },
  });
}
