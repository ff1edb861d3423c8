/** When what an option costs more at first has come back. */
import type { LifeCycle } from './life-cycle.ts';

export interface Payback {
  /** Years, in today's money; null: not within the years looked at. */
  readonly simple: number | null;
  /** Years, in present values. */
  readonly discounted: number | null;
}

/** Where the cumulated saving reaches 0, by lines through the ends of the years. */
function crossing(savings: readonly number[]): number | null {
  const [first = 0] = savings;
  // What is saved at first and lost later is no payback.
  if (first >= 0) return savings.reduce((sum, saving) => sum + saving, 0) >= 0 ? 0 : null;
  let sum = 0;
  for (const [year, saving] of savings.entries()) {
    const before = sum;
    sum += saving;
    if (sum >= 0) return year - 1 + -before / saving;
  }
  return null;
}

/**
 * How long an option takes to become no dearer in all than the reference: simple by the costs in today's money, discounted by
 * their present values. What is left of devices at the end counts for neither.
 * 0 for an option that costs no more at first nor in all; null within an option that is cheaper at first alone.
 * Null where both cost the same in every year.
 */
export function payback(option: LifeCycle, reference: LifeCycle): Payback | null {
  const savings = (of: 'today' | 'discountedWithoutRest') =>
    reference.years.map((year, index) => year[of] - (option.years[index]?.[of] ?? 0));
  const simple = savings('today');
  if (simple.every((saving) => saving === 0)) return null;
  return { simple: crossing(simple), discounted: crossing(savings('discountedWithoutRest')) };
}
