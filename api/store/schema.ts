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
}
