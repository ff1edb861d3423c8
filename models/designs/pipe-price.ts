/** What a pipe costs by a list of prices. */
import { pipeBore } from '../network/bores.ts';
import type { Pipe } from './design-loop.ts';

/** `price`: money for a metre. */
export interface PipePrice {
  readonly pipe: Pipe;
  /** [money/m] */
  readonly price: number;
}

/** Bores and roughnesses within this share are one. */
const SAME = 1e-9;

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= SAME * Math.max(a, b);

/** A standard size is found by its name, another by bore and roughness. */
function isSame(one: Pipe, other: Pipe): boolean {
  if (typeof one === 'string' || typeof other === 'string') return one === other;
  const [a, b] = [pipeBore(one), pipeBore(other)];
  return a !== null && b !== null && isNear(a.bore, b.bore) && isNear(a.roughness, b.roughness);
}

/** Price [money/m] of a pipe; of two prices of one pipe the last counts; null where the list has none. */
export const priceOfPipe = (prices: readonly PipePrice[], pipe: Pipe): number | null =>
  prices.findLast((price) => isSame(price.pipe, pipe))?.price ?? null;
