/** The job of plausibility compares readings that were accepted with what their loop should show. */
import { type READING_ENTRY, readingEntryCautions } from '../../../models/cautions/reading-entry.ts';
import type { CautionOf } from '../../../models/cautions/topic.ts';
import { solving } from '../../../models/network/solve-failure.ts';
import type { PumpModel } from '../../../models/pump/pump-model.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { loopJob } from '../loop/loop-job.ts';

export interface PlausibilityWork {
  readonly pump: PumpModel;
  readonly count: number;
  readonly readings: readonly Reading[];
}

export type PlausibilityCautions = readonly CautionOf<typeof READING_ENTRY>[];

/** Branches of all settings together that take over 50 ms to solve. */
const LONG = 1_000;

export const plausibilityJob = loopJob<PlausibilityWork, PlausibilityCautions>({
  name: 'plausibility',
  isLong: (loop, { readings }) => {
    const settings = new Set(readings.map(({ setting }) => setting));
    return settings.size * (loop.network?.branches.length ?? 1) > LONG;
  },
  // A loop that cannot be solved says nothing about its readings, which are stored all the same.
  compute: (loop, { pump, count, readings }) => {
    const found = solving(() => readingEntryCautions({ loop, pump, count }, readings));
    return found.ok ? found.value : [];
  },
});
