/** Collects all readings of a loop in a period into rows. */
import { failed, type Result, success } from '../../../curves/result.ts';
import { type MeasuredRows, rowCollector, type Station } from '../../../models/calibration/measured-rows.ts';
import { type Problem, problem } from '../../http/problem.ts';
import type { ReadingChoice } from '../../records/reading/contract.ts';
import { READINGS } from '../../records/reading/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import { pauseAfter } from '../../threads/pause.ts';

/** Over a year of readings by the minute. */
export const READINGS_COLLECTED_MAX = 600_000;
/** Read at once, so that other requests are served in between. */
const PAGE = 2_000;
const EVERY_PAGE = 0;

export async function collectReadings(
  store: SiteStore,
  choice: ReadingChoice,
  station: Station,
): Promise<Result<MeasuredRows, Problem>> {
  const actual = await store.of(READINGS).count(choice);
  if (actual > READINGS_COLLECTED_MAX) {
    const detail = `There are ${actual} readings from \`from\` to \`to\`, more than one calibration takes: choose a shorter time.`;
    const errors = [{ pointer: '/from', detail: 'begins too long before `to`' }];
    return failed(problem('limit-exceeded', detail, { limit: READINGS_COLLECTED_MAX, actual, errors }));
  }
  const collector = rowCollector(station);
  let { from } = choice;
  for (let read = 0; read < actual; ) {
    const page = await store.of(READINGS).between({ ...choice, from, limit: PAGE });
    for (const reading of page) {
      const tooMany = collector.add(reading);
      if (tooMany !== null) return failed(tooManyRows(tooMany.limit));
    }
    const last = page.at(-1);
    if (last === undefined) break;
    from = last.time + 1;
    read += page.length;
    await pauseAfter(EVERY_PAGE);
  }
  return success(collector.rows());
}

function tooManyRows(limit: number): Problem {
  const detail = `The readings are of more than ${limit} different settings and measures: choose a shorter time.`;
  const errors = [{ pointer: '/from', detail: 'begins too long before `to`' }];
  return problem('limit-exceeded', detail, { limit, actual: limit + 1, errors });
}
