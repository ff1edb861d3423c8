/** Readings brought together: one row for each thing measured at one setting of one state of the valves. */

import type { Gauges } from '../loop/loop.ts';
import { GRAVITY } from '../physics/gravity.ts';
import { velocityRise } from '../readings/gauges.ts';
import { headOfReading } from '../readings/head-of-reading.ts';
import type { Reading } from '../readings/reading.ts';
import { totalFlow } from '../readings/total-flow.ts';

export type Measure = 'flow' | 'outletFlow' | 'head' | 'power';

/** What is measured where: the pump at `setting` [%], outlets named in `shut` closed, all of them for `zeroFlow`. */
export interface Gauge {
  readonly measure: Measure;
  readonly setting: number;
  /** Of an `outletFlow`. */
  readonly outlet: string | null;
  /** In a fixed order. */
  readonly shut: readonly string[];
  /** A valve at the pump is shut: a head then is the shutoff head. */
  readonly zeroFlow: boolean;
}

export interface Measured extends Gauge {
  /** [m3/s], [m] or [W]. */
  readonly mean: number;
  readonly count: number;
  /** Sum of (value/mean - 1)^2. */
  readonly spread: number;
  readonly course: Course;
}

/** How the values of a row go with time [ms]: sums about the means of both. */
export interface Course {
  readonly first: number;
  readonly last: number;
  /** Sum of (time - mean)^2. */
  readonly timeSpread: number;
  /** Sum of (time - mean)(value/mean - 1). */
  readonly withTime: number;
}

export interface MeasuredRows {
  readonly rows: readonly Measured[];
  /** Readings that said something. */
  readonly used: number;
  /** Whether heads came of pressures. */
  readonly usesGauges: boolean;
}

export interface TooManyRows {
  readonly code: 'too-many-rows';
  readonly limit: number;
}

/** Distinct measures at distinct settings: a controller's grid has far fewer. */
export const ROWS_MAX = 3_000;

export interface Station {
  readonly density: number;
  readonly outlets: readonly string[];
  /** Whether outlets can be shut in computing: not where the pipework is not known. */
  readonly knowsPipework: boolean;
  readonly settings: { readonly min: number; readonly max: number };
  readonly gauges: Gauges | undefined;
}

interface Value extends Gauge {
  readonly value: number;
}

export interface RowCollector {
  /** The failure of a reading that makes too many rows; null else. */
  add(reading: Reading): TooManyRows | null;
  rows(): MeasuredRows;
}

interface Group {
  readonly gauge: Gauge;
  count: number;
  mean: number;
  squares: number;
  meanTime: number;
  timeSquares: number;
  products: number;
  readonly first: number;
  last: number;
}

/**
 * Collects rows of readings at running settings of the pump. An outlet read at 0 is taken as shut; a total flow of 0, or 0 at
 * every outlet, as a valve shut at the pump, of which only the head says anything. The head is that across the pump, else that of
 * both pressures; where gauges stand in unlike bores, with the total flow beside them.
 */
export function rowCollector(station: Station): RowCollector {
  const groups = new Map<string, Group>();
  let used = 0;
  let usesGauges = false;
  return {
    add(reading) {
      const values = valuesOf(reading, station);
      if (values.length > 0) used += 1;
      usesGauges ||= reading.head === undefined && values.some(({ measure }) => measure === 'head');
      for (const { value, ...gauge } of values) {
        const key = JSON.stringify(gauge);
        const group = groups.get(key) ?? emptyGroup(gauge, reading.time);
        groups.set(key, including(group, value, reading.time));
      }
      return groups.size > ROWS_MAX ? { code: 'too-many-rows', limit: ROWS_MAX } : null;
    },
    rows: () => ({
      ...{ used, usesGauges },
      rows: [...groups.values()].map(({ gauge, count, mean, squares, ...times }) => ({
        ...gauge,
        ...{ count, mean, spread: squares / mean ** 2 },
        course: {
          ...{ first: times.first, last: times.last },
          ...{ timeSpread: times.timeSquares, withTime: times.products / mean },
        },
      })),
    }),
  };
}

const emptyGroup = (gauge: Gauge, time: number): Group => ({
  ...{ gauge, count: 0, mean: 0, squares: 0 },
  ...{ meanTime: time, timeSquares: 0, products: 0, first: time, last: time },
});

/** Welford's (1962) sums, which keep their digits however many values come; readings come in the order of time. */
function including(group: Group, value: number, time: number): Group {
  const off = value - group.mean;
  const later = time - group.meanTime;
  group.count += 1;
  group.mean += off / group.count;
  group.meanTime += later / group.count;
  group.squares += off * (value - group.mean);
  group.timeSquares += later * (time - group.meanTime);
  group.products += later * (value - group.mean);
  group.last = time;
  return group;
}

function valuesOf(reading: Reading, station: Station): readonly Value[] {
  const { setting, flow, power, outletFlows = {} } = reading;
  if (setting < station.settings.min || setting > station.settings.max) return [];
  const shut = station.outlets.filter((name) => outletFlows[name] === 0).toSorted();
  const isAllShut = shut.length > 0 && shut.length === station.outlets.length;
  const zeroFlow = flow === 0 || isAllShut;
  if (shut.length > 0 && !zeroFlow && !station.knowsPipework) return [];
  const place = { setting, shut: zeroFlow ? [] : shut, zeroFlow };
  const values: Value[] = [];
  const add = (measure: Measure, value: number | undefined, outlet: string | null = null) => {
    if (value !== undefined && value > 0) values.push({ ...place, measure, outlet, value });
  };
  add('head', headOf(reading, station, { zeroFlow }));
  if (zeroFlow) return values;
  add('flow', flow);
  add('power', power);
  for (const outlet of station.outlets) add('outletFlow', outletFlows[outlet], outlet);
  return values;
}

/** Undefined too where the velocity heads at the gauges matter and no total flow tells them. */
function headOf(
  reading: Reading,
  { density, gauges, outlets }: Station,
  { zeroFlow }: Pick<Gauge, 'zeroFlow'>,
): number | undefined {
  const flow = zeroFlow ? 0 : totalFlow(reading, outlets);
  const areAlike = velocityRise(gauges, 1) === 0;
  const rise =
    areAlike || reading.head !== undefined ? 0 : flow === undefined ? undefined : velocityRise(gauges, flow);
  return rise === undefined
    ? undefined
    : headOfReading(reading, { pressurePerHead: density * GRAVITY, rise });
}
