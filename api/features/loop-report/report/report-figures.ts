/** Names the figures that the report of a loop shows. */

import type { Verdict } from '../../../../models/condition/verdict.ts';
import type { LoopRecord } from '../../../records/loop/kind.ts';
import type { SiteRecord } from '../../../records/site/kind.ts';
import type { UnitSystem } from '../../../units/unit-system.ts';
import type { LoopFigures } from '../../loop-chart/figures.ts';
import type { RecommendationAnswer } from '../../recommendation/answer-schema.ts';
import type { DayFigures } from '../../schedule/day.ts';

export interface LoopReport {
  readonly site: SiteRecord;
  readonly loop: LoopRecord;
  readonly recommendation: RecommendationAnswer;
  /** How the installed pump runs now; null where none is installed. */
  readonly present: ReportedDuty | null;
  /** What the readings of the installed pump mean; null where there are none. */
  readonly measured: Measured | null;
  readonly chart: LoopFigures;
  /** Null where the loop has no schedule. */
  readonly day: DayFigures | null;
  readonly date: string;
  readonly program: string;
  readonly system: UnitSystem;
}

export interface Measured {
  readonly verdict: Verdict;
  readonly summary: string;
  /** Instants, RFC 3339. */
  readonly from: string | null;
  readonly to: string | null;
  readonly readings: { readonly total: number };
}

export type ReportedDuty = RecommendationAnswer['ranking'][number];
