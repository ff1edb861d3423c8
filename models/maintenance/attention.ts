/** What a set of repeated works asks of the people of a site in a year. */
import { MINUTES_PER_HOUR } from '../calendar/time-factors.ts';

/** Minutes of work, and money for parts, each time. */
export interface RepeatedWork {
  readonly timesAYear: number;
  readonly minutes: number;
  readonly parts: number;
}

/** Hours and money a year. `labour` and `cost` are null where hours have no price. */
export interface Attention {
  readonly hours: number;
  readonly parts: number;
  readonly labour: number | null;
  readonly cost: number | null;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/**
 * The attention of a year: hours = sum of n t/60, parts = sum of n p, labour = hours x rate, cost = labour + parts, with n
 * the times a year of each work, t its minutes, p its parts.
 *
 * @param labourRate money an hour, 0 or more; null: not known, which leaves only the parts with a price.
 */
export function attentionOf(works: readonly RepeatedWork[], labourRate: number | null): Attention {
  const hours = sum(works.map((work) => (work.timesAYear * work.minutes) / MINUTES_PER_HOUR));
  const parts = sum(works.map((work) => work.timesAYear * work.parts));
  return pricedAttention({ hours, parts }, labourRate);
}

/** Hours and parts that were summed before, with what they cost. */
export function pricedAttention(
  { hours, parts }: { readonly hours: number; readonly parts: number },
  labourRate: number | null,
): Attention {
  const labour = hours === 0 ? 0 : labourRate === null ? null : hours * labourRate;
  return { hours, parts, labour, cost: labour === null ? null : labour + parts };
}
