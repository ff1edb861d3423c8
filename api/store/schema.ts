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
}

export interface PumpRow extends RowCommon {
  readonly site_id: string;
  readonly fit: string;
}

export interface LoopRow extends RowCommon {
  readonly site_id: string;
  readonly installed_pump_id: string | null;
}

export interface TariffRow extends RowCommon {
  readonly site_id: string;
}

export interface UpgradePlanRow extends RowCommon {
  readonly site_id: string;
}

/** `next_due` and `last_done_day` are day numbers; the columns after `pump_id` follow from the document and the completions. */
export interface MaintenanceTaskRow extends RowCommon {
  readonly site_id: string;
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

export interface Tables {
  readonly site: RowCommon;
  readonly pump: PumpRow;
  readonly loop: LoopRow;
  readonly tariff: TariffRow;
  readonly schedule: ScheduleRow;
  readonly site_tariff: SiteTariffRow;
  readonly upgrade_plan: UpgradePlanRow;
  readonly maintenance_task: MaintenanceTaskRow;
  readonly maintenance_completion: CompletionRow;
}
