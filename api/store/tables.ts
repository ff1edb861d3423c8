/** The tables as queries see them; migrations/ makes them. */

/** `digest` is the SHA-256 of the row's JSON texts. Times in ms, an integer that every driver must hand over as a number. */
export interface RowCommon {
  readonly id: string;
  readonly version: number;
  readonly created_at: number;
  readonly updated_at: number;
  readonly name: string;
  readonly document: string;
  readonly digest: string;
  /** The user's, of kinds that have one; null where none was given. */
  readonly key?: string | null | undefined;
}

export interface PumpRow extends RowCommon {
  readonly site_id: string;
  readonly fit: string;
}

/** `calibration` is the one in use, with a digest of its own; `calibration_of` tells what of the loop it is about. */
export interface LoopRow extends RowCommon {
  readonly site_id: string;
  readonly installed_pump_id: string | null;
  readonly calibration: string | null;
  readonly calibration_digest: string | null;
  readonly calibration_of: string | null;
}

/** `undone_at` is null until it is undone. */
export interface LoopCalibrationRow {
  readonly site_id: string;
  readonly loop_id: string;
  readonly place: number;
  readonly applied_at: number;
  readonly undone_at: number | null;
  readonly calibration: string;
  readonly calibration_digest: string;
  readonly calibration_of: string;
}

/** A document and nothing besides. */
export interface DocumentRow extends RowCommon {
  readonly site_id: string;
}

/** `next_due` and `last_done_day` are day numbers; the columns after `pump_id` follow from the document and the completions. */
export interface MaintenanceTaskRow extends RowCommon {
  readonly site_id: string;
  readonly kind: string;
  readonly loop_id: string | null;
  readonly pump_id: string | null;
  readonly year_hours: number;
  readonly year_parts: number;
  readonly next_due: number;
  readonly last_done_at: number | null;
  readonly last_done_day: number | null;
  readonly completions: number;
  readonly changes: number;
  readonly changed_at: number;
}

export interface CompletionRow extends RowCommon {
  readonly site_id: string;
  readonly task_id: string;
  readonly done_at: number;
}

/** `id` is that of the loop. */
export interface ScheduleRow extends RowCommon {
  readonly site_id: string;
  readonly tariff_id: string | null;
}

/** The tariff of a site that has one. */
export interface SiteTariffRow {
  readonly site_id: string;
  readonly tariff_id: string;
}

/** The readings of a loop stand under its number; `changes` counts the writes. */
export interface ReadingSeriesRow {
  readonly series: number;
  readonly site_id: string;
  readonly loop_id: string;
  readonly changes: number;
}

/** `time` in ms; SI. What was not measured is null. */
export interface ReadingRow {
  readonly series: number;
  readonly time: number;
  readonly setting: number;
  readonly power: number | null;
  readonly flow: number | null;
  readonly head: number | null;
  readonly suction_pressure: number | null;
  readonly discharge_pressure: number | null;
}

export interface ReadingOutletRow {
  readonly series: number;
  readonly time: number;
  readonly outlet: string;
  readonly flow: number;
}

export interface Tables {
  readonly site: RowCommon;
  readonly pump: PumpRow;
  readonly loop: LoopRow;
  readonly loop_calibration: LoopCalibrationRow;
  readonly tariff: DocumentRow;
  readonly schedule: ScheduleRow;
  readonly site_tariff: SiteTariffRow;
  readonly comparison: DocumentRow;
  readonly upgrade_plan: DocumentRow;
  readonly maintenance_task: MaintenanceTaskRow;
  readonly maintenance_completion: CompletionRow;
  readonly reading_series: ReadingSeriesRow;
  readonly reading: ReadingRow;
  readonly reading_outlet: ReadingOutletRow;
}

/** The tables of records, each of one site. */
export type RecordTable = {
  [Table in keyof Tables]: Tables[Table] extends DocumentRow ? Table : never;
}[keyof Tables];

/** The tables of records that users may give a key. */
export type KeyedTable = 'pump' | 'loop' | 'tariff' | 'maintenance_task';

/** Those of them that hold a document and nothing besides. */
export type DocumentTable = {
  [Table in RecordTable]: DocumentRow extends Tables[Table] ? Table : never;
}[RecordTable];
