/** Sums what repeated works ask of the people of a site in a year. */
import { MINUTES_PER_HOUR } from '../calendar/time-factors.ts';

/** A work that comes round. */
export interface RepeatedWork {
  /** [1/year] */
  readonly timesAYear: number;
  /** Of work each time [min]. */
  readonly minutes: number;
  /** Each time [money]. */
  readonly parts: number;
}

/** What works ask in a year. */
export interface Attention {
  /** [h/year] */
  readonly hours: number;
  /** [money/year] */
  readonly parts: number;
  /** [money/year]; null where hours have no price. */
  readonly labour: number | null;
  /** Of labour and parts [money/year]; null where hours have no price. */
  readonly cost: number | null;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/**
 * The attention of a year: hours = sum of n t/60, parts = sum of n p, labour = hours x rate, cost = labour + parts,
 * with n the times a year of each work, t its minutes, p its parts.
 *
 * @param works n [1/year], t [min], p [money].
 * @param labourRate [money/h] of 0 or more; null: not known, which leaves only the parts with a price.
 */
export function attentionOf(works: readonly RepeatedWork[], labourRate: number | null): Attention {
  const hours = sum(works.map((work) => (work.timesAYear * work.minutes) / MINUTES_PER_HOUR));
  const parts = sum(works.map((work) => work.timesAYear * work.parts));
  return pricedAttention({ hours, parts }, labourRate);
}

/** Hours [h/year] and parts [money/year] that were summed before, with what they cost at a labour rate [money/h]. */
export function pricedAttention(
  { hours, parts }: { readonly hours: number; readonly parts: number },
  labourRate: number | null,
): Attention {
  const labour = hours === 0 ? 0 : labourRate === null ? null : hours * labourRate;
  return { hours, parts, labour, cost: labour === null ? null : labour + parts };
}
