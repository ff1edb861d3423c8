/** Describes an axis of a chart: its range, its ticks, its name. */
import { scaleLinear } from 'd3-scale';
import { plainDecimal } from '../../wording/plain-decimal.ts';

export interface Tick {
  readonly value: number;
  readonly label: string;
}

export interface Axis {
  /** As it is written: `flow [L/h]`. */
  readonly name: string;
  readonly from: number;
  readonly until: number;
  readonly ticks: readonly Tick[];
}

interface LinearAxis {
  readonly name: string;
  readonly unit: string | null;
  /** What must have room; 0 always has. */
  readonly values: readonly number[];
  /** About how many. */
  readonly ticks?: number;
}

const USUAL_TICKS = 5;
const TICK_DIGITS = 12;
/** Beyond, decimals are too long for the ticks of an axis. */
const DECIMALS = { from: 1e-4, below: 1e7 } as const;

function tickLabel(value: number): string {
  const size = Math.abs(value);
  const rounded = Number(value.toPrecision(TICK_DIGITS));
  const isPlain = size === 0 || (size >= DECIMALS.from && size < DECIMALS.below);
  return (isPlain ? plainDecimal(rounded) : rounded.toExponential()).replace('-', '\u2212');
}

export const axisName = (name: string, unit: string | null): string =>
  unit === null ? name : `${name} [${unit}]`;

/** From 0, or from below where there are values below, to a round number above the largest. */
export function linearAxis({ name, unit, values, ticks = USUAL_TICKS }: LinearAxis): Axis {
  const least = values.reduce((low, value) => Math.min(low, value), 0);
  const most = values.reduce((high, value) => Math.max(high, value), 0);
  const scale = scaleLinear()
    .domain(least === most ? [0, 1] : [least, most])
    .nice(ticks);
  const [from = 0, until = 1] = scale.domain();
  return {
    name: axisName(name, unit),
    from,
    until,
    ticks: scale.ticks(ticks).map((value) => ({ value, label: tickLabel(value) })),
  };
}
