/** Meters on an invented loop, and readings of them. */
import type { Json } from '../../api/requests.ts';
import type { Draw } from '../../random/draw.ts';
import type { Shown } from './shown.ts';

export interface Meters {
  /** Of the whole loop. */
  readonly measures: readonly string[];
  /** Outlets whose flows are measured. */
  readonly outlets: readonly string[];
  /** Standard deviation as a share of what is shown. */
  readonly scatter: number;
  /** What a meter's readings are multiplied by, 1 where it is left out. */
  readonly gains: Readonly<Record<string, number>>;
}

const DIGITS = 5;
/** How often a meter is not read. */
const MISSED = 0.05;

export const readsPressures = ({ measures }: Meters): boolean => measures.includes('suctionPressure');

/** Normally distributed with mean 0 and variance 1, by Box and Muller. */
const normal = (draw: Draw): number =>
  Math.sqrt(-2 * Math.log(1 - draw.between(0, 1))) * Math.cos(2 * Math.PI * draw.between(0, 1));

/** One reading of the meters, without time and setting. */
export function readingOf(draw: Draw, { totals, outletFlows }: Shown, meters: Meters): Json {
  const { measures, outlets, scatter, gains } = meters;
  const read = (name: string, value: number): number =>
    Number((value * (gains[name] ?? 1) * (1 + scatter * normal(draw))).toPrecision(DIGITS));
  const shown = measures.flatMap((name) => {
    const value = totals[name];
    return value === undefined || draw.chance(MISSED) ? [] : [[name, read(name, value)] as const];
  });
  const flows = outlets.flatMap((name) => {
    const value = outletFlows[name] ?? 0;
    return value > 0 ? [[name, read('outletFlow', value)] as const] : [];
  });
  return {
    ...Object.fromEntries(shown),
    ...(flows.length > 0 ? { outletFlows: Object.fromEntries(flows) } : {}),
  };
}
