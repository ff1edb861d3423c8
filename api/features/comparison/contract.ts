/** Comparisons kept: each as it was asked for and found, never changed afterwards. */

import type { StoredRecord } from '../../store/versions.ts';
import type { ComparisonFigures } from './answer-schema.ts';
import type { ComparisonQuestion } from './schema.ts';

/** Null: it is not there, or was not then. */
export interface VersionOf {
  readonly id: string;
  readonly version: number | null;
}

/** All stored things that the figures follow from. */
export interface ComparisonSources {
  /** What of the site they follow from, as one text. */
  readonly site: string;
  /** What the routine checks of its loops and pumps ask of a year, as one text. */
  readonly checks: string;
  readonly loops: readonly VersionOf[];
  readonly pumps: readonly VersionOf[];
  readonly tariffs: readonly VersionOf[];
  /** By the ids of their loops. */
  readonly schedules: readonly VersionOf[];
}

export interface StoredComparison {
  readonly name: string;
  readonly question: ComparisonQuestion;
  readonly figures: ComparisonFigures;
  readonly sources: ComparisonSources;
}

export type ComparisonRecord = StoredRecord<StoredComparison>;
