/** Seeded draws for tests that invent their own cases. */

/** A generator of numbers in [0, 1) from a 32-bit seed (mulberry32). */
export function mulberry32(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

export interface Draw {
  /** True with a probability. */
  readonly chance: (probability: number) => boolean;
  readonly between: (low: number, high: number) => number;
  /** Evenly in the logarithm. */
  readonly scaled: (low: number, high: number) => number;
  /** A whole number, both ends included. */
  readonly whole: (low: number, high: number) => number;
  readonly pick: <T>(items: readonly T[]) => T;
}

export function drawsFrom(random: () => number): Draw {
  const between = (low: number, high: number): number => low + (high - low) * random();
  const whole = (low: number, high: number): number => Math.floor(between(low, high + 1));
  return {
    chance: (probability) => random() < probability,
    between,
    scaled: (low, high) => Math.exp(between(Math.log(low), Math.log(high))),
    whole,
    pick: (items) => {
      const item = items[whole(0, items.length - 1)];
      if (item === undefined) throw new Error('nothing to pick from');
      return item;
    },
  };
}
