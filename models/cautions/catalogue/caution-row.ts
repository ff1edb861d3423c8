/** What the catalogue says of one caution. */

export type Severity = 'note' | 'warning' | 'danger';

export interface CautionRow {
  readonly severity: Severity;
  readonly sentence: string;
  readonly source: string;
}

export const COMMON_PRACTICE = 'common practice';
