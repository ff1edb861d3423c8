/** Lists every kind of record that a site holds, in an order in which none refers to a later one. */
import { EXPORTED_COMPLETIONS } from '../../records/completion/export.ts';
import { EXPORTED_LOOPS } from '../../records/loop/export.ts';
import { EXPORTED_PUMPS } from '../../records/pump/export.ts';
import { EXPORTED_READINGS } from '../../records/reading/export.ts';
import { EXPORTED_SCHEDULES } from '../../records/schedule/export.ts';
import { EXPORTED_TARIFFS } from '../../records/tariff/export.ts';
import { EXPORTED_TASKS } from '../../records/task/export.ts';
import type { KindOfRecord } from '../../store/exported-kind.ts';
import { EXPORTED_CALIBRATIONS } from '../calibration/export.ts';
import { EXPORTED_COMPARISONS } from '../comparison/export.ts';
import { EXPORTED_UPGRADE_PLANS } from '../upgrade-plan/export.ts';

const EXPORTED = {
  tariffs: EXPORTED_TARIFFS,
  pumps: EXPORTED_PUMPS,
  loops: EXPORTED_LOOPS,
  schedules: EXPORTED_SCHEDULES,
  comparisons: EXPORTED_COMPARISONS,
  upgradePlans: EXPORTED_UPGRADE_PLANS,
  maintenanceTasks: EXPORTED_TASKS,
  completions: EXPORTED_COMPLETIONS,
  calibrations: EXPORTED_CALIBRATIONS,
  readings: EXPORTED_READINGS,
} as const;

export type RecordKind = keyof typeof EXPORTED;

type KeptOf<Exported> = Exported extends KindOfRecord<infer Kept> ? Kept : never;

/** What a record of each kind is, as its export gives it. */
export type KindsOfRecords = { readonly [Kind in RecordKind]: KeptOf<(typeof EXPORTED)[Kind]> };

export const RECORD_KINDS: { readonly [Kind in RecordKind]: KindOfRecord<KindsOfRecords[Kind]> } = EXPORTED;
