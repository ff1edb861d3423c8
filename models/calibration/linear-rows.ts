/** Rows as they stand at one point of the factors: how far off, and how fast each factor moves them. */
import { centralDifferences } from '../../curves/central-differences.ts';
import type { Factors } from '../pump/factors.ts';
import type { LinearRow } from './assess.ts';
import type { Gauge, Measured } from './measured-rows.ts';
import type { Prediction } from './prediction.ts';

/** A row is never taken as further below its mean: what gives nothing at all has no logarithm. */
const LEAST_SHARE = 1e-6;

/** ln(mean/predicted): the relative departure, for small ones. */
export const departure = (row: Measured, predicted: number): number =>
  -Math.log(Math.max(LEAST_SHARE, predicted / row.mean));

/** d ln(predicted)/d factor of one gauge. */
export function slopesAt(gauge: Gauge, factors: Factors, predict: Prediction): Factors {
  const { friction, head, power } = factors;
  const parameters = [friction, head, power];
  const [[atFriction = 0, atHead = 0, atPower = 0] = []] = centralDifferences(
    ([f = friction, h = head, p = power]) => {
      const predicted = predict(gauge, { friction: f, head: h, power: p });
      return [Math.log(Math.max(Number.MIN_VALUE, predicted))];
    },
    { parameters, scales: parameters },
  );
  return { friction: atFriction, head: atHead, power: atPower };
}

export const linearRow = (row: Measured, factors: Factors, predict: Prediction): LinearRow => ({
  measure: row.measure,
  count: row.count,
  spread: row.spread,
  residual: departure(row, predict(row, factors)),
  slopes: slopesAt(row, factors, predict),
});
