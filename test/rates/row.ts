/** One line of the table of rates. */

export interface RateRow {
  readonly name: string;
  readonly figure: string;
  /** What the figure must keep; '-' where it is stated for knowledge. */
  readonly limit: string;
  readonly holds: boolean;
}

/** How many loops a row simulates. */
export interface Size {
  readonly loops: number;
}

export const percent = (share: number): string => `${Math.round(100 * share)} %`;

export const seeds = ({ loops }: Size): readonly number[] => Array.from({ length: loops }, (_, i) => i + 1);

/** The value below which a share of them lies: of days, when that share had been found. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

export const shareOf = <Item>(items: readonly Item[], isOf: (item: Item) => boolean): number =>
  items.length === 0 ? 0 : items.filter(isOf).length / items.length;

/** A share that must be at most, or at least, so much. */
export const atMost = (name: string, items: readonly boolean[], limit: number): RateRow => {
  const share = shareOf(items, Boolean);
  return {
    ...{ name, figure: `${items.filter(Boolean).length} of ${items.length}` },
    ...{ limit: `at most ${percent(limit)}`, holds: share <= limit },
  };
};

export const atLeast = (name: string, items: readonly boolean[], limit: number): RateRow => {
  const share = shareOf(items, Boolean);
  return {
    ...{ name, figure: `${percent(share)} of ${items.length}` },
    ...{ limit: `at least ${percent(limit)}`, holds: share >= limit },
  };
};

export const stated = (name: string, figure: string): RateRow => ({ name, figure, limit: '-', holds: true });
