/** Reports what was measured on a loop. */
import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import type { LoopReport, Measured } from './report-figures.ts';

/** Of an instant in RFC 3339. */
const dayOf = (instant: string | undefined): string => instant?.slice(0, 10) ?? '-';

/** Verdicts that do not contradict the data. */
const QUIET: readonly Measured['verdict'][] = ['as-expected', 'not-enough-readings', 'baseline-forming'];

const DEPARTS = ' The recommendation assumes the loop as it was: remedy what was found before acting on it.';

/** Null where nothing was measured. */
export function measuredSection({ measured }: LoopReport): Markup | null {
  if (measured === null) return null;
  const { verdict, summary, from, to, counts } = measured;
  const departs = QUIET.includes(verdict) ? null : DEPARTS;
  return markup`<section><h2>As measured</h2><p>${summary}</p><p>${counts.readings} readings, ${dayOf(from)} to ${dayOf(to)}.${departs}</p></section>`;
}
