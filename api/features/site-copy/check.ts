/** Checks the records of a copied site as if each were stored by itself. */

import { failed, type Result, success } from '../../../curves/result.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import { FAULTS_MAX } from '../../fields/limits.ts';
import { type PathPart, toPointer } from '../../http/json-pointer.ts';
import { invalidRequest, type Problem, type ProblemError } from '../../http/problem.ts';
import { compileLoopOrProblem } from '../../records/loop/compile.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import { fitPumpOrProblem } from '../../records/pump/fit.ts';
import type { PumpRecord } from '../../records/pump/kind.ts';
import type { CopiedReadings } from '../../records/reading/contract.ts';
import { readingFaults } from '../../records/reading/faults.ts';
import { scheduleProblem } from '../../records/schedule/fits-loop.ts';
import type { ScheduleRecord } from '../../records/schedule/kind.ts';
import type { StoredRecord } from '../../store/versions.ts';
import { pauseAfter } from '../../threads/pause.ts';
import { calibrationWith, comparisonOf, upgradePlanOf } from './computed.ts';
import type { SiteContents } from './contract.ts';
import type { RecordKind } from './kinds.ts';
import type { UnseenDocument } from './kinds-schema.ts';
import type { CopiedRecord, SiteCopy } from './read.ts';
import { referenceFaults } from './references.ts';

interface Deps {
  readonly now: number;
  readonly newId: () => string;
}

type Errors = ProblemError[];

const asRecord = <Document extends object>(
  { id, key, version, createdAt, updatedAt, document }: CopiedRecord<Document>,
  { now, newId }: Deps,
): StoredRecord<Document> => ({
  id: id ?? newId(),
  ...(typeof key === 'string' ? { key } : {}),
  version,
  createdAt: createdAt ?? now,
  updatedAt: updatedAt ?? createdAt ?? now,
  name: 'name' in document && typeof document.name === 'string' ? document.name : '',
  document,
});

function addErrors(errors: Errors, { errors: found = [] }: Problem, at: readonly PathPart[] = []): void {
  errors.push(...found.map((error) => ({ ...error, pointer: `${toPointer(at)}${error.pointer ?? ''}` })));
}

async function fitted(records: readonly StoredRecord<PumpRecord['document']>[], errors: Errors) {
  const pumps: PumpRecord[] = [];
  for (const [place, record] of records.entries()) {
    if (errors.length >= FAULTS_MAX) break;
    const fit = fitPumpOrProblem(record.document, ['pumps', place]);
    if (fit.ok) pumps.push({ ...record, fit: fit.value });
    else addErrors(errors, fit.failure);
    await pauseAfter(place + 1);
  }
  return pumps;
}

/** The models of those that schedules need, by id. */
async function compiled(
  records: readonly LoopRecord[],
  errors: Errors,
): Promise<ReadonlyMap<string, CompiledLoop>> {
  const models = new Map<string, CompiledLoop>();
  for (const [place, { id, document }] of records.entries()) {
    if (errors.length >= FAULTS_MAX) break;
    const model = compileLoopOrProblem(document, ['loops', place]);
    if (model.ok) models.set(id, model.value);
    else addErrors(errors, model.failure);
    await pauseAfter(place + 1);
  }
  return models;
}

function refuseMisfits(
  errors: Errors,
  schedules: readonly ScheduleRecord[],
  models: ReadonlyMap<string, CompiledLoop>,
): void {
  for (const [place, { id, document }] of schedules.entries()) {
    const model = models.get(id);
    const misfit = model === undefined ? null : scheduleProblem(document, model);
    if (misfit !== null) addErrors(errors, misfit, ['schedules', place]);
  }
}

/** Settings are not judged, nor names of outlets: pump and loop may have changed since. */
function refuseReadings(
  errors: Errors,
  copies: readonly StoredRecord<CopiedReadings>[],
  { models, now }: { readonly models: ReadonlyMap<string, CompiledLoop>; readonly now: number },
): void {
  for (const [place, { document }] of copies.entries()) {
    if (errors.length >= FAULTS_MAX) return;
    const outlets = models.get(document.loop)?.system.outlets.map(({ name }) => name) ?? [];
    const rules = { outlets, settings: null, now, mayBeFormer: true };
    for (const { path, detail } of readingFaults(document.readings, rules)) {
      errors.push({ pointer: toPointer(['readings', place, 'readings', ...path]), detail });
    }
  }
}

/** Those that are what was exported; the others are named. */
function computed<Document>(
  kind: RecordKind,
  records: readonly StoredRecord<UnseenDocument>[],
  {
    made,
    errors,
  }: {
    readonly made: (record: StoredRecord<UnseenDocument>) => Result<StoredRecord<Document>, string>;
    readonly errors: Errors;
  },
): readonly StoredRecord<Document>[] {
  return records.flatMap((record, place) => {
    const one = made(record);
    if (one.ok) return [one.value];
    errors.push({ pointer: toPointer([kind, place, 'document']), detail: one.failure });
    return [];
  });
}

const later = <Item>(items: readonly Item[]): readonly (() => Item)[] => items.map((item) => () => item);

/** The problem names each fault at its place in the document. */
export async function checkSiteCopy(
  { site, records }: SiteCopy,
  deps: Deps,
): Promise<Result<SiteContents, Problem>> {
  const errors: Errors = [];
  const made = <Document extends object>(record: CopiedRecord<Document>) => asRecord(record, deps);
  const loops = records.loops.map((loop) => ({ ...made(loop), calibration: null }));
  const named = {
    site: made(site),
    tariffs: records.tariffs.map(made),
    pumps: await fitted(records.pumps.map(made), errors),
    loops,
    schedules: records.schedules.map(made),
    maintenanceTasks: records.maintenanceTasks.map(made),
    completions: records.completions.map(made),
    calibrations: records.calibrations,
    readings: records.readings.map(made),
  };
  const comparisons = computed('comparisons', records.comparisons.map(made), { made: comparisonOf, errors });
  const plans = computed('upgradePlans', records.upgradePlans.map(made), { made: upgradePlanOf, errors });
  const models = await compiled(loops, errors);
  if (errors.length === 0) errors.push(...referenceFaults(named));
  if (errors.length === 0) refuseMisfits(errors, named.schedules, models);
  if (errors.length === 0) refuseReadings(errors, named.readings, { models, now: deps.now });
  if (errors.length > 0) return failed(invalidRequest(errors));
  const pumps = new Map(named.pumps.map((pump) => [pump.id, pump]));
  return success({
    site: named.site,
    records: {
      tariffs: later(named.tariffs),
      pumps: later(named.pumps),
      loops: later(loops),
      schedules: later(named.schedules),
      comparisons: later(comparisons),
      upgradePlans: later(plans),
      maintenanceTasks: later(named.maintenanceTasks),
      completions: later(named.completions),
      calibrations: later(records.calibrations.map((one) => calibrationWith(made(one), pumps))),
      readings: later(named.readings),
    },
  });
}
