/** A caution about several places of a loop, of which a few are named. */
import { type Caution, type CautionCode, caution } from './catalogue.ts';

/** At most this many places are named in one caution; more are counted. */
const NAMED = 5;

/** One caution about all of the subjects; none where there are none. */
export function about(code: CautionCode, subjects: readonly string[]): readonly Caution[] {
  if (subjects.length === 0) return [];
  const more = subjects.length > NAMED ? [`and ${subjects.length - NAMED} more`] : [];
  return [caution(code, [...subjects.slice(0, NAMED), ...more])];
}
