/** What the report of a loop tells. */
import type { DayFigures } from '../../charts/day-figures.ts';
import type { LoopFigures } from '../../charts/loop-figures.ts';
import type { RecommendationAnswer } from '../../schemas/answers/recommendation-schema.ts';
import type { LoopRecord, SiteRecord } from '../../store/store.ts';
import type { UnitSystem } from '../../units/unit-system.ts';

export interface LoopReport {
  readonly site: SiteRecord;
  readonly loop: LoopRecord;
  readonly recommendation: RecommendationAnswer;
  /** How the installed pump runs now; null where none is installed. */
  readonly present: ReportedDuty | null;
  readonly chart: LoopFigures;
  /** Null where the loop has no schedule. */
  readonly day: DayFigures | null;
  readonly date: string;
  readonly program: string;
  readonly system: UnitSystem;
}

export type ReportedDuty = NonNullable<RecommendationAnswer['best']>;
