/** Finds when the higher first cost of an option has been paid back. */
import type { LifeCycle, Spent } from './life-cycle.ts';

/** How long it takes. */
export interface Payback {
  /** [years], in today's money; null: not within the years looked at. */
  readonly simple: number | null;
  /** [years], in present values; null likewise. */
  readonly discounted: number | null;
}

/**
 * Where the cumulated saving, once below 0, first reaches 0 again: inside a year by what runs through it, at its end by what is
 * paid there. 0 where it never is below.
 */
function crossing(savings: readonly Spent[]): number | null {
  let sum = 0;
  let isShort = false;
  for (const [year, { running, paid }] of savings.entries()) {
    if (isShort && running > 0 && sum + running >= 0) return year - 1 + -sum / running;
    sum += running + paid;
    if (isShort && sum >= 0) return year;
    isShort = sum < 0;
  }
  return isShort ? null : 0;
}

/**
 * How long an option takes until what it costs more than the reference has first come back: simple by the costs in today's money, discounted by
 * their present values. Running costs are spread over their year, replacements and extras are paid at its end; what is left of
 * devices at the end counts for neither.
 * 0 for an option that costs no more up to any year; null within one whose excess does not come back.
 * Null where both cost the same in every year.
 */
export function payback(option: LifeCycle, reference: LifeCycle): Payback | null {
  const savings = (of: 'today' | 'discounted') =>
    reference.years.map(({ [of]: before }, index): Spent => {
      const after = option.years[index]?.[of] ?? { running: 0, paid: 0 };
      return { running: before.running - after.running, paid: before.paid - after.paid };
    });
  const simple = savings('today');
  if (simple.every(({ running, paid }) => running === 0 && paid === 0)) return null;
  return { simple: crossing(simple), discounted: crossing(savings('discounted')) };
}
