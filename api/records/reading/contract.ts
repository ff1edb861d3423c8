/** What was measured on loops, and how it is kept and read. */
import type { Reading } from '../../../models/readings/reading.ts';

/** Of one loop, from an instant on and before another [ms]. */
export interface ReadingChoice {
  readonly loop: string;
  readonly from: number;
  readonly before: number;
}

export interface NewReadings {
  readonly loop: string;
  /** Their times do not fall. */
  readonly readings: readonly Reading[];
}

export interface CheckedReadings extends NewReadings {
  /** Names of the outlets of the loop: with 0 at all of them nothing flows. */
  readonly outlets: readonly string[];
}

/** `merged` of the readings met one of the same instant: what they state took its place, what they leave out stayed. */
export type ReadingsWritten =
  | { readonly outcome: 'written'; readonly accepted: number; readonly merged: number }
  /** What readings and those that were there say together: no flow at speed, and no head beside it. Nothing was written. */
  | { readonly outcome: 'still'; readonly time: number }
  | { readonly outcome: 'missing' };

/** Deleted at once. */
export const READINGS_DELETED_MAX = 50_000;

export type ReadingsDeleted =
  | { readonly outcome: 'deleted'; readonly readings: number }
  | { readonly outcome: 'too-many'; readonly limit: number; readonly actual: number };

/** How often readings of a loop were written or deleted, and the instants of the first and the last; null where there are none. */
export interface ReadingSpan {
  readonly changes: number;
  readonly range: { readonly first: number; readonly last: number } | null;
}

/** From `at` on clocks are `offset` ahead of UTC [ms]; the first holds from the beginning. */
export interface BucketOffset {
  readonly at: number;
  readonly offset: number;
}

export interface BucketRequest extends ReadingChoice {
  /** Length of a bucket [ms] by the clocks of the offsets. */
  readonly width: number;
  readonly offsets: readonly BucketOffset[];
}

/** Means of what was measured in a bucket, null where nothing was; `outletFlows` by the name of the outlet. */
export interface ReadingBucket {
  /** Place of the bucket: whole widths since 1970-01-01 by the clocks of the offsets. */
  readonly bucket: number;
  readonly readings: number;
  readonly setting: number;
  readonly power: number | null;
  readonly flow: number | null;
  readonly head: number | null;
  readonly suctionPressure: number | null;
  readonly dischargePressure: number | null;
  readonly outletFlows: Readonly<Record<string, number>>;
}

export interface ReadingOperations {
  /** All of them or none. `missing`: there is no such loop. */
  insert(readings: CheckedReadings): Promise<ReadingsWritten>;
  /** All of the choice, or none where they are too many. */
  delete(choice: ReadingChoice): Promise<ReadingsDeleted>;
  span(loop: string): Promise<ReadingSpan>;
  /** In the order of time, at most `limit` of them. */
  between(choice: ReadingChoice & { readonly limit: number }): Promise<readonly Reading[]>;
  /** The first reading of each stretch of `apart` ms that has any, in the order of time. */
  sampled(choice: ReadingChoice & { readonly apart: number }): Promise<readonly Reading[]>;
  count(choice: ReadingChoice): Promise<number>;
  /** Buckets with readings, in their order, averaged by the database. */
  buckets(request: BucketRequest): Promise<readonly ReadingBucket[]>;
}

/** Some of a loop, in the order of time. */

export interface CopiedReadings {
  readonly loop: string;
  readonly readings: readonly Reading[];
}

export const READINGS_OF_A_SITE_MAX = 400000;
/** Readings that stand together in a copy. */
export const READINGS_TOGETHER = 2000;
