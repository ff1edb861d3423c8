/** A pump's power points as rows of a fit: speed, flow about its mean, logarithm of the power above standby. */
import type { Pump } from '../../../models/pump/pump.ts';
import { distinct } from '../independent/distinct.ts';
import { conditionNumber } from '../independent/least-squares.ts';
import { speedRatio } from '../independent/speed.ts';

export interface Row {
  readonly ratio: number;
  readonly x: number;
  /** ln(P - standby). */
  readonly y: number;
  readonly power: number;
}

export interface PowerRows {
  readonly rows: readonly Row[];
  /** How many distinct speeds were measured, and between which ratios. */
  readonly speeds: number;
  readonly slowest: number;
  readonly fastest: number;
  readonly standby: number;
  /** x of a flow [m3/s] of one pump at a speed ratio. */
  readonly xAt: (at: { flow: number; ratio: number }) => number;
  /** Range of x that was measured; 0 and 0 where no point has a flow. */
  readonly low: number;
  readonly high: number;
  /** Greatest number of powers of x that may enter. */
  readonly terms: number;
}

export function powerRows(pump: Pump): PowerRows {
  const reduced = pump.powerPoints.map(({ setting, flow }) =>
    flow === undefined ? undefined : flow / speedRatio(pump, setting),
  );
  const known = reduced.flatMap((flow) => flow ?? []);
  const largest = Math.max(0, ...known);
  const shares = known.map((flow) => flow / largest);
  const middle = shares.reduce((sum, share) => sum + share, 0) / Math.max(1, shares.length);
  const toX = (flow: number): number => (known.length === 0 ? 0 : flow / largest - middle);
  const rows = pump.powerPoints.map(({ setting, power }, index) => {
    const flow = reduced[index];
    const x = flow === undefined ? 0 : toX(flow);
    return { ratio: speedRatio(pump, setting), x, y: Math.log(power - pump.standbyPower), power };
  });
  const ratios = rows.map(({ ratio }) => ratio);
  const kinds = distinct(shares);
  return {
    rows,
    speeds: distinct(ratios),
    slowest: Math.min(...ratios),
    fastest: Math.max(...ratios),
    standby: pump.standbyPower,
    xAt: ({ flow, ratio }) => toX(flow / ratio),
    low: known.length === 0 ? 0 : toX(Math.min(...known)),
    high: known.length === 0 ? 0 : toX(Math.max(...known)),
    terms: kinds >= 5 ? 2 : kinds >= 3 ? 1 : 0,
  };
}

const LARGEST_CONDITION = 1e8;

/** Columns of powers of x after some first columns; the highest power is dropped while they nearly depend on each other. */
export function withFlowTerms(
  first: readonly (readonly number[])[],
  { rows, terms }: Pick<PowerRows, 'rows' | 'terms'>,
): readonly (readonly number[])[] {
  const columns = [...first, ...[1, 2].slice(0, terms).map((power) => rows.map(({ x }) => x ** power))];
  if (terms === 0 || conditionNumber(columns) <= LARGEST_CONDITION) return columns;
  return withFlowTerms(first, { rows, terms: terms - 1 });
}
