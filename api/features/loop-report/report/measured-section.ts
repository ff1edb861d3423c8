/** Reports what was measured on a loop. */
import type { Verdict } from '../../../../models/condition/verdict.ts';
import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import type { LoopReport } from './report-figures.ts';

/** Of an instant in RFC 3339. */
const dayOf = (instant: string | null): string => instant?.slice(0, 10) ?? '-';

/** Verdicts that do not contradict the data. */
const STANDING: readonly Verdict[] = ['as-expected', 'not-enough-readings'];

const DEPARTS =
  ' The recommendation rests on the data, which the loop departs from: correct what was found, or calibrate, before acting on it.';

/** Null where nothing was measured. */
export function measuredSection({ measured }: LoopReport): Markup | null {
  if (measured === null) return null;
  const { verdict, summary, from, to, readings } = measured;
  const departs = STANDING.includes(verdict) ? null : DEPARTS;
  return markup`<section><h2>As measured</h2><p>${summary}</p><p>${readings.total} readings, ${dayOf(from)} to ${dayOf(to)}.${departs}</p></section>`;
}
