/** Names the figures that the report of a comparison shows. */

import type { UnitSystem } from '../../../units/unit-system.ts';
import type { ComparisonFigures } from '../answer-schema.ts';

export interface ComparisonAnswer extends ComparisonFigures {
  readonly id: string;
  readonly name: string;
  /** RFC 3339. */
  readonly createdAt: string;
  /** Whether what the figures rest on has changed since. */
  readonly stale: boolean;
}

export type ReportedOption = ComparisonAnswer['options'][number];

export interface ComparisonReport {
  readonly siteName: string;
  readonly comparison: ComparisonAnswer;
  readonly date: string;
  readonly program: string;
  readonly system: UnitSystem;
}
